"""What is said of an open place, in a draft and in a unit that is no longer one."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.rules.rule import Finding
from build_tools.views.words.open_places import open_places


def still_to_write(unit: Unit, help_: str) -> Iterator[Finding]:
    """A finding for each open place, with its field and its hint."""
    for place in open_places(unit):
        field = next((p for p in reversed(place.path) if isinstance(p, str)), None)
        named = field and place.path[0] != "notes"
        where = f"`{field}`" if named else f"the text below the fields of `{_name(place.file)}`"
        yield Finding(place.file, place.path, f"{where} is still to write: {place.hint}", help_)


def _name(file: str) -> str:
    return file.rpartition("/")[2]
