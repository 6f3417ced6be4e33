"""A file's fields with all that follows from them, as if the author had written everything."""

from __future__ import annotations

from typing import Any

from build_tools.shapes.schemas import Kind
from build_tools.shapes.shape import shape_of
from build_tools.source.said_once.dance_in_full import unit_in_full
from build_tools.source.said_once.in_one_line import as_lists
from build_tools.source.said_once.steps_in_full import lesson_in_full


def in_full(data: Any, kind: Kind, file: str) -> Any:
    """The data of `file`: lists that stand in one line as lists, and each default written out.

    What is written stays as it is, so a file that says everything means what it says; and saying
    in full what was said in full changes nothing.
    """
    lists = as_lists(data, shape_of(kind))
    if kind == "lesson":
        return lesson_in_full(lists, file)
    return unit_in_full(lists) if kind == "unit" else lists
