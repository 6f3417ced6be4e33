"""Hyphens of a list that are set in otherwise than the others: a space too few, or too many."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from build_tools.shapes.shape import Shape
from build_tools.source.typed.cursor import Cursor
from build_tools.source.typed.lines import Line, bullet, key_of
from build_tools.source.typed.what_was_read import Reading


@dataclass(slots=True)
class Hyphens:
    """The hyphens of one list of fields, the field `name`, which is set in by `above`."""

    each: Shape
    above: int
    name: str
    around: int = -1
    """How far in most of them stand; below nought before the first is read."""

    def as_the_others(self, line: Line, cursor: Cursor, made: Reading) -> tuple[Line, bool]:
        """The line of a hyphen as if it stood where the others do, and whether it does not.

        What stands below a hyphen too far in is set in by no more than that; a hyphen too far out
        has all below it.
        """
        if self.around < 0:
            self.around = self._most(line, cursor)
        astray = line.indent != self.around
        if astray and not line.loose:
            made.guess(
                line.number,
                line.indent + 1,
                f"this is read as a line of `{self.name}`, though its hyphen is set in otherwise",
            )
        return replace(line, indent=min(line.indent, self.around)), astray

    def _most(self, line: Line, cursor: Cursor) -> int:
        """How far in most hyphens of the list stand; of one alone the field below it tells."""
        below = [one for one in cursor.lines[cursor.at :] if one.number > line.number and one.text]
        many = Counter([line.indent, *self._starting(below)])
        if many.total() > 1:
            return max(many, key=lambda indent: (many[indent], -indent))
        first = next((one for one in below if not one.text.startswith("#")), None)
        if first is None or bullet(first) or first.indent <= self.above + 1:
            return line.indent
        return min(line.indent, first.indent - 1)

    def _starting(self, below: list[Line]) -> Iterator[int]:
        """The indents of what starts a part of this list, up to where the list ends."""
        for line in below:
            inner = bullet(line)
            if inner is None and line.indent <= self.above:
                return
            key = key_of(inner.text, self.each) if inner else None
            if key is not None and key.known and line.indent >= self.above:
                yield line.indent
