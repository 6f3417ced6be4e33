"""A file without what follows from the rest of it: what `tidy` leaves out, and a draft never has.

Only words of a list, names and numbers are left out, never a sentence; and only where the file
read without them is the same in full.
"""

from __future__ import annotations

import copy
from collections.abc import Collection, Iterator
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.schemas import Kind
from build_tools.source.said_once.in_full import in_full

_FOLLOWING = {
    "lesson": (
        "lesson",
        "minutes",
        "steps[].phase",
        "steps[].grouping",
        "look_and_talk.who",
    ),
    "unit": (
        "dance.sound.follows",
        "sections[].groups.size",
        "sections[].start.formation",
        "sections[].start.facing",
        "sections[].end.formation",
        "sections[].end.facing",
        "sections[].danced[].as",
        "sections[].sound.follows",
        "sections[].heard[].counts",
        "motifs[].from",
        "transitions[].from",
        "transitions[].to",
        "transitions[].heard[].counts",
    ),
}
"""The fields that may be left out; `[]` is each line of a list, or each name."""


def shortened(data: Any, kind: Kind, file: str, kept: Collection[FieldPath] = ()) -> Any:
    """The data of `file` as it is written, without what follows; the fields at `kept` stay."""
    if kind not in _FOLLOWING or not isinstance(data, dict):
        return data
    made, full = copy.deepcopy(data), in_full(data, kind, file)
    for pattern in _FOLLOWING[kind]:
        for path in reversed(list(_places(made, pattern.replace("[]", ".[]").split("."), ()))):
            holder = _at(made, path[:-1])
            if path in kept or len(holder) == 1:
                continue
            before = list(holder.items())
            del holder[path[-1]]
            if in_full(made, kind, file) != full:
                holder.clear()
                holder.update(before)
    return made


def _places(data: Any, steps: list[str], path: FieldPath) -> Iterator[FieldPath]:
    """Where fields stand that a pattern names, in their order."""
    if not steps:
        yield path
    elif steps[0] == "[]":
        pairs = data.items() if isinstance(data, dict) else \
            enumerate(data) if isinstance(data, list) else ()  # fmt: skip
        for name, value in pairs:
            yield from _places(value, steps[1:], (*path, name))
    elif isinstance(data, dict) and steps[0] in data:
        yield from _places(data[steps[0]], steps[1:], (*path, steps[0]))


def _at(data: Any, path: FieldPath) -> Any:
    for step in path:
        data = data[step]
    return data
