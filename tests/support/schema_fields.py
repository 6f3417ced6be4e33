"""The fields that schemas allow, by their paths: names with dots, `[]` any place, `*` any name."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from build_tools.shapes.schemas import schema
from build_tools.shapes.shape import referred

SOME_WORDS = "[^ \\t\\r\\n]"
"""The pattern of every field that takes words of the author's own."""


def ends(within: str) -> Iterator[tuple[str, Mapping[str, Any]]]:
    """Every field of the schema `within` that holds a value and not more fields: path and part."""
    yield from _ends(schema(within), within, "")


def fields_for_words(within: str) -> set[str]:
    """Every field of the schema `within` in which an author writes words."""
    return {path for path, part in ends(within) if part.get("pattern") == SOME_WORDS}


def _ends(
    part: Mapping[str, Any], within: str, path: str
) -> Iterator[tuple[str, Mapping[str, Any]]]:
    while "$ref" in part:
        part, within = referred(part, within)
    inside = [(name, one) for name, one in part.get("properties", {}).items()]
    if isinstance(more := part.get("additionalProperties"), Mapping):
        inside.append(("*", more))
    for name, one in inside:
        yield from _ends(one, within, f"{path}.{name}" if path else name)
    if "items" in part:
        yield from _ends(part["items"], within, f"{path}[]")
    if not inside and "items" not in part:
        yield path, part
