"""A field of every type put into every schema, as the walk-through "Add a field" has it."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import cycle
from pathlib import Path
from typing import Any

Part = dict[str, Any]
KINDS = ("unit", "lesson", "bank", "topics", "words", "safety")
HERE = "added_here"
"""The one field that every set of fields inside another gets, each of the next type."""


@dataclass(frozen=True, slots=True)
class Added:
    """A type of field: what the schema says of it beside its description, and some values."""

    part: Part
    value: Any
    other: Any
    wrong: Any


LINE = {"$ref": "bank:shared#/$defs/line"}
INNER = {
    "type": "object",
    "additionalProperties": False,
    "required": ["words"],
    "properties": {
        "words": {"description": "Some words.", **LINE},
        "often": {"description": "How often.", "type": "integer"},
    },
}
TYPES: dict[str, Added] = {
    "added_line": Added(LINE, "Walk softly on the moss", "Walk on the moss as softly", ["Walk"]),
    "added_number": Added({"type": "number"}, 2.5, 3, "many"),
    "added_answer": Added({"type": "boolean"}, True, False, "perhaps"),
    "added_lines": Added(
        {"type": "array", "items": {"description": "One line.", **LINE}},
        ["A fern", "A stone"], ["A stone", "A fern", "A root"], "A fern",
    ),
    "added_sets": Added(
        {"type": "array", "items": {"description": "One of them.", **INNER}},
        [{"words": "Moss", "often": 2}], [{"words": "Moss"}, {"words": "Bark"}], [{"often": 2}],
    ),
    "added_set": Added(INNER, {"words": "Moss", "often": 2}, {"words": "Bark"}, {"wordz": "Moss"}),
    "added_choice": Added({"enum": ["moss", "bark"]}, "moss", "bark", "mosss"),
    "added_name": Added({"$ref": "bank:shared#/$defs/name"}, "soft-moss", "dry-bark", "Soft Moss"),
}  # fmt: skip


def meaning(name: str, place: str) -> str:
    """What an added field says that it is for."""
    return f"What {name.replace('_', ' ')} tells of {place}. It is tried here and nowhere else."


def add_to(schemas: Path) -> None:
    """Add them to every schema in a folder: all types to each kind of file and to the actions."""
    for file in sorted(schemas.glob("*.schema.json")):
        kind = file.name.partition(".")[0]
        whole = json.loads(file.read_text(encoding="utf-8"))
        top = _top(kind, whole)
        types = cycle(TYPES)
        for part in list(_sets_of_fields(whole)):
            names = {name: name for name in TYPES} if part is top else {HERE: next(types)}
            for name, of_type in names.items():
                added = {"description": meaning(name, f"the {kind}"), **TYPES[of_type].part}
                part["properties"][name] = json.loads(json.dumps(added))
        file.write_text(json.dumps(whole), encoding="utf-8")


def _top(kind: str, whole: Part) -> Part:
    found: Part = whole["$defs"]["action"] if kind == "shared" else whole
    return found["additionalProperties"] if kind in ("topics", "words") else found


def _sets_of_fields(part: Any) -> Iterator[Part]:
    if isinstance(part, list):
        for one in part:
            yield from _sets_of_fields(one)
    if isinstance(part, dict):
        if "properties" in part and part.get("type") == "object":
            yield part
        for inner in part.values():
            yield from _sets_of_fields(inner)


def filled(data: Any, kind: str, schemas: Mapping[str, Part], value: str = "value") -> Any:
    """The data of a file with every added field filled in; `value` says with which of its values.

    `schemas` are those with the fields added.
    """
    return _filled(data, schemas[kind], kind, schemas, value)


def _filled(data: Any, part: Part, kind: str, schemas: Mapping[str, Part], value: str) -> Any:
    while "$ref" in part:
        where, _, inner = part["$ref"].partition("#/")
        kind = where.removeprefix("bank:") or kind
        part = schemas[kind]
        for step in inner.split("/"):
            part = part[step]
    if isinstance(data, list):
        items = part.get("items", {})
        return [_filled(one, items, kind, schemas, value) for one in data]
    if not isinstance(data, dict):
        return data
    fields = part.get("properties", {})
    others = part.get("additionalProperties")
    names = others if isinstance(others, dict) else {}
    made = {
        name: _filled(one, fields.get(name, names), kind, schemas, value)
        for name, one in data.items()
    }
    for name, field in fields.items():
        if name.startswith("added_"):
            made[name] = _value_of(field, value)
    return made


def _value_of(field: Part, value: str) -> Any:
    plain = {name: part for name, part in field.items() if name != "description"}
    for added in TYPES.values():
        if _without_added(plain) == added.part:
            return getattr(added, value)
    raise AssertionError(field)


def _without_added(part: Any) -> Any:
    if isinstance(part, dict):
        return {n: _without_added(p) for n, p in part.items() if n != HERE}
    return [_without_added(one) for one in part] if isinstance(part, list) else part
