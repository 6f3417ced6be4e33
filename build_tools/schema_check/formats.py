"""Fields that a file of an earlier format cannot have.

What format 1 knew is kept as it was in `format_1.json`: every field by its path, with `[]` for any
place in a list and `*` for any name. Whatever else the schemas allow is of format 2.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any, Literal

from build_tools.problem import FieldPath, Problem
from build_tools.source.front_matter import Document

FIRST = 1
_MARK = "'"


def newer_fields(document: Document, kind: Literal["unit", "lesson"]) -> Iterator[Problem]:
    """A problem for each field of format 2 in a file of a unit that says it is of format 1."""
    for path in _newer(document.data, "", (), _fields_of_first(kind)):
        name = str(path[-1])
        yield document.problem(
            "unknown-field",
            "error",
            path,
            f"`{name}` is of format 2, and the unit says `format: {FIRST}`",
            "run `upgrade`, which writes `format: 2` and leaves your words as they are, or take "
            "the field out",
        )


@cache
def _fields_of_first(kind: str) -> frozenset[str]:
    text = Path(__file__).with_name("format_1.json").read_text(encoding="utf-8")
    return frozenset(json.loads(text)[kind])


def _newer(data: Any, where: str, path: FieldPath, known: frozenset[str]) -> Iterator[FieldPath]:
    if isinstance(data, list):
        for n, one in enumerate(data):
            yield from _newer(one, f"{where}[]", (*path, n), known)
    if not isinstance(data, dict):
        return
    any_name = f"{where}.*"
    for name, one in data.items():
        inner = any_name if any_name in known else f"{where}.{name}" if where else name
        if inner not in known or (inner == "sections.*" and name.endswith(_MARK)):
            yield (*path, name)
        else:
            yield from _newer(one, inner, (*path, name), known)
