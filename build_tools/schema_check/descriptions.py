"""What the schemas say of a field, found by its place."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from build_tools.shapes.schemas import schema
from build_tools.shapes.shape import referred

Part = Mapping[str, Any]
_STEP = re.compile(r"[^.\[\]]+|\[\]")


def description(part: Part, within: str) -> str:
    """What a part of the schema `within` is for, following its references where it has no words."""
    while "description" not in part and "$ref" in part:
        part, within = referred(part, within)
    return str(part.get("description", ""))


def description_at(within: str, path: str) -> str:
    """What the field at `path` of the schema `within` is for; "" where there is no such field.

    In a path dots part the names, `[]` stands for any place in a list and `*` for any name.
    """
    part: Part = schema(within)
    for step in _STEP.findall(path):
        while "$ref" in part:
            part, within = referred(part, within)
        inside = _inside(part, step)
        if not isinstance(inside, Mapping):
            return ""
        part = inside
    return description(part, within)


def _inside(part: Part, step: str) -> object:
    if step == "[]":
        return part.get("items")
    return part.get("additionalProperties") if step == "*" else part.get("properties", {}).get(step)


def left_out(part: Part) -> str:
    """What the field is where the author leaves it out; "" where it has to be written."""
    return str(part.get("left_out", ""))
