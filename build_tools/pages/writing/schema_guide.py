"""From a schema to a guide for whoever writes the file: each field, what it is for, its words."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

Schema = Mapping[str, Any]
Schemas = Mapping[str, Schema]
_DEEP = 6


@dataclass(frozen=True, slots=True)
class FieldGuide:
    """One field, as the writing page explains it."""

    name: str
    """The field's name, or what stands in its place where the author chooses the name."""
    needed: bool
    """Whether every file has it."""
    meaning: str
    """The schema’s own description of the field."""
    form: str
    """What may be written: a line of words, a number; empty where the meaning says it."""
    left_out: str
    """What it is where it is not written; empty where nothing follows."""
    example: str | None
    """How it looks in a real unit."""
    parts: tuple[FieldGuide, ...]
    """The fields inside it."""


def fields_of(
    schemas: Schemas, kind: str, examples: Mapping[str, str], without: tuple[str, ...] = ()
) -> tuple[FieldGuide, ...]:
    """The fields of one kind of file; `examples` by the names of top fields."""
    return _Guide(schemas, kind).parts(schemas[kind], examples, 0, without)


class _Guide:
    """Follows references inside one schema and into the shared one."""

    def __init__(self, schemas: Schemas, kind: str) -> None:
        self._schemas, self._kind = schemas, kind

    def parts(
        self,
        schema: Schema,
        examples: Mapping[str, str],
        depth: int,
        without: tuple[str, ...] = (),
    ) -> tuple[FieldGuide, ...]:
        """The fields inside an object, or inside what a list or a map of names holds."""
        if depth > _DEEP:
            return ()
        # what a whole one needs; one that comes back changed writes only what differs
        needed = {*schema.get("required", ()), *schema.get("else", {}).get("required", ())}
        return tuple(
            self._field(name, self._resolved(field), name in needed, examples.get(name), depth)
            for name, field in schema.get("properties", {}).items()
            if name not in without
        )

    def _field(
        self, name: str, schema: Schema, needed: bool, example: str | None, depth: int
    ) -> FieldGuide:
        return FieldGuide(
            name=name,
            needed=needed and "left_out" not in schema,
            meaning=schema.get("description", ""),
            form=_unless_said(self._form(schema), schema.get("description", "")),
            left_out=schema.get("left_out", ""),
            example=example,
            parts=self._inside(schema, depth),
        )

    def _inside(self, schema: Schema, depth: int) -> tuple[FieldGuide, ...]:
        for key in ("items", "additionalProperties"):
            if isinstance(schema.get(key), Mapping):
                return self.parts(self._resolved(schema[key]), {}, depth + 1)
        # an action is written in many places and explained once
        if depth and "travel" in schema.get("properties", {}):
            return ()
        return self.parts(schema, {}, depth + 1)

    def _resolved(self, schema: Schema) -> Schema:
        if "$ref" not in schema:
            return schema
        where, _, way = str(schema["$ref"]).partition("#/")
        found: Any = self._schemas[where.removeprefix("bank:") or self._kind]
        kind = where.removeprefix("bank:") or self._kind
        for step in way.split("/"):
            found = found[step]
        rest = {key: value for key, value in schema.items() if key != "$ref"}
        resolved = _Guide(self._schemas, kind)._resolved(found)
        return {**resolved, **rest}

    def _form(self, schema: Schema) -> str:
        if "const" in schema:
            return str(schema["const"])
        if "enum" in schema:
            return f"one of: {', '.join(str(word) for word in schema['enum'])}"
        if schema.get("type") == "array":
            return self._list_form(schema)
        if isinstance(schema.get("additionalProperties"), Mapping):
            inside = self._resolved(schema["additionalProperties"])
            names = "words" if inside.get("type") == "string" else "short names"
            return f"{_many(schema, 'Properties')}{names}, each with what belongs to it".strip()
        if schema.get("type") == "object":
            return "the fields below"
        return _plain_form(schema)

    def _list_form(self, schema: Schema) -> str:
        inside = self._resolved(schema["items"])
        if inside.get("type") == "object":
            return f"a list{_range(schema, 'Items')}, each with the fields below"
        return f"a list{_range(schema, 'Items')}; each {self._form(inside)}"


def _unless_said(form: str, meaning: str) -> str:
    return "" if form.casefold() in meaning.casefold() else form


def _plain_form(schema: Schema) -> str:
    types = schema.get("type")
    if types == "boolean":
        return "true or false"
    if schema.get("$comment") and schema.get("$comment") != "some words":
        return str(schema["$comment"])
    if types in ("integer", "number"):
        return f"{'a whole number' if types == 'integer' else 'a number'}{_bounds(schema)}"
    most = f", {schema['maxLength']} letters at most" if "maxLength" in schema else ""
    return f"a line of words{most}"


def _bounds(schema: Schema) -> str:
    least, most = schema.get("minimum"), schema.get("maximum")
    if least is not None and most is not None:
        return f" from {least} to {most}"
    return f" of {most} at most" if most is not None else "" if least is None else f" from {least}"


def _range(schema: Schema, what: str) -> str:
    least, most = schema.get(f"min{what}", 0), schema.get(f"max{what}")
    if most is None:
        return f" of {least} or more" if least else ""
    if least == most:
        return f" of {least}"
    return f" of {least} to {most}" if least else f" of {most} at most"


def _many(schema: Schema, what: str) -> str:
    return _range(schema, what).removeprefix(" of ").strip() + " "
