"""What follows in a lesson from the rest of it: its number, its minutes, and of each step its kind
and its grouping.

Only a field that every file had to write may follow: one that could be left out has its meaning
already, and a file that leaves it out keeps that. A field that is written stands. Nothing is made
up of what is not there: where a default cannot be worked out, the field stays away and the schema
asks for it.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from build_tools.shapes.shape import shape_of

Data = Mapping[str, Any]
_NUMBER = re.compile(r"lesson-([1-9][0-9]?)\.md\Z")
_BY_WHAT_IT_DOES = {"joins": "join", "develops": "develop", "makes": "make",
                    "shows": "look and talk"}  # fmt: skip
"""The kind of a step by what it does to the dance, the first that it does."""
_WHO_LOOKS = {"alone": "yourself", "pairs": "another pair", "half class": "half the class",
              "whole class": "whole class"}  # fmt: skip
_LOOKING = ("look and talk", "show")


def lesson_in_full(data: Any, file: str) -> Any:
    """The fields of the lesson in `file` with those that follow from the rest."""
    if not isinstance(data, dict):
        return data
    made = dict(data)
    if "lesson" not in data and (found := _NUMBER.search(file)):
        made["lesson"] = int(found.group(1))
    steps = data.get("steps")
    if not isinstance(steps, list) or not all(isinstance(step, dict) for step in steps):
        return made
    made["steps"] = full = _steps(steps, first=made.get("lesson") == 1)
    if "minutes" not in data and steps and all(_whole(step.get("minutes")) for step in steps):
        made["minutes"] = sum(step["minutes"] for step in steps)
    talk = data.get("look_and_talk")
    if isinstance(talk, dict) and "who" not in talk and (who := _who_looks(full)):
        made["look_and_talk"] = {**talk, "who": who}
    return made


def _steps(steps: Sequence[Data], *, first: bool) -> list[dict[str, Any]]:
    """Each step in full; `first` where this is the first lesson, which has nothing to recall."""
    full: list[dict[str, Any]] = []
    stays = "alone"
    for number, own in enumerate(steps):
        step = dict(own)
        last = number == len(steps) - 1
        phase = step.setdefault("phase", _phase(own, number, last=last, first_lesson=first))
        if "grouping" not in own:
            step["grouping"] = "alone" if number == 0 or phase == "cool-down" else stays
        # a word that is none is told of where it stands, and nowhere else
        stays = step["grouping"] if step["grouping"] in _groupings() else stays
        full.append(step)
    return full


@cache
def _groupings() -> tuple[Any, ...]:
    step = shape_of("lesson").fields["steps"].each
    return step.fields["grouping"].words if step else ()


def _phase(step: Data, number: int, *, last: bool, first_lesson: bool) -> str:
    if number == 0 or last:
        return "cool-down" if number else "warm-up"
    done = next((phase for field, phase in _BY_WHAT_IT_DOES.items() if field in step), "")
    return done or ("recall" if number == 1 and not first_lesson else "explore")


def _who_looks(steps: Sequence[Data]) -> str:
    looks = next((step for step in steps if step.get("phase") in _LOOKING), {})
    grouping = looks.get("grouping")
    if not isinstance(grouping, str):
        return ""
    return _WHO_LOOKS.get(grouping, "another group")


def _whole(value: Any) -> bool:
    return isinstance(value, int) and not isinstance(value, bool)
