"""A hatch for each section letter, so that a photocopy keeps sections apart.

A section that comes back changed has the hatch of the first: it is the same one again, and its
letter with the mark stands on it.
"""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.movement.letters import all_unmarked, slug, unmarked
from build_tools.views.diagrams.svg import el

_MARKS: tuple[tuple[int, str], ...] = (
    (8, "M-2 2l4-4M0 8l8-8M6 10l4-4"),
    (9, "M3 4.5h2.2"),
    (6, "M3 0v6"),
    (9, "M0 4.5h9M4.5 0v9"),
    (6, "M0 3h6"),
    (8, "M-2 6l4 4M0 0l8 8M6-2l4 4"),
    (12, "M0 8l3-4 3 4 3-4 3 4"),
    (10, "M0 0l10 10M10 0l-10 10"),
    (12, "M0 3h6M6 9h6"),
    (12, "M3 0v6M9 6v6"),
    (11, "M5.5 3v5M3 5.5h5"),
    (10, "M2 5a3 3 0 1 0 6 0a3 3 0 1 0 -6 0"),
)


def hatches(prefix: str, letters: Iterable[str], order: tuple[str, ...]) -> str:
    """The hatches of `letters` as patterns; a letter keeps its hatch by its place in `order`."""
    return el(
        "defs", *(_pattern(prefix, one, order) for one in dict.fromkeys(all_unmarked(letters)))
    )


def hatch_fill(prefix: str, letter: str) -> str:
    """The fill that draws a letter's hatch."""
    return f"url(#{prefix}-{slug(unmarked(letter))})"


def letters_in_order(form: Iterable[str]) -> tuple[str, ...]:
    """The letters of a form, each once, in the order of the alphabet."""
    return tuple(sorted(set(all_unmarked(form))))


def _pattern(prefix: str, letter: str, order: tuple[str, ...]) -> str:
    place = order.index(letter)
    size, marks = _MARKS[place % len(_MARKS)]
    return el(
        "pattern",
        el(
            "path",
            d=marks,
            fill="none",
            stroke="currentColor",
            stroke_width=2.2 if marks == _MARKS[1][1] else 1.1,
            stroke_linecap="round",
            class_="hatch",
        ),
        id=f"{prefix}-{slug(letter)}",
        width=size,
        height=size,
        patternUnits="userSpaceOnUse",
    )
