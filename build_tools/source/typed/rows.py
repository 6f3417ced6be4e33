"""Moves written as rows: one line a move, its parts with bars between, the columns named once.

    - word | action | counts | level | part | how
    - grip | gesture | 2 | low | hands | strong

A motif whose list names no columns has those of the motif above it. A cell may be empty. Whatever
fields a move may have is a column; fields between braces are read as before.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.shape import ANY, Shape, shape_of
from build_tools.source.typed.cells_astray import cells_astray
from build_tools.source.typed.lines import plain_name
from build_tools.source.typed.values import meant

KINDS = ("travel", "turn", "jump", "gesture", "stillness", "transfer")
_FIELDS = {
    "word": "as",
    "action": "",
    "counts": "",
    "level": "level",
    "direction": "direction",
    "side": "side",
    "facing": "facing",
    "pathway": "pathway",
    "size": "size",
    "part": "body_part",
    "how": "dynamics",
    "step": "step",
    "steps": "steps",
    "in all": "in_all",
    "towards": "towards",
    "turn by": "turn_by",
    "times": "times",
    "with": "with",
}
"""Each column, in the order in which they are written, and the field of a move that it is."""
_ALSO = {"as": "word", "move": "action", "body part": "part", "dynamics": "how", "turn": "turn by"}
_USUAL = "word | action | counts | level | part | how"
_RULER = re.compile(r"[\s|:-]*-[\s|:-]*\Z")
_PARTED = re.compile(r"[|\t]")
"""What parts the cells of a row: a bar, or a tab where it was pasted out of a table."""
_WORDS = re.compile(r"\s*[,;/+&]\s*|\s+and\s+|\s+")


@dataclass(frozen=True, slots=True)
class RowTrouble:
    """A row that cannot be read: where it is, what is wrong, and how to mend it."""

    path: FieldPath
    message: str
    help: str


@dataclass(frozen=True, slots=True)
class Spread:
    """A unit's data with its rows as fields; the motifs whose first line names columns."""

    data: Any
    headed: frozenset[str]
    troubles: tuple[RowTrouble, ...]


def spread(data: Any) -> Spread:
    """The data of a unit with each row of a motif as the fields of a move."""
    motifs = data.get("motifs") if isinstance(data, dict) else None
    if not isinstance(motifs, dict) or not any(_has_rows(motif) for motif in motifs.values()):
        return Spread(data, frozenset(), ())
    shape = shape_of("unit").fields["motifs"].each or ANY
    move = shape.fields["actions"].each or ANY
    columns: tuple[str, ...] = ()
    made, headed, troubles = {}, set(), []
    for name, motif in motifs.items():
        made[name] = motif
        if not _has_rows(motif):
            continue
        rows = motif["actions"]
        path: FieldPath = ("motifs", name, "actions")
        if isinstance(rows[0], str) and (named := columns_of(rows[0])):
            columns, rows = named, rows[1:]
            headed.add(name)
        moves: list[Any] = []
        for row in rows:
            if not isinstance(row, str):
                moves.append(row)
                continue
            found = _move(row, columns, move)
            if isinstance(found, tuple):
                at = len(moves) + (name in headed)
                troubles.append(RowTrouble((*path, at), *found))
                moves.append({})
            elif found:
                moves.append(found)
        made[name] = {**motif, "actions": moves}
    return Spread({**data, "motifs": made}, frozenset(headed), tuple(troubles))


def _has_rows(motif: Any) -> bool:
    rows = motif.get("actions") if isinstance(motif, dict) else None
    listed = rows if isinstance(rows, list) else []
    return any(isinstance(row, str) and _PARTED.search(row) for row in listed)


def columns_of(row: str) -> tuple[str, ...]:
    """The columns that a row names; empty where it is a move."""
    names = [plain_name(cell) for cell in _cells(row, bars=row.strip().startswith("|"))]
    names = [_ALSO.get(name, name) for name in names]
    known = [name for name in names if name in _FIELDS]
    return tuple(names) if "counts" in known and known == names else ()


def field_of_column(column: str) -> str:
    """The field of a move that stands under a column; "" for what is no field by itself."""
    return _FIELDS.get(column, "")


def _cells(row: str, *, bars: bool) -> list[str]:
    text = row.strip()
    if bars and text.startswith("|") and text.endswith("|"):
        text = text[1:-1]
    between = "\t" if "\t" in text and "|" not in text else "|"
    return [cell.strip() for cell in text.split(between)]


def _move(row: str, columns: Sequence[str], shape: Shape) -> dict[str, Any] | tuple[str, str]:
    """The fields of one move, or what is wrong with its row and how to mend it."""
    if not columns:
        return (
            "these moves are rows, but no line above them says what their columns are",
            f"write a first line such as `- {_USUAL}`",
        )
    if _RULER.match(row):
        return {}
    cells = _cells(row, bars=False)
    if len(cells) > len(columns):
        inner = _cells(row, bars=True)
        cells = inner if len(inner) <= len(columns) else cells
    if len(cells) > len(columns):
        return (
            f"this row has {len(cells)} parts, and {len(columns)} columns are named: "
            f"{' | '.join(columns)}",
            "name a column for each part, or see whether a bar is too many",
        )
    if len(cells) == 1 and len(cells[0].split()) > 1:
        return (
            "the parts of this row have no bars between them",
            f"put a bar between them, an empty part too: {' | '.join(columns)}",
        )
    typed = {column: cell for column, cell in zip(columns, cells, strict=False) if cell}
    kind = str(meant(typed.get("action", ""), Shape("word", words=KINDS), "action"))
    if kind not in KINDS:
        said = f"“{typed['action']}” is no action" if "action" in typed else "no action is named"
        return f"{said} in this row", f"write one of: {', '.join(KINDS)}"
    astray = cells_astray(cells, columns, _shapes(shape))
    if astray is not None:
        return astray
    made: dict[str, Any] = {kind: None}
    if "counts" in typed:
        made[kind] = meant(typed["counts"], shape.fields[kind], "counts")
    for column, field in _FIELDS.items():
        if field and column in typed:
            made[field] = _cell(typed[column], shape.fields[field], field)
    return made


def _shapes(move: Shape) -> dict[str, Shape]:
    """What each column takes."""
    known = {c: move.fields[f] for c, f in _FIELDS.items() if f in move.fields}
    return {**known, "action": Shape("word", words=KINDS), "counts": Shape("number")}


def _cell(typed: str, shape: Shape, field: str) -> Any:
    if shape.takes == "list":
        each = shape.each or ANY
        return [meant(word, each, field) for word in _WORDS.split(typed) if word]
    return meant(typed, shape, field)


def rows_of(moves: Sequence[Any]) -> list[str] | None:
    """The moves as rows under a row that names their columns; None where one cannot be written."""
    if not moves or not all(isinstance(move, Mapping) for move in moves):
        return None
    parts = [_parts(move) for move in moves]
    if any(part is None for part in parts):
        return None
    written = [part for part in parts if part is not None]
    columns = [c for c in _FIELDS if any(c in part for part in written)]
    rows = [columns, *([part.get(column, "") for column in columns] for part in written)]
    return [" | ".join(row).rstrip() for row in rows]


def _parts(move: Mapping[str, Any]) -> dict[str, str] | None:
    """Each column of a move and what stands in it; None where a row would say something else."""
    kinds = [name for name in move if name in KINDS]
    if len(kinds) != 1:
        return None
    parts = {"action": kinds[0], "counts": str(move[kinds[0]])}
    for column, field in _FIELDS.items():
        if field in move:
            value = move[field]
            parts[column] = " ".join(value) if isinstance(value, list) else str(value)
    known = {*KINDS, *_FIELDS.values()}
    odd = any("|" in text or text != " ".join(text.split()) or not text for text in parts.values())
    if odd or set(move) - known:
        return None
    made = _move(" | ".join(parts.values()), list(parts), _move_shape())
    return parts if made == dict(move) else None


def _move_shape() -> Shape:
    motif = shape_of("unit").fields["motifs"].each or ANY
    return motif.fields["actions"].each or ANY


def aligned(rows: Sequence[str]) -> list[str]:
    """Rows with each column as wide as its widest cell, and no empty cells at their ends."""
    cells = [[cell.strip() for cell in row.split("|")] for row in rows]
    widths = [max((len(row[n]) for row in cells if n < len(row)), default=0)
              for n in range(max(map(len, cells)))]  # fmt: skip
    made = [" | ".join(c.ljust(w) for c, w in zip(row, widths, strict=False)) for row in cells]
    return [re.sub(r"(?:\s*\|)*\s*\Z", "", row) for row in made]
