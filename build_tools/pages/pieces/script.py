"""The teacher's part of a step as a page has it: a line for each part, what is said apart."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.page_words.words import _
from build_tools.views.lesson.teachers_part import Told
from build_tools.views.words.marked_words import in_pieces, without_words
from build_tools.views.words.pace_said import HEAR_IT


@dataclass(frozen=True, slots=True)
class ScriptPiece:
    """Some words of a line."""

    lines: tuple[str, ...]
    """The words, a line each on a screen; paper has them in one."""
    said: bool
    """Whether they tell what is said, or minutes that follow the step's: what was marked."""
    hear: bool = False
    """Whether they lead to the page that plays the counts."""


@dataclass(frozen=True, slots=True)
class ScriptRow:
    """One part or join, or all that there is."""

    which: str
    """The part or the join; empty where there is only one thing to do."""
    pieces: tuple[ScriptPiece, ...]
    """What is done there, and said."""


@dataclass(frozen=True, slots=True)
class Script:
    """One line of the teacher's part, in the order in which it is done."""

    label: str
    """What it is about: the beat, who starts."""
    rows: tuple[ScriptRow, ...]
    """A row for each part and join, or one."""


def script_of(told: Told) -> Script:
    """The rows of one line."""
    lines = told.words.split("\n")
    return Script(told.label, tuple(_row(line, alone=len(lines) == 1) for line in lines))


def _row(line: str, *, alone: bool) -> ScriptRow:
    which, colon, rest = line.partition(": ")
    if alone or not colon or without_words(which) != which:
        return ScriptRow("", pieces_of(line))
    return ScriptRow(which, pieces_of(rest))


def pieces_of(line: str) -> tuple[ScriptPiece, ...]:
    """A line cut at its marks."""
    return tuple(_pieces(line))


def _pieces(line: str) -> Iterator[ScriptPiece]:
    name = _(HEAR_IT)
    for lines, said in in_pieces(line):
        before, named, after = lines[-1].partition(name)
        if len(lines) > 1 or before:
            yield ScriptPiece((*lines[:-1], before), said)
        if named:
            yield ScriptPiece((named,), said, hear=True)
        if after:
            yield ScriptPiece((after,), said)
