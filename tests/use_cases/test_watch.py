"""Watching, save by save: the problems of each first, then the pages that it touched."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from build_tools.use_cases.watch import ProblemsFound, Written, watch
from tests.support.banks import BASE_UNIT, change, copy_base


def test_each_save_gives_its_problems_and_then_its_pages(tmp_path: Path) -> None:
    bank, out = copy_base(tmp_path), tmp_path / "out"
    lesson = bank / "units" / BASE_UNIT / "lesson-1.md"
    shown: list[str] = []

    def saves() -> Iterator[list[Path]]:
        # a rule's error is marked on a page that follows the file
        change(lesson, "\nminutes: 40\n", "\nminutes: 41\n")
        change(lesson, "task: Rock smaller and smaller.", "task: Rock.")
        yield [lesson]
        shown.append(page.read_text(encoding="utf-8"))
        # where an error leaves nothing to draw, the last pages stand
        change(lesson, "\nminutes: 41\n", "\nminutes: 40\n")
        change(lesson, "task: Rock.", "tusk: Rock.")
        yield [lesson]
        shown.append(page.read_text(encoding="utf-8"))
        change(lesson, "tusk: Rock.", "task: Rock smaller and smaller.")
        yield [lesson]
        change(lesson, "\nfocus: ", "\nfocus: Now, ")
        yield [lesson]
        # what has no place in the folder is told of, and stops no page of what has
        copy = lesson.with_name("lesson-1 - Copy.md")
        copy.write_text("---\nlesson: 1\n---\n", encoding="utf-8")
        change(lesson, "\nfocus: Now, ", "\nfocus: ")
        yield [copy, lesson]

    page = out / "units" / BASE_UNIT / "lesson-1.html"
    seen = list(watch(bank, saves(), out, tmp_path / "kept.json"))
    assert [type(one) for one in seen] == [ProblemsFound, Written] * 6
    found = [[p.rule for p in one.problems] for one in seen if isinstance(one, ProblemsFound)]
    assert found == [
        [], ["minutes-do-not-add-up"], ["unknown-field"], [], [], ["file-name-odd"]
    ]  # fmt: skip
    pages = (f"the pages of {BASE_UNIT}",)
    written = [one for one in seen if isinstance(one, Written)]
    assert [one.pages[:1] for one in written] == [("every page",), pages, (), pages, pages, pages]
    assert [sorted(one.older) for one in written] == [[], [], [BASE_UNIT], [], [], []]
    assert ["Rock." in text for text in shown] == [True, True]
