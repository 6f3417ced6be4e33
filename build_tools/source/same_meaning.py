"""Parts of a list that were moved mean what they meant: what followed from their place is written.

A step that says no grouping has that of the step before it. Where another step stands before it
now, and that is of another grouping, the step gets its own written down; so does its kind, and so
do the sections that a join is between.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Literal

from build_tools.problem import FieldPath
from build_tools.source.field_edit import mark_around, with_field
from build_tools.source.file_lines import EditRefused, at, reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import WAYS, Way

_BY_PLACE: Mapping[FieldPath, Sequence[str]] = {
    ("steps",): ("phase", "grouping"),
    ("transitions",): ("from", "to"),
}
"""The fields that follow from where a part stands, by its list."""


def meaning_the_same(
    file: str, before: bytes, fresh: bytes, around: FieldPath, came_from: Sequence[int | None]
) -> bytes | EditRefused:
    """The bytes `fresh` with what the parts of the list `around` meant in the file `before`.

    `came_from` says for each part which it was, from 0; None for a new one.
    """
    meant = _parts(file, before, around)
    fields = _BY_PLACE.get(around, ()) if meant else ()
    now = _parts(file, fresh, around)
    for number, old in enumerate(came_from):
        for field in fields if old is not None else ():
            if number >= len(now) or old is None or old >= len(meant):
                continue
            value = meant[old].get(field)
            if value is None or now[number].get(field) == value:
                continue
            made = _with(file, fresh, (*around, number, field), value)
            if isinstance(made, EditRefused):
                return made
            fresh, now = made, _parts(file, made, around)
    return fresh


def came_from(
    raw: bytes, file: str, path: FieldPath, way: Way | Literal["new"]
) -> list[int | None]:
    """Which part each was after the part at `path` of the file `raw` went its `way`."""
    was: list[int | None] = list(range(len(_parts(file, raw, path[:-1]))))
    number = int(path[-1])
    if way == "new":
        return [*was[: number + 1], None, *was[number + 1 :]]
    found: list[int | None] = WAYS[way](was, number) if was else []
    return found


def _parts(file: str, raw: bytes, around: FieldPath) -> list[dict[str, object]]:
    """The parts of a list in full; none where the file cannot be read."""
    document = read_markdown(file, raw)
    held = at(document.data, around) if isinstance(document, Document) else None
    sound = isinstance(held, list) and all(isinstance(one, dict) for one in held)
    return held if isinstance(held, list) and sound else []


def _with(file: str, raw: bytes, path: FieldPath, value: object) -> bytes | EditRefused:
    document = read_markdown(file, raw)
    assert isinstance(document, Document)
    return with_field(file, raw, path, mark_around(reading_of(document).data, path[:-1]), value)
