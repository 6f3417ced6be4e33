"""What may stand in a place, shown as lines to copy: `- counts: 4`, and below it `sound: beat`."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from build_tools.shapes.shape import referred

_MOST_FIELDS = 3
_MOST_LINES = 4
_OPEN = "…"


def lines_to_copy(name: str, part: Mapping[str, Any], within: str) -> list[str]:
    """The field `name` with an example below it; nothing where it takes no fields or list.

    `part` is its piece of the schema `within`.
    """
    part, within = _found(part, within)
    below = _below(part, within)
    return [f"{name}:", *(f"  {line}" for line in below)] if below else []


def _below(part: Mapping[str, Any], within: str) -> list[str]:
    if "items" in part:
        each, inside = _found(part["items"], within)
        lines = _fields(each, inside) or [str(_value(each))]
        return [f"{'- ' if not n else '  '}{line}" for n, line in enumerate(lines)]
    return _fields(part, within)


def _fields(part: Mapping[str, Any], within: str) -> list[str]:
    """The fields that have to be there, each with a value; of any names, one."""
    lines: list[str] = []
    for name in _needed(part)[:_MOST_FIELDS]:
        inner, inside = _found(part["properties"][name], within)
        lines += lines_to_copy(name, inner, inside) or [f"{name}: {_value(inner)}"]
    each = part.get("additionalProperties")
    if not lines and isinstance(each, Mapping):
        inner, inside = _found(each, within)
        name = "its-name"
        lines = lines_to_copy(name, inner, inside) or [f"{name}: {_value(inner)}"]
    return lines[:_MOST_LINES]


def _needed(part: Mapping[str, Any]) -> list[str]:
    first: list[str] = part["oneOf"][0].get("required", []) if part.get("oneOf") else []
    needed = [*first, *part.get("required", [])]
    known = part.get("properties", {})
    return [name for name in dict.fromkeys(needed or known) if name in known]


def _value(part: Mapping[str, Any]) -> object:
    if "enum" in part:
        return part["enum"][0]
    kinds = part.get("type", "")
    if "integer" in kinds:
        return max(int(part.get("minimum", 1)), min(4, int(part.get("maximum", 4))))
    if "boolean" in kinds:
        return "true"
    return _OPEN


def _found(part: Mapping[str, Any], within: str) -> tuple[Mapping[str, Any], str]:
    while "$ref" in part:
        part, within = referred(part, within)
    return part, within
