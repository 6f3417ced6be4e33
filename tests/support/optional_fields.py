"""A file with each optional field of its schema, and the same without it.

Both are made of a sound file by the schema alone: what the field stands in is put there where the
file has none, with no more in it than there must be.
"""

from __future__ import annotations

import copy
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from build_tools.shapes.schemas import Kind, schema
from build_tools.shapes.shape import referred

Part = Mapping[str, Any]
_CODES = ("A", "left", "one-more", "2026-01-01", "1.0.1", "CC0-1.0", "media/x.svg", "media/x.mp3")


@dataclass(frozen=True, slots=True)
class Place:
    """A part of the schema `within`, its references followed."""

    part: Part
    within: str

    def inner(self, step: str) -> Place:
        """The place of a field; of a line, for `[]`; of what stands under a name, for `*`."""
        key = {"[]": "items", "*": "additionalProperties"}.get(step)
        return place(self.part[key] if key else self.part["properties"][step], self.within)

    @property
    def needed(self) -> frozenset[str]:
        """The fields that every one has: that schemas before `left_out` made everybody write."""
        return frozenset(
            (*self.part.get("required", ()), *self.part.get("else", {}).get("required", ()))
        )

    @property
    def one_of(self) -> tuple[str, ...]:
        """The fields of which exactly one is written."""
        ways = self.part.get("oneOf") or self.part.get("else", {}).get("oneOf", ())
        return tuple(way["required"][0] for way in ways if len(way.get("required", ())) == 1)


def place(part: Part, within: str) -> Place:
    """The place of a part of the schema `within`."""
    while "$ref" in part:
        part, within = referred(part, within)
    return Place(part, within)


def optional_fields(kind: Kind) -> Iterator[tuple[str, ...]]:
    """The path of every optional field of a schema, what is said in several places once."""
    seen: set[int] = set()

    def walk(here: Place, path: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
        if id(here.part) in seen:
            return
        seen.add(id(here.part))
        fields = here.part.get("properties", {})
        for name in fields:
            if name not in here.needed | {*here.one_of, "shared", "returns"}:
                yield (*path, name)
        steps = [*fields, *(["[]"] if "items" in here.part else [])]
        steps += ["*"] if isinstance(here.part.get("additionalProperties"), Mapping) else []
        for step in steps:
            yield from walk(here.inner(step), (*path, step))

    return walk(place(schema(kind), kind), ())


def with_and_without(sound: Any, path: tuple[str, ...], kind: Kind) -> tuple[Any, Any]:
    """The data of a sound file with the field at `path` in it, and without."""
    written = copy.deepcopy(sound)
    here, at = written, place(schema(kind), kind)
    for step in path[:-1]:
        inner = at.inner(step)
        if step == "[]":
            here = here[0]
        elif step == "*":
            here = next(iter(here.values()))
        else:
            if not here.get(step):
                beside = at.one_of if step in at.one_of else ()
                for other in beside:
                    here.pop(other, None)
                here[step] = least(inner)
            here = here[step]
        at = inner
    name = path[-1]
    here.pop(name, None)
    if len(here) < at.part.get("minProperties", 0):
        other = next(one for one in at.part["properties"] if one != name)
        here[other] = least(at.inner(other))
    without = copy.deepcopy(written)
    here[name] = least(at.inner(name))
    return written, without


def least(here: Place) -> Any:
    """What may stand at a place, and no more of it than there must be; never what is usual."""
    part = here.part
    if "enum" in part:
        return part["enum"][-1]
    kinds = part.get("type", ())
    kinds = [kinds] if isinstance(kinds, str) else list(kinds)
    if "integer" in kinds or "number" in kinds:
        return part.get("minimum", 0) + 1
    if "boolean" in kinds:
        return True
    if "array" in kinds:
        one = least(here.inner("[]"))
        few = max(1, part.get("minItems", 0))
        return [one + n if isinstance(one, int) else one for n in range(few)]
    if "string" in kinds:
        return _text(part)
    if isinstance(part.get("additionalProperties"), Mapping):
        return {_text(place(part["propertyNames"], here.within).part): least(here.inner("*"))}
    names = (*here.needed, *here.one_of[:1]) or tuple(part["properties"])[:1]
    return {name: least(here.inner(name)) for name in part["properties"] if name in names}


def _text(part: Part) -> str:
    pattern = part.get("pattern", "")
    if pattern.startswith("^"):
        return next(one for one in _CODES if re.search(pattern, one))
    return "Said in a few words"[: part.get("maxLength", 30)]
