"""A field changed as a page asks: what was typed is made plain, and a sound file stays sound."""

from __future__ import annotations

from typing import Any

from build_tools.problem import FieldPath
from build_tools.schema_check.check import faults_of_shape
from build_tools.schema_check.formats import FIRST, newer_fields
from build_tools.source.file_lines import EditRefused
from build_tools.source.front_matter import Document, kind_of_file, read_markdown
from build_tools.source.row_edit import with_field_or_row
from build_tools.source.typed.canonical import moves_as_rows

MOST_LETTERS = 600
_MOST_PARTS = 200
_MOST_DEEP = 8


def as_typed(path: FieldPath, value: Any) -> Any:
    """What a page sends for the field at `path`, its texts without idle spaces.

    None where a form of ours would not send it: it is empty, too long, or no plain data.
    """
    if _parts_of(value, 0) > _MOST_PARTS:
        return None
    plain = _plain(value)
    if plain is None or plain in ("", [], {}):
        return None
    if path[:1] == ("motifs",) and len(path) == 2 and isinstance(plain, dict):
        return {**plain, "actions": moves_as_rows(plain.get("actions"))}
    return plain


def with_sound_field(
    file: str, raw: bytes, path: FieldPath, old: str, value: Any, *, first_format: bool = False
) -> bytes | EditRefused:
    """The file with that field, or without it; refused where a sound file would be sound no more.

    In a unit of the `first_format` no field of a later one can stand.
    """
    made = with_field_or_row(file, raw, path, old, value)
    return sound(file, raw, made, first_format=first_format)


def sound(
    file: str, raw: bytes, made: bytes | EditRefused, *, first_format: bool = False
) -> bytes | EditRefused:
    """What was `made` of the file, refused with a reason where it brings a fault of the schema."""
    if isinstance(made, EditRefused):
        return made
    before, after = (_faults(file, one, first_format) for one in (raw, made))
    new = [one for one in after if one not in before]
    if not new:
        return made
    return EditRefused(f"nothing was changed: {new[0][0]}. To mend it: {new[0][1]}")


def is_first_format(unit: bytes) -> bool:
    """Whether a unit's own file says that the unit is of the first format."""
    read = read_markdown("unit.md", unit)
    data = read.data if isinstance(read, Document) else None
    return isinstance(data, dict) and data.get("format") == FIRST


def _faults(file: str, raw: bytes, first_format: bool) -> list[tuple[str, str]]:
    read = read_markdown(file, raw)
    kind = kind_of_file(file)
    if not isinstance(read, Document) or kind not in ("unit", "lesson"):
        return []
    newer = newer_fields(read, kind) if first_format else ()
    return [(one.message, one.help) for one in (*faults_of_shape(read, kind), *newer)]


def _parts_of(value: Any, deep: int) -> int:
    if deep > _MOST_DEEP:
        return _MOST_PARTS + 1
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    return 1 + sum(_parts_of(one, deep + 1) for one in inner)


def _plain(value: Any) -> Any:
    if isinstance(value, str):
        return " ".join(value.split()) if len(value) <= MOST_LETTERS else None
    if isinstance(value, bool | int | float):
        return value
    if isinstance(value, list):
        made = [_plain(one) for one in value]
        return None if any(one is None or one == "" for one in made) else made
    if isinstance(value, dict):
        fields = {" ".join(str(name).split()): _plain(one) for name, one in value.items()}
        return None if any(one is None or one == "" for one in fields.values()) else fields
    return None
