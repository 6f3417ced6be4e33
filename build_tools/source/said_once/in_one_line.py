"""Short lists in one line, without brackets or hyphens, and back.

Names, words and numbers have commas between (`dances: call, answer`), and so have the few lists of
texts that are names (`subjects: Geography, English`). Texts have semicolons (`answers: my eyes; the
end of the throw`), and what is said on counts has spaces (`says: edge two cast`). A list of one is
the one.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.shape import ANY, Shape

SAYS = "says"
"""The one list of texts whose parts are single words, one on each count."""
_SHORT = ("code", "word", "number")
_NAMES = ("subjects", "teaches")
"""Lists of texts that are names and hold no comma."""
_A_LINE_EACH = ("classroom_first", "safety", "rules")
"""Lists of sentences; each stands on a line of its own, with a hyphen."""
_WRITTEN_A_LINE_EACH = (*_A_LINE_EACH, "collect")
"""What to get may stand in one line too, but is better ticked off in lines of its own."""
_STARTS_A_LINE = re.compile(r"\s*(?:[-*•·–—]|[0-9]+[.)]\s)")
"""What starts a line of a list by hand, which YAML reads on as one text."""


def in_one_text(shape: Shape, name: str) -> bool:
    """Whether the list `name` of `shape` holds texts, and may stand in one line."""
    takes = shape.each.takes if shape.takes == "list" and shape.each else ""
    return takes == "text" and name not in _A_LINE_EACH


def parts_of(typed: str, each: Shape, name: str) -> list[Any] | None:
    """The parts of the list `name` that stands in one line; None where it could mean two things."""
    if each.takes in _SHORT:
        parts = [part for part in re.split(r"\s*,\s*", typed.strip()) if part]
        return [_as_meant(part, each) for part in parts]
    if each.takes != "text" or name in _A_LINE_EACH or _STARTS_A_LINE.match(typed):
        return None
    if name == SAYS:
        return [part for part in re.split(r"[,;]?\s+", typed.strip().strip(",;")) if part]
    if name in _NAMES:
        return [part for part in re.split(r"\s*[,;]\s*", typed.strip()) if part]
    if "," in typed and ";" not in typed:
        return None
    return [part for part in re.split(r"\s*;\s*", typed.strip()) if part]


def _as_meant(part: str, each: Shape) -> Any:
    number = each.takes == "number" and re.fullmatch(r"0|[1-9][0-9]{0,5}", part)
    return int(part) if number else part


def plainly(typed: str, each: Shape, name: str) -> list[Any] | None:
    """The parts of a list in one line, where each is what may stand there as it was typed."""
    parts = parts_of(typed, each, name)
    return parts if parts and all(_fits(part, each) for part in parts) else None


def _fits(part: Any, each: Shape) -> bool:
    if each.takes == "text" or (each.takes == "number" and isinstance(part, int)):
        return True
    if each.takes == "word":
        return part in each.words
    return bool(each.pattern) and re.search(each.pattern, str(part)) is not None


def one_line(items: Sequence[Any], each: Shape, name: str) -> Any:
    """The list `name` as it is written in one line; None where it has to stand as a list."""
    if not items or name in _WRITTEN_A_LINE_EACH:
        return None
    if any(isinstance(one, bool) or not isinstance(one, str | int) for one in items):
        return None
    commas = each.takes in _SHORT or name in _NAMES
    between = ", " if commas else " " if name == SAYS else "; "
    line = between.join(str(one) for one in items)
    if each.takes not in (*_SHORT, "text") or plainly(line, each, name) != list(items):
        return None
    return items[0] if len(items) == 1 and isinstance(items[0], int) else line


def line_at(path: FieldPath, items: Sequence[Any], shape: Shape) -> Any:
    """The list of `shape` at `path` as it is written in one line; None where it cannot be."""
    name = path[-1] if path else ""
    return one_line(items, shape.each or ANY, name) if isinstance(name, str) else None


def as_lists(value: Any, shape: Shape, name: str = "") -> Any:
    """The data of a file of `shape`, each list that stands in one line as a list."""
    if shape.takes == "list":
        each = shape.each or ANY
        if isinstance(value, list):
            if each.takes in ("list", "fields", "names"):
                return [as_lists(one, each, name) for one in value]
            return value
        if isinstance(value, bool) or not isinstance(value, str | int):
            return value
        parts = parts_of(str(value), each, name)
        return value if parts is None else parts
    if isinstance(value, dict) and shape.takes in ("fields", "names"):
        fields, each = shape.fields, shape.each or ANY
        return {n: as_lists(one, fields.get(n) or each, n) for n, one in value.items()}
    return value
