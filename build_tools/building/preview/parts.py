"""What of a unit's file can be chosen, set or moved about: words, numbers, moves and lists."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from build_tools.building.preview.plain_names import field_name, says_of, thing_name
from build_tools.problem import FieldPath
from build_tools.shapes.shape import ANY, shape_of
from build_tools.source.front_matter import kind_of_file
from build_tools.source.item_edit import lists_in, mark_of
from build_tools.source.typed.rows import KINDS, columns_of, field_of_column
from build_tools.source.value_edit import ShortValue, values_in


def parts_of(file: str, raw: bytes) -> dict[str, Any]:
    """The values and the lists of the file; rows of moves cell by cell, under their columns."""
    kind = kind_of_file(file) or ""
    lists = lists_in(file, raw)
    first = {path: min(parts) for path, parts in lists}
    return {
        "values": list(_values(kind, values_in(file, raw), first)),
        "lists": [
            {
                "path": list(path),
                "called": thing_name(kind, path),
                "parts": [
                    {
                        "number": n,
                        "mark": mark_of(part),
                        "says": says_of(part),
                        # a row that names the columns is no move
                        "called": thing_name(kind, (*path, n - first[path])),
                    }
                    for n, part in parts.items()
                ],
            }
            for path, parts in lists
        ],
    }


def _values(
    kind: str, found: Sequence[ShortValue], first: dict[FieldPath, int]
) -> Iterator[dict[str, Any]]:
    columns: tuple[str, ...] = ()
    for one in found:
        around, step = one.path[:-1], one.path[-1]
        within, cells = thing_name(kind, around), []
        if isinstance(step, int) and isinstance(one.value, str) and "|" in one.value:
            if named := columns_of(one.value):
                columns = named
                continue
            within = thing_name(kind, (*around, step - first.get(around, 0)))
            cells = _cells(one.value, columns)
        yield {
            "path": list(one.path),
            "value": one.value,
            "choices": list(one.choices),
            "called": field_name(kind, one.path),
            "within": within,
            "cells": cells,
        }


def _cells(row: str, columns: Sequence[str]) -> list[dict[str, Any]]:
    """What stands under each column, and the words that may; nothing where they do not match."""
    parts = row.split("|")
    if len(parts) > len(columns):
        return []
    motif = shape_of("unit").fields["motifs"].each or ANY
    move = motif.fields["actions"].each or ANY
    made = []
    for column, part in zip(columns, [*parts, *[""] * (len(columns) - len(parts))], strict=True):
        inner = move.fields.get(field_of_column(column), ANY)
        words = KINDS if column == "action" else inner.words if inner.takes == "word" else ()
        made.append({"called": column, "value": part.strip(), "words": list(words)})
    return made
