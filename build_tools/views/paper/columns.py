"""Paragraphs set in two columns of the same height, and broken where a side ends.

Lengths are in points.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

FEWEST_LINES = 2
"""Of a paragraph that is broken, the fewest lines on either side, as the style sheet has it."""
_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Piece:
    """A paragraph: its lines, each `leading` high, and the room above it.

    One that stays together is never broken.
    """

    lines: int
    leading: float
    above: float = 0.0
    together: bool = False

    @property
    def high(self) -> float:
        """How high it is with the room above it."""
        return self.above + self.lines * self.leading


def in_two_columns(pieces: Sequence[Piece]) -> float:
    """How high two columns are when they are as even as the paragraphs let them be."""
    whole = sum(piece.high for piece in pieces)
    return min((max(first, whole - first) for first in _ends(pieces)), default=whole)


def _ends(pieces: Sequence[Piece]) -> Iterator[float]:
    """How high the first column may be."""
    so_far = 0.0
    for piece in pieces:
        if not piece.together:
            for count in range(FEWEST_LINES, piece.lines - FEWEST_LINES + 1):
                yield so_far + piece.above + count * piece.leading
        so_far += piece.high
        yield so_far


def left_over(pieces: Sequence[Piece], columns: int, high: float) -> list[Piece]:
    """What is left when as much as can stands in columns of that height."""
    rest = list(pieces)
    for _ in range(columns):
        room = high + _NEAR
        while rest and rest[0].high <= room:
            room -= rest.pop(0).high
        if not rest:
            break
        first = rest[0]
        fitting = int((room - first.above) // first.leading)
        fitting = min(fitting, first.lines - FEWEST_LINES)
        if not first.together and fitting >= FEWEST_LINES:
            rest[0] = replace(first, lines=first.lines - fitting, above=0.0)
    return rest
