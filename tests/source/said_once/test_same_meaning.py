"""A step that is moved, copied, added or taken away leaves what every other step means."""

from __future__ import annotations

from typing import Any, Literal

import pytest

from build_tools.source.file_lines import EditRefused, reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import Way, mark_of, with_item
from build_tools.source.same_meaning import came_from, meaning_the_same
from build_tools.source.step_edit import with_step_after, without_step
from build_tools.source.tidy import Tidied, tidied
from tests.source.said_once.units import LESSON

FILE = "lesson-1.md"
MEANT = ("phase", "grouping", "does")


def short() -> bytes:
    made = tidied(FILE, LESSON.encode())
    assert isinstance(made, Tidied)
    return made.text.encode()


def read(raw: bytes) -> Document:
    found = read_markdown(FILE, raw)
    assert isinstance(found, Document), found
    return found


def meant(raw: bytes) -> list[dict[str, Any]]:
    return [{name: step.get(name) for name in MEANT} for step in read(raw).data["steps"]]


def gone(raw: bytes, number: int, way: Way | Literal["new"]) -> bytes | EditRefused:
    mark = mark_of(reading_of(read(raw)).data["steps"][number])
    if way == "new":
        made = with_step_after(FILE, raw, number, mark)
    elif way == "away":
        made = without_step(FILE, raw, number, mark)
    else:
        made = with_item(FILE, raw, ("steps", number), mark, way)
    if isinstance(made, EditRefused):
        return made
    was = came_from(raw, FILE, ("steps", number), way)
    return meaning_the_same(FILE, raw, made, ("steps",), was)


@pytest.mark.parametrize("way", ["up", "down", "again", "away", "new"])
@pytest.mark.parametrize("number", range(6))
def test_every_other_step_means_what_it_meant(number: int, way: Way | Literal["new"]) -> None:
    before = short()
    assert before.count(b"phase:") == 1, "it is short"
    after = gone(before, number, way)
    if isinstance(after, EditRefused):
        assert (way, number) in {("up", 0), ("down", 5)}
        return
    was = came_from(before, FILE, ("steps", number), way)
    steps, now = meant(before), meant(after)
    assert len(now) == len(was)
    for old, step in zip(was, now, strict=True):
        assert old is None or step == steps[old]
