"""Fields put in and taken out by their own lines: the rest of the file is the same, to the byte."""

from __future__ import annotations

import difflib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from build_tools.building.preview.things import things_in
from build_tools.problem import FieldPath
from build_tools.schema_check.wanted import Wanted
from build_tools.source.field_edit import NOTHING, with_field
from build_tools.source.file_lines import EditRefused, reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import mark_of
from tests.support.banks import BASE, BASE_UNIT

UNIT = BASE / "units" / BASE_UNIT
FILES = sorted(UNIT.glob("*.md"))
LESSON = (UNIT / "lesson-1.md").read_bytes()
FEW = 15


def sample(asked: Wanted) -> Any:
    """Something that could be written for what is asked, with what notation trips over."""
    if asked.takes == "word":
        return asked.words[-1]
    if asked.takes == "number":
        return max(asked.least, 1)
    if asked.takes == "yes or no":
        return True
    if asked.takes in ("text", "code"):
        return "A: try #1, “so”"[: asked.letters or 15].strip() if asked.takes == "text" else "1/2"
    if asked.takes == "names":
        assert asked.each
        return {"Zig-zag": sample(asked.each)}
    if asked.takes == "list":
        assert asked.each
        return [sample(asked.each) for _ in range(max(1, asked.least))]
    fields = [one for one in asked.inside if one.name not in asked.one_of[1:]]
    return {one.name: sample(one) for one in fields}


def missing(path: Path) -> Iterator[tuple[FieldPath, str, Any]]:
    """Each field and line that could be added, the mark it is asked with, and a value for it."""
    for thing in things_in(path.name, path.read_bytes()):
        for asked in thing.missing:
            value = sample(asked.each) if asked.each and not asked.name else sample(asked)
            if thing.path == ("motifs",):
                continue  # rows of moves: `test_fields` in the preview's tests
            step = asked.name or (thing.next_line if thing.next_line is not None else "zig-zag")
            yield (*thing.path, step), thing.mark, value


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_what_is_put_in_is_there_alone_and_is_taken_out_again(path: Path, thorough: bool) -> None:
    raw = path.read_bytes()
    every = list(missing(path))
    assert len(every) > 2 * FEW
    for place, mark, value in every if thorough else every[:: len(every) // FEW]:
        made = with_field(path.name, raw, place, mark, value)
        assert isinstance(made, bytes), (place, made)
        lines = difflib.ndiff(raw.decode().split("\n"), made.decode().split("\n"))
        gone = [line for line in lines if line[0] == "-"]
        # between braces, or where an empty list stood, the field's own line is another
        assert len(gone) <= 1, (place, gone)
        if place == ("skills", 0):
            continue  # an empty list is written on one line
        assert with_field(path.name, made, place, mark_of(value), NOTHING) == raw, place


def test_a_field_stands_where_the_order_of_the_schema_has_it() -> None:
    made = with_field("lesson-1.md", LESSON, ("story_so_far",), "", "We folded.")
    assert isinstance(made, bytes)
    line = b"collect: [A drum]\n"
    assert made == LESSON.replace(line, line + b"story_so_far: We folded.\n")


def test_remarks_stay_and_so_do_line_ends_and_the_mark_at_the_start() -> None:
    raw = LESSON.replace(b"    makes: [drift]\n", b"    # hers\n    makes: [drift]  # too\n")
    raw = b"\xef\xbb\xbf" + raw.replace(b"\n", b"\r\n")
    step = data(raw)["steps"][2]
    made = with_field("lesson-1.md", raw, ("steps", 2, "look_for"), mark_of(step), "Air.")
    assert isinstance(made, bytes)
    line = b"    # hers\r\n    makes"
    assert made == raw.replace(line, b"    look_for: Air.\r\n" + line)
    more = with_field("lesson-1.md", raw, ("steps", 2, "makes"), mark_of(["drift"]), ["drift", "A"])
    assert more == raw.replace(b"makes: [drift]  # too", b"makes: [drift, A]  # too")
    gone = with_field("lesson-1.md", raw, ("steps", 2, "makes"), mark_of(["drift"]), NOTHING)
    assert gone == raw.replace(b"    makes: [drift]  # too\r\n", b"")


def test_the_first_field_of_a_part_leaves_its_hyphen_to_the_next() -> None:
    raw = LESSON.replace(b"  - phase: make\n    does:", b"  - look_for: Air.\n    does:")
    raw = raw.replace(b"    grouping: alone\n    task: Float", b"    phase: make\n    task: Float")
    made = with_field("lesson-1.md", raw, ("steps", 2, "look_for"), mark_of("Air."), NOTHING)
    assert made == raw.replace(b"  - look_for: Air.\n    does:", b"  - does:")


@pytest.mark.parametrize(
    ("path", "old", "value"),
    [
        (("focus",), "", "Another"),
        (("focus",), mark_of("another"), NOTHING),
        (("nowhere",), "", NOTHING),
        (("steps", 2, "look_for"), "", "Air."),
        (("steps", 99), "", {}),
        (("steps", 99, "look_for"), "", "Air."),
        (("focus", "of"), "", "Air."),
        (("collect", "drum"), "", "Air."),
    ],
)
def test_what_stands_otherwise_by_now_is_left_alone(path: FieldPath, old: str, value: Any) -> None:
    made = with_field("lesson-1.md", LESSON, path, old, value)
    assert isinstance(made, EditRefused)
    assert made.conflict


def data(raw: bytes) -> dict[str, Any]:
    read = read_markdown("lesson-1.md", raw)
    assert isinstance(read, Document)
    return dict(reading_of(read).data)
