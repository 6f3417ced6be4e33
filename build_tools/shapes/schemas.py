"""The schemas in `schema/`, loaded once."""

from __future__ import annotations

import json
from functools import cache
from typing import TYPE_CHECKING, Any, Literal

import jsonschema_rs

from build_tools.disk.places import PROJECT

if TYPE_CHECKING:
    from jsonschema import Draft202012Validator
    from referencing import Registry, Resource

Kind = Literal[
    "unit", "lesson", "bank", "topics", "words", "near", "pictures", "safety", "taken-in"
]
SCHEMA_FOLDER = PROJECT / "schema"


@cache
def schema(name: str) -> dict[str, Any]:
    """The schema in `schema/<name>.schema.json`, as plain data."""
    text = (SCHEMA_FOLDER / f"{name}.schema.json").read_text(encoding="utf-8")
    loaded: dict[str, Any] = json.loads(text)
    return loaded


@cache
def validator(kind: Kind) -> Draft202012Validator:
    """A validator for one kind of file."""
    # loading it takes longer than checking a unit, and most files are sound
    from jsonschema import Draft202012Validator
    from referencing import Registry, Resource

    shared: Resource[Any] = Resource.from_contents(schema("shared"))
    registry: Registry[Any] = Registry().with_resource("bank:shared", shared)
    return Draft202012Validator(schema(kind), registry=registry)


@cache
def quick_validator(kind: Kind) -> jsonschema_rs.Draft202012Validator:
    """The compiled validator of another maker, which only says yes or no, and soon."""
    registry = jsonschema_rs.Registry([("bank:shared", schema("shared"))])
    return jsonschema_rs.Draft202012Validator(schema(kind), registry=registry)
