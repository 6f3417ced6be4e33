"""One document against its schema."""

from __future__ import annotations

from collections.abc import Iterator, Set
from itertools import islice

from build_tools.problem import FieldPath, Problem
from build_tools.schema_check.changed_returns import return_faults
from build_tools.schema_check.descriptions import description
from build_tools.schema_check.misfit import Misfit, as_misfit
from build_tools.schema_check.wording import (
    Said,
    cut_short,
    missing_field,
    nearest,
    unknown_field,
    wrong_name,
    wrong_value,
)
from build_tools.shapes.schemas import Kind, quick_validator, validator
from build_tools.shapes.shape import ANY, shape_of
from build_tools.source.front_matter import Document

MOST_MISFITS = 200
"""Of one file. Where there are more, it is another sort of file, and nobody reads them all."""


def check_document(document: Document, kind: Kind) -> list[Problem]:
    """The problems of `document` as a file of `kind`, sorted; one for each fault."""
    problems = faults_of_shape(document, kind)
    return sorted(return_faults(document)) if kind == "unit" and not problems else problems


def faults_of_shape(document: Document, kind: Kind) -> list[Problem]:
    """What the schema of `kind` alone finds wrong, sorted; one for each fault."""
    seen = document.fitting is not None and document.fitting is document.data
    if seen or quick_validator(kind).is_valid(document.data):
        return []
    problems: set[Problem] = set()
    spoilt: set[FieldPath] = set()
    errors = validator(kind).iter_errors(document.data)
    misfits = [as_misfit(error) for error in islice(errors, MOST_MISFITS)]
    meant = {(m.path, name) for m in misfits for name in _meant(m)}
    for misfit in sorted(misfits, key=_plainest_first):
        if misfit.path in spoilt and misfit.keyword in _FOLLOW_ON:
            continue
        for rule, path, (message, help_) in _say(misfit, meant, kind):
            problems.add(document.problem(rule, "error", path, message, help_))
        if misfit.keyword != "required":
            spoilt.add(misfit.path)
    return sorted(problems)


_FOLLOW_ON = ("oneOf", "pattern", "minLength")
"""Complaints that only repeat an earlier one at the same place."""
_PLAINEST = ("additionalProperties", "type", "enum", "const", "maxLength", "required")


def _plainest_first(misfit: Misfit) -> tuple[int, str]:
    known = misfit.keyword in _PLAINEST
    return _PLAINEST.index(misfit.keyword) if known else len(_PLAINEST), str(misfit.path)


def _meant(misfit: Misfit) -> Iterator[str]:
    """The absent fields that unknown ones were most likely meant to be."""
    if misfit.keyword == "additionalProperties" and not misfit.is_name:
        properties = misfit.schema.get("properties", {})
        for name in misfit.value:
            free = sorted(set(properties) - set(misfit.value))
            if name not in properties and (near := nearest(name, free)):
                yield near


def _say(
    misfit: Misfit, meant: Set[tuple[FieldPath, str]], kind: Kind
) -> Iterator[tuple[str, FieldPath, Said]]:
    properties = misfit.schema.get("properties", {})
    if misfit.is_name:
        yield "wrong-value", (*misfit.path, str(misfit.value)), wrong_name(misfit)
    elif misfit.keyword == "additionalProperties":
        for name in misfit.value:
            if name not in properties:
                belongs = _belongs(name, misfit.path, kind)
                said = unknown_field(name, properties, belongs, misfit.value)
                yield "unknown-field", (*misfit.path, name), said
    elif misfit.keyword == "required":
        # every absent field is named by each complaint about one of them; the set keeps one
        for name in misfit.bound:
            if name not in misfit.value and (misfit.path, name) not in meant:
                said = missing_field(name, description(properties.get(name, {}), kind))
                yield "missing-field", misfit.path, said
    else:
        yield "wrong-value", misfit.path, wrong_value(field_name(misfit.path), misfit, kind)


def _belongs(name: str, path: FieldPath, kind: Kind) -> str:
    """The one field beside those around it under which a field of this name belongs."""
    around = shape_of(kind)
    for part in path[:-1]:
        around = around.fields.get(str(part)) or around.each or ANY
    found = [n for n, shape in around.fields.items() if name in shape.fields and (n,) != path[-1:]]
    return found[0] if len(found) == 1 and name not in around.fields else ""


def field_name(path: FieldPath) -> str:
    """A field as the author sees it: "`minutes`", or "line 2 of `steps`"."""
    if not path:
        return "the file"
    last = path[-1]
    if isinstance(last, int):
        around = next((p for p in reversed(path) if isinstance(p, str)), "the list")
        return f"line {last + 1} of `{cut_short(around)}`"
    return f"`{cut_short(last)}`"
