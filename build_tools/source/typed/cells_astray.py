"""Cells of a row of moves that stand under a neighbour's column: a bar too few or too many.

“strong” under `part` would be read as a part of the body, and be gone from how the move is danced.
A word that another column's list has, and its own has not, is told with the row as it should stand.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from itertools import chain

from build_tools.shapes.shape import ANY, Shape
from build_tools.source.typed.values import meant

_WORDS = re.compile(r"\s*[,;/+&]\s*|\s+and\s+|\s+")
_NUMBER = re.compile(r"[0-9]")
_OPEN = "part"
"""The one column of any words whose words are not those of another column."""
_BODY = ("back", "front", "centre", "side", "sides")
"""Of a body as well as of a room."""


def cells_astray(
    cells: Sequence[str], columns: Sequence[str], shapes: Mapping[str, Shape]
) -> tuple[str, str] | None:
    """What is wrong with where the cells stand, and how to mend it; `shapes` by column."""
    for n, (cell, column) in enumerate(zip(cells, columns, strict=False)):
        parted = _two_in_one(cell, column, shapes)
        if parted is not None:
            row = [*cells[:n], *parted, *cells[n + 1 :]]
            return _told(parted[1], column, ["how"], columns, _placed(row, columns, shapes))
        if not cell or _fits(cell, column, shapes):
            continue
        others = [c for c in shapes if c not in (column, _OPEN) and _of_its_list(cell, shapes[c])]
        if others:
            return _told(cell, column, others, columns, _placed(cells, columns, shapes))
    return None


def _two_in_one(cell: str, column: str, shapes: Mapping[str, Shape]) -> tuple[str, str] | None:
    """A part of the body and how it moves in one cell; a “free arm” is a part alone."""
    first, _, last = cell.rpartition(" ")
    named = column == _OPEN and first and "how" in shapes and _of_its_list(last, shapes["how"])
    return (first.strip(), last) if named else None


def _told(
    word: str, column: str, others: Sequence[str], columns: Sequence[str], row: str
) -> tuple[str, str]:
    belongs = " or ".join(f"`{other}`" for other in others)
    message = f"“{word}” stands under `{column}` in this row, and is a word of {belongs}"
    if not any(other in columns for other in others):
        return message, f"name a column {belongs} in the first line, and put “{word}” under it"
    if row:
        return message, f"see whether a bar is missing or too many; write: - {row}"
    return message, (
        "put a bar between each two parts of the row, an empty part too: " + " | ".join(columns)
    )


def _fits(cell: str, column: str, shapes: Mapping[str, Shape]) -> bool:
    shape = shapes.get(column, ANY)
    if shape.takes == "number":
        return _NUMBER.search(cell) is not None
    if column == _OPEN:
        lists = (one for name, one in shapes.items() if name != _OPEN)
        return cell.casefold() in _BODY or not any(_of_its_list(cell, one) for one in lists)
    return not _listed(shape) or _of_its_list(cell, shape)


def _listed(shape: Shape) -> tuple[object, ...]:
    return shape.words or (shape.each.words if shape.each else ())


def _of_its_list(cell: str, shape: Shape) -> bool:
    words = _listed(shape)
    parts = [part for part in _WORDS.split(cell) if part] if shape.takes == "list" else [cell]
    one = Shape("word", words=words)
    return bool(words) and all(meant(part, one, "") in words for part in parts)


def _placed(cells: Sequence[str], columns: Sequence[str], shapes: Mapping[str, Shape]) -> str:
    """The row with each cell under its column, in their order; "" where they cannot be."""
    made = [""] * len(columns)
    last = -1
    for n, cell in enumerate(cells):
        if not cell:
            continue
        after = range(last + 1, len(columns))
        if n > last and n < len(columns) and _fits(cell, columns[n], shapes):
            at: int | None = n
        else:
            at = _place_for(cell, after, columns, shapes)
        if at is None:
            return ""
        made[at], last = cell, at
    return re.sub(r"[ |]+\Z", "", " ".join(" | ".join(made).split()))


def _place_for(
    cell: str, free: range, columns: Sequence[str], shapes: Mapping[str, Shape]
) -> int | None:
    """The first of the `free` columns whose list has the cell, else that of any words."""
    listed = (n for n in free if _of_its_list(cell, shapes.get(columns[n], ANY)))
    any_words = (n for n in free if columns[n] == _OPEN and _fits(cell, _OPEN, shapes))
    return next(chain(listed, any_words), None)
