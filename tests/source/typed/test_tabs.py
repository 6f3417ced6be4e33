"""A tab among spaces is read where something makes sense of it, and else told as that alone."""

from __future__ import annotations

import pytest

from build_tools.shapes.shape import shape_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.typed.reader import read_typed
from tests.source.said_once.units import LESSON

FILE = "units/boats/lesson-1.md"
MEANT = read_markdown(FILE, LESSON.encode())
FIELDS = LESSON.split("---\n")[1]
LATER = (
    "    does: Set the drift",
    "\tdoes, as in lesson 1, with all of it: Set the drift",
)


def changed(text: str, before: str, after: str) -> str:
    assert before in text
    return text.replace(before, after, 1)


@pytest.mark.parametrize("margin", ["\t", "\t\t", "  \t"])
def test_a_tab_is_read_as_what_makes_sense(margin: str) -> None:
    text = changed(LESSON, "    minutes: 6\n    grouping", f"{margin}minutes: 6\n    grouping")
    read = read_markdown(FILE, text.encode())
    assert isinstance(read, Document), read
    assert isinstance(MEANT, Document)
    assert read.data == MEANT.data


def test_where_nothing_makes_sense_the_tab_alone_is_told() -> None:
    lost = changed(FIELDS, "    minutes: 6\n", "\tminutes as in all lessons of this: 6\n")
    lost = changed(lost, *LATER)
    line = lost[: lost.index("\tminutes")].count("\n") + 2
    (fault,) = read_typed(lost, 2, shape_of("lesson")).faults
    assert fault.message == f"line {line} begins with a tab, and 1 more line does"
    assert fault.line == line
    assert fault.help.startswith("write four spaces in place of the tab")


def test_what_is_unclear_above_the_tab_is_told_too() -> None:
    lost = changed(changed(FIELDS, "title: ", "title is "), *LATER)
    above, tab = read_typed(lost, 2, shape_of("lesson")).faults
    assert "title" in above.message
    assert "begins with a tab" in tab.message
