"""How a file of cases is read, and how its edits are laid over the base."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.rules.cases import UNIT, Case, read_cases
from tests.rules.contents import base, laid_over_base
from tests.rules.edits import CaseMistake

LESSON = f"{UNIT}/lesson-3.md"


def written(folder: Path, text: str) -> Case:
    file = folder / "a-rule.yml"
    file.write_text(text, encoding="utf-8")
    (case,) = read_cases(file)
    return case


def edits(folder: Path, *lines: str) -> Case:
    items = "".join(f"      - {{{line}}}\n" for line in lines)
    return written(folder, f"good:\n  a boat of their own:\n    edits:\n{items}")


def test_reads_names_places_and_what_is_expected(tmp_path: Path) -> None:
    case = written(
        tmp_path,
        "bad:\n  too many boats:\n    edits:\n"
        "      - {in: unit.md, at: title, before: Paper boats, after: Boats}\n"
        "    expect: [{in: unit.md, at: title}, {in: bank.yml}]\n",
    )
    assert (case.rule, case.family) == ("a-rule", tmp_path.name)
    assert (case.name, case.bad, case.line) == ("too many boats", True, 2)
    assert case.expect == ((f"{UNIT}/unit.md", "title"), ("bank.yml", ""))
    assert laid_over_base(case).documents[f"{UNIT}/unit.md"].data["title"] == "Boats"
    assert base().documents[f"{UNIT}/unit.md"].data["title"] == "Paper boats"


def test_files_that_are_not_edited_are_the_base_itself(tmp_path: Path) -> None:
    contents = laid_over_base(edits(tmp_path, "in: unit.md, at: title, before: P…, after: Boats"))
    assert contents.documents[LESSON] is base().documents[LESSON]


def test_a_unit_is_copied_and_then_edited(tmp_path: Path) -> None:
    case = edits(
        tmp_path,
        "in: units/red-boats/unit.md, at: title, before: Paper boats, after: Red boats",
        "in: units/red-boats, copy_of: units/paper-boats",
        "in: units/red-boats/lesson-3.md, take_out: true",
        "in: media/pond.svg, copy_of: media/boat.svg",
        "in: units/red-boats/media, take_out: true",
    )
    first, second = laid_over_base(case).units()
    assert (first.slug, first.title, sorted(first.media)) == (
        "paper-boats",
        "Paper boats",
        ["media/boat.svg", "media/pond.svg"],
    )
    assert (second.slug, second.title, second.media) == ("red-boats", "Red boats", {})
    assert [lesson.file for lesson in second.lessons] == [
        "units/red-boats/lesson-1.md",
        "units/red-boats/lesson-2.md",
    ]


def test_notes_are_the_text_below_the_fields(tmp_path: Path) -> None:
    case = edits(tmp_path, 'in: lesson-3.md, at: notes, before: Notes., after: "One.\\n\\nTwo."')
    assert laid_over_base(case).documents[LESSON].body == "One.\n\nTwo.\n"


@pytest.mark.parametrize(
    ("line", "mend"),
    [
        ("in: unit.md, at: title, before: Boats, after: Red", "write `before: "),
        ("in: lesson-3.md, at: notes, before: None., after: Two.", 'write `before: "Notes."`'),
        ("in: lesson-9.md, at: title, before: none, after: Red", "there is no file"),
        ("in: lesson-9.md, take_out: true", "there is no file"),
        ("in: units/red-boats, copy_of: units/blue-boats", "there is no file units/blue-boats"),
        ("in: unit.md, at: title, before: Paper boats, after: none", "unit.md is out of shape"),
        ("in: lesson-1.md, at: minutes, before: 40, after: forty", "lesson-1.md is out of shape"),
    ],
)
def test_what_does_not_fit_the_base_is_refused(line: str, mend: str, tmp_path: Path) -> None:
    case = edits(tmp_path, line)
    with pytest.raises(CaseMistake, match=mend):
        laid_over_base(case)


@pytest.mark.parametrize(
    ("line", "mend"),
    [
        ("in: unit.md, at: title, after: Red", "an edit has after, at, before beside `in`"),
        ("in: unit.md, at: title, before: Walk, turn, after: Red", "in quotation marks"),
        ("at: title, before: Paper boats, after: Red", "`in` names the file"),
        ("in: unit.md, take_out: true, at: title", "an edit has"),
        ("in: unit.md, at: topics/0, insert: true, before: rivers, after: seas", "an edit has"),
    ],
)
def test_what_is_not_in_form_is_refused_with_its_line(line: str, mend: str, tmp_path: Path) -> None:
    with pytest.raises(CaseMistake, match=mend) as refused:
        edits(tmp_path, line)
    assert "a-rule.yml: line 2: a boat of their own: " in str(refused.value)


@pytest.mark.parametrize("text", ["worse: {}\n", "bad: [a]\n", "good: {a boat: {edit: []}}\n", "["])
def test_a_file_of_another_shape_is_refused(text: str, tmp_path: Path) -> None:
    with pytest.raises(CaseMistake, match=r"a-rule\.yml"):
        written(tmp_path, text)
