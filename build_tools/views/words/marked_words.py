"""Marks round what is said in a line, which paper leaves out where two sides have no room for it.

A line goes through many small functions as text; what is said in it is known by the marks alone,
and where a screen begins a new line, which paper does not. They are three letters that no author
can type.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from typing import NamedTuple

_OPEN, _CLOSE, _NEW_LINE = "\ue000", "\ue001", "\ue002"
_FEWEST_LINES, _LONG = 3, 110
"""So many different things, of more letters in all than a line of a screen holds, are read line by
line; what is shorter is one sentence."""
_MARKED = re.compile(f"{_OPEN}(?P<said>[^{_OPEN}{_CLOSE}]*){_CLOSE}")


def marked(words: str) -> str:
    """Words that are said, between marks."""
    return f"{_OPEN}{words}{_CLOSE}" if words else ""


def line_by_line(told: Sequence[str], between: str) -> str:
    """What is told in order, each on a line of its own on a screen where it is long."""
    if len(told) < _FEWEST_LINES or len(between.join(told)) < _LONG:
        return between.join(told)
    return _NEW_LINE + f"{between}{_NEW_LINE}".join(told)


def row_by_row(rows: Sequence[str], before: str) -> str:
    """Rows with `before` in front of each; a screen begins a line with each if any is in lines."""
    mark = _NEW_LINE if any(map(stands_in_lines, rows)) else ""
    return "".join(f"{before}{mark}{row}" for row in rows)


def stands_in_lines(line: str) -> bool:
    """Whether a screen has it in several lines."""
    return _NEW_LINE in line


def after_lines(line: str, others: str) -> str:
    """What follows a line: on a new one if that line is told in several."""
    return f"{line} {_NEW_LINE if stands_in_lines(line) else ''}{others}"


def with_words(line: str) -> str:
    """A line as it is read, with all that is said in it."""
    return line.replace(_OPEN, "").replace(_CLOSE, "").replace(_NEW_LINE, "")


def without_words(line: str) -> str:
    """A line without what is said in it."""
    return _MARKED.sub("", line).replace(_NEW_LINE, "")


def said_in(line: str) -> str:
    """All that is said in a line, without its marks."""
    return "".join(found["said"] for found in _MARKED.finditer(line))


def with_those(line: str, keeps: Callable[[str], bool]) -> str:
    """A line with only those of its marked words that `keeps` wants."""
    return _MARKED.sub(lambda found: found[0] if keeps(found["said"]) else "", line)


class Piece(NamedTuple):
    """Some words of a line."""

    lines: tuple[str, ...]
    """A line each on a screen; the first goes on from what is before it."""
    said: bool
    """Whether they are what is said: what was marked."""


def in_pieces(line: str) -> Iterator[Piece]:
    """A line cut at its marks."""
    said = False
    for words in re.split(f"([{_OPEN}{_CLOSE}])", line):
        if words in (_OPEN, _CLOSE):
            said = words == _OPEN
            continue
        if words:
            yield Piece(tuple(words.split(_NEW_LINE)), said)
