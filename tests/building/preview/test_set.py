"""“Change”: each field that a window shows is written anew, in the base unit and in a new draft."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from build_tools import cli
from build_tools.building.preview.editor import Editor
from build_tools.building.preview.server import Preview
from build_tools.building.preview.things import Here, things_in
from build_tools.problem import FieldPath
from build_tools.source.field_edit import with_field
from build_tools.source.file_lines import EditRefused, at, reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import mark_of
from tests.building.preview.asking import FILE, UNIT, post
from tests.support.banks import BASE_UNIT, copy_base
from tests.support.shared import made_once

ASKED = (
    *("--title", "Harbour lights", "--stimulus", "A picture of a harbour at night"),
    *("--years", "England:3,4", "--lessons", "2", "--minutes", "45"),
    *("--pattern", "section-a-lesson"),
)


@pytest.fixture(scope="module")
def drafted(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A bank with the draft that `new` writes beside the base unit."""

    def make(folder: Path) -> None:
        bank = copy_base(folder)
        assert cli.main(["new", "harbour", *ASKED, "--content", str(bank)]) == 0

    return next(made_once(tmp_path_factory, "bank-with-a-draft", make).glob("*/units")).parent


def data_of(file: str, raw: bytes) -> Any:
    read = read_markdown(file, raw)
    assert isinstance(read, Document)
    return reading_of(read).data


def another(here: Here) -> Any:
    """Another value that fits the field; None where this test knows of none."""
    now = here.value
    others = [word for word in here.asked.words if word != now]
    if isinstance(now, bool):
        return not now
    if isinstance(now, int | float):
        return now + 1
    if isinstance(now, list):
        return now[:-1] or None
    if others:
        return others[0]
    return f"{now} Then: rest, card #1 “up”" if here.asked.takes == "text" else None


Kind = tuple[str, str, int]
"""A field's name, what it takes, and how deep it lies."""


def fields_of(file: str, raw: bytes, seen: set[Kind]) -> Iterator[tuple[FieldPath, Here]]:
    """One field of each name and kind that a window of the file can change, but those `seen`."""
    for thing in things_in(file, raw):
        for here in thing.has:
            kind = (here.asked.name, here.asked.takes, len(thing.path))
            if here.value is not None and kind not in seen:
                seen.add(kind)
                yield (*thing.path, here.asked.name), here


@pytest.mark.parametrize("name", ["unit.md", "lesson-1.md"])
def test_every_kind_of_field_that_is_shown_can_be_set(
    drafted: Path, name: str, thorough: bool
) -> None:
    """In the base unit, and in a draft those that it has besides; in the long run all in both."""
    seen: set[Kind] = set()
    for unit in (BASE_UNIT, "harbour"):
        file = f"units/{unit}/{name}"
        raw = (drafted / file).read_bytes()
        kinds = set()
        for path, here in fields_of(file, raw, seen):
            new = another(here)
            if new is None:
                continue
            made = with_field(file, raw, path, here.mark, new)
            assert not isinstance(made, EditRefused), (path, new)
            assert at(data_of(file, made), path) == new
            kinds.add(here.asked.takes)
        assert "text" in kinds
        assert "word" in kinds or unit != BASE_UNIT
        if thorough:
            seen.clear()


def test_a_set_field_changes_its_own_lines_and_keeps_its_remark(drafted: Path) -> None:
    file = f"units/{BASE_UNIT}/lesson-1.md"
    raw = (drafted / file).read_bytes()
    raw = raw.replace(b"\n    minutes: 6\n", b"\n    minutes: 6  # short\n", 1)
    steps = data_of(file, raw)["steps"]
    n = next(n for n, step in enumerate(steps) if step["minutes"] == 6)
    made = with_field(file, raw, ("steps", n, "minutes"), mark_of(6), 7)
    assert made == raw.replace(b"minutes: 6  # short", b"minutes: 7  # short", 1)


def test_the_window_sets_a_text_a_choice_and_a_number_and_undo_gives_them_back(
    preview: Preview, bank: Path
) -> None:
    before = (bank / FILE).read_bytes()
    step = data_of(FILE, before)["steps"][1]
    for name, new in (("task", "Fold, then open slowly."), ("grouping", "pairs"), ("minutes", 7)):
        asked: dict[str, Any] = {
            "file": FILE,
            "path": ["steps", 1, name],
            "old": mark_of(step[name]),
        }
        asked |= {"way": "set", "value": new}
        assert post(preview, "preview-field", asked)[0] == 200, name
        assert data_of(FILE, (bank / FILE).read_bytes())["steps"][1][name] == new
        assert post(preview, "preview-undo", {"file": FILE})[0] == 200
        assert (bank / FILE).read_bytes() == before


def test_the_idea_of_a_section_is_set_in_the_units_file(bank: Path) -> None:
    before = (bank / UNIT).read_bytes()
    name, section = next(iter(data_of(UNIT, before)["sections"].items()))
    asked = {"file": UNIT, "path": ["sections", name, "idea"], "old": mark_of(section["idea"])}
    said = Editor(bank).field(asked | {"way": "set", "value": "The boat is pushed off the bank"})
    assert said[0] == 200
    assert data_of(UNIT, (bank / UNIT).read_bytes())["sections"][name]["idea"].startswith(
        "The boat"
    )
