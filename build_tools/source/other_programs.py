"""What other programs make of a file that this bank reads as it is meant: a note, and no fault.

Any program reads front matter by YAML alone. A unit may be typed otherwise, and is read by the
shape of its files; whoever means to open them elsewhere is told where YAML stops or goes astray.
"""

from __future__ import annotations

from itertools import zip_longest
from typing import Any

from build_tools.problem import Fault, FieldPath, Problem
from build_tools.source.front_matter import Document
from build_tools.source.said_once.in_full import in_full
from build_tools.source.typed.rows import spread
from build_tools.source.typed.what_was_read import READ_AS
from build_tools.source.yaml_reader import read_yaml

_TIDY = "nothing to mend; `tidy` writes it so that any program reads it as this bank does"


def notes_for_others(document: Document) -> list[Problem]:
    """A note at the first place that YAML alone refuses or reads otherwise, if none is there."""
    if document.kind is None:
        return []
    found = read_yaml(document.yaml_text, document.first_line)
    if isinstance(found, Fault):
        line, column = found.line, found.column
        message = (
            f"this is read as it is meant; a program of another make stops here: {found.message}"
        )
    else:
        data = spread(found[0]).data if document.kind == "unit" else found[0]
        data = in_full(data, document.kind, document.file)
        path = _first_difference(data, document.data, ())
        if path is None:
            return []
        line, column = document.locate(path)
        message = "other programs read other words here than this bank does"
    if any(guess.line == line for guess in document.guesses):
        return []  # what it is read as is said there already
    return [Problem(document.file, line, column, READ_AS, "note", message, _TIDY)]


def _first_difference(one: Any, other: Any, path: FieldPath) -> FieldPath | None:
    if isinstance(one, dict) and isinstance(other, dict) and list(one) == list(other):
        pairs = [(name, one[name], other[name]) for name in one]
    elif isinstance(one, list) and isinstance(other, list):
        pairs = [(n, a, b) for n, (a, b) in enumerate(zip_longest(one, other))]
    else:
        return None if type(one) is type(other) and one == other else path
    found = (_first_difference(a, b, (*path, name)) for name, a, b in pairs)
    return next((place for place in found if place is not None), None)
