"""A schema as its reader needs it: at each place text, a word of a list, a list, or fields."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache
from typing import Any, Literal

from build_tools.shapes.schemas import Kind, schema

Takes = Literal["text", "code", "word", "number", "yes or no", "list", "fields", "names", "any"]
_SOME_LETTER = "[^ \\t\\r\\n]"
"""The pattern of free text; whatever has another is a code, such as a name or a day."""


@dataclass(frozen=True, slots=True)
class Shape:
    """What one place takes. `fields` are by name; `each` is a line of a list, or of any name."""

    takes: Takes
    fields: Mapping[str, Shape] = field(default_factory=dict)
    each: Shape | None = None
    words: tuple[Any, ...] = ()
    pattern: str = ""
    """What a code, a number in words or, for names, each name has to look like."""


ANY = Shape("any")


@cache
def shape_of(kind: Kind) -> Shape:
    """The shape of a whole file of `kind`."""
    return shape_of_part(schema(kind), kind)


def shape_of_part(part: Mapping[str, Any], within: str) -> Shape:
    """The shape of a part of the schema `within`."""
    while "$ref" in part:
        part, within = referred(part, within)
    if "enum" in part:
        return Shape("word", words=tuple(part["enum"]))
    kinds = part.get("type", ())
    kinds = [kinds] if isinstance(kinds, str) else list(kinds)
    pattern = part.get("pattern", "")
    if "integer" in kinds or "number" in kinds:
        return Shape("number", pattern=pattern)
    if "string" in kinds:
        return Shape("text") if pattern in ("", _SOME_LETTER) else Shape("code", pattern=pattern)
    if "boolean" in kinds:
        return Shape("yes or no")
    if "array" in kinds:
        return Shape("list", each=shape_of_part(part.get("items", {}), within))
    if "properties" in part:
        fields = {name: shape_of_part(one, within) for name, one in part["properties"].items()}
        return Shape("fields", fields=fields)
    if isinstance(each := part.get("additionalProperties"), Mapping):
        names, _ = _resolved(part.get("propertyNames", {}), within)
        return Shape("names", each=shape_of_part(each, within), pattern=names.get("pattern", ""))
    return ANY


def _resolved(part: Mapping[str, Any], within: str) -> tuple[Mapping[str, Any], str]:
    while "$ref" in part:
        part, within = referred(part, within)
    return part, within


def referred(part: Mapping[str, Any], within: str) -> tuple[Mapping[str, Any], str]:
    """What a part of the schema `within` refers to by `$ref`, and the schema that this is in."""
    where, _, inner = part["$ref"].partition("#/")
    within = where.removeprefix("bank:") or within
    found: Mapping[str, Any] = schema(within)
    for step in inner.split("/"):
        found = found[step]
    return found, within
