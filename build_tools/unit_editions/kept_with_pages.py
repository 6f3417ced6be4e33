"""A unit as it was written, kept in a published edition beside its pages, to be compared with."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from build_tools.comparing.change import WrittenUnit
from build_tools.publishing.digests import digest, read_manifest
from build_tools.publishing.edition_folders import EDITIONS
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.shared_folder import read_file
from build_tools.shapes.schemas import Kind, quick_validator

NAME = "as-written.json"


def place_of(slug: str) -> str:
    """Where the unit `slug` is kept as it was written, by its path in the site."""
    return f"units/{slug}/{NAME}"


def as_kept(unit: WrittenUnit) -> bytes:
    """The unit as it is kept: JSON (RFC 8259) in UTF-8, a line a file of the unit, and its media.

    Only what fields and notes say is in it, no comment that an author wrote for herself.
    """
    lines = [
        _line("unit", {"fields": unit.fields, "notes": unit.notes}),
        *(
            _line(str(number), {"fields": fields, "notes": notes})
            for number, (fields, notes) in sorted(unit.lessons.items())
        ),
        _line("media", unit.media),
    ]
    return ("{\n" + ",\n".join(lines) + "\n}\n").encode()


def _line(name: str, value: Any) -> str:
    return f"{json.dumps(name)}: {json.dumps(value, ensure_ascii=False)}"


def read_kept(data: bytes) -> WrittenUnit | None:
    """The same again; None where it is no unit of the formats that this software knows."""
    try:
        held = json.loads(data)
    except (ValueError, RecursionError):
        return None
    if not isinstance(held, dict):
        return None
    media, unit = held.pop("media", None), held.pop("unit", None)
    numbers = [name for name in held if name.isascii() and name.isdigit()]
    whole = len(numbers) == len(held) and _is_file(unit, "unit") and _is_media(media)
    if not whole or not all(_is_file(one, "lesson") for one in held.values()):
        return None
    lessons = {int(name): (held[name]["fields"], held[name]["notes"]) for name in numbers}
    return WrittenUnit(unit["fields"], unit["notes"], lessons, media)


def readers_have(target: Path, slug: str) -> WrittenUnit | None:
    """The unit in the edition that readers of the folder `target` get now.

    None where there is none, where it was published before units were kept so, or where it is not
    as it was published.
    """
    pointer = read_pointer(target)
    if pointer is None:
        return None
    edition, name = target / EDITIONS / pointer.current, place_of(slug)
    data, listed = read_file(edition / name), read_manifest(edition) or {}
    if data is None or listed.get(name) != digest(data):
        return None
    return read_kept(data)


def _is_file(held: Any, kind: Kind) -> bool:
    return (
        isinstance(held, dict)
        and isinstance(held.get("notes"), str)
        and quick_validator(kind).is_valid(held.get("fields"))
    )


def _is_media(held: Any) -> bool:
    return isinstance(held, dict) and all(isinstance(one, str) for one in held.values())
