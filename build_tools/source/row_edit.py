"""A move added to a motif whose moves are rows: the columns that it needs are named as well."""

from __future__ import annotations

from typing import Any

from build_tools.problem import FieldPath
from build_tools.source.field_edit import mark_around, with_field
from build_tools.source.file_lines import SAYS_ELSE, EditRefused, at, reading_of, to_change
from build_tools.source.item_edit import mark_of
from build_tools.source.typed.canonical import moves_as_rows


def is_row(raw_data: Any, path: FieldPath, value: Any) -> bool:
    """Whether `value` is a move for the end of a motif of `raw_data` whose moves are rows."""
    held = at(raw_data, path[:-1])
    rows = path[:1] == ("motifs",) and len(path) == 4 and isinstance(held, list)
    return (
        rows
        and isinstance(value, dict)
        and path[-1] == len(held)
        and any(isinstance(one, str) for one in held)
    )


def with_field_or_row(
    file: str, raw: bytes, path: FieldPath, old: str, value: Any
) -> bytes | EditRefused:
    """The file with `value` at `path`, as `with_field` has it; a move among rows as a row."""
    document = to_change(file, raw)
    if isinstance(document, EditRefused):
        return document
    written = reading_of(document).data
    if not is_row(written, path, value):
        return with_field(file, raw, path, old, value)
    if mark_around(written, path[:-1]) != old:
        return SAYS_ELSE
    rows = moves_as_rows([*at(document.data, path[:-1]), value])
    return with_field(file, raw, path[:-1], mark_of(at(written, path[:-1])), rows)
