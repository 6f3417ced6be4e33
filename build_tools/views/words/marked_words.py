"""Marks round what is said in a line, which paper leaves out where two sides have no room for it.

A line goes through many small functions as text; what is said in it is known by the marks alone.
They are two letters that no author can type.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

_OPEN, _CLOSE = "\ue000", "\ue001"
_MARKED = re.compile(f"{_OPEN}(?P<said>[^{_OPEN}{_CLOSE}]*){_CLOSE}")


def marked(words: str) -> str:
    """Words that are said, between marks."""
    return f"{_OPEN}{words}{_CLOSE}" if words else ""


def with_words(line: str) -> str:
    """A line as it is read, with all that is said in it."""
    return line.replace(_OPEN, "").replace(_CLOSE, "")


def without_words(line: str) -> str:
    """A line without what is said in it."""
    return _MARKED.sub("", line)


def said_in(line: str) -> str:
    """All that is said in a line, without its marks."""
    return "".join(found["said"] for found in _MARKED.finditer(line))


def with_those(line: str, keeps: Callable[[str], bool]) -> str:
    """A line with only those of its marked words that `keeps` wants."""
    return _MARKED.sub(lambda found: found[0] if keeps(found["said"]) else "", line)


def in_pieces(line: str) -> Iterator[tuple[str, bool]]:
    """A line cut at its marks: each piece, and whether it is what is said."""
    at = 0
    for found in _MARKED.finditer(line):
        if found.start() > at:
            yield line[at : found.start()], False
        yield found["said"], True
        at = found.end()
    if at < len(line):
        yield line[at:], False
