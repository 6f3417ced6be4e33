"""What follows in a lesson from the rest of it: its number, its minutes, and of each step its kind
and its grouping.

Only a field that every file had to write may follow: one that could be left out has its meaning
already, and a file that leaves it out keeps that. A field that is written stands. Nothing is made
up of what is not there: where a default cannot be worked out, the field stays away and the schema
asks for it. In which grouping a part was made another lesson may say; so a step that goes over it,
where no grouping is written before, is `as made`, and the model finds out which.
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
_WHO_LOOKS = {"alone": "yourself", "as made": "yourself", "pairs": "another pair",
              "half class": "half the class", "whole class": "whole class"}  # fmt: skip
LOOKING = ("look and talk", "show")
AS_MADE = "as made"


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
    if "minutes" not in data and steps:
        # a step that lacks its minutes is told of where it stands, and nowhere else
        known = [step["minutes"] for step in steps if _whole(step.get("minutes"))]
        made["minutes"] = max(1, sum(known))
    talk = data.get("look_and_talk")
    if isinstance(talk, dict) and "who" not in talk and (who := _who_looks(full)):
        made["look_and_talk"] = {**talk, "who": who}
    return made


def _steps(steps: Sequence[Data], *, first: bool) -> list[dict[str, Any]]:
    """Each step in full; `first` where this is the first lesson, which has nothing to recall."""
    full: list[dict[str, Any]] = []
    stays, written, here = "alone", False, set[Any]()
    for number, own in enumerate(steps):
        step = dict(own)
        last = number == len(steps) - 1
        phase = step.setdefault("phase", _phase(own, number, last=last, first_lesson=first))
        written = written or "grouping" in own
        if "grouping" not in own:
            goes_over = not written and not here.issuperset(_named(own, "dances", "shows"))
            usual = AS_MADE if goes_over else stays
            step["grouping"] = "alone" if number == 0 or phase == "cool-down" else usual
        here.update(_named(own, "makes", "develops"))
        # a word that is none is told of where it stands, and nowhere else
        stays = step["grouping"] if step["grouping"] in _groupings() else stays
        full.append(step)
    return full


def _named(step: Data, *fields: str) -> list[Any]:
    """What a step names in lists; nothing of what is no list of names."""
    found = [step[field] for field in fields if isinstance(step.get(field), list)]
    return [name for names in found for name in names if isinstance(name, str)]


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
    looks = next((step for step in steps if step.get("phase") in LOOKING), {})
    grouping = looks.get("grouping")
    return who_looks(grouping) if isinstance(grouping, str) else ""


def who_looks(grouping: str) -> str:
    """Who looks, by the grouping of the step in which they do."""
    return _WHO_LOOKS.get(grouping, "another group")


def _whole(value: Any) -> bool:
    return isinstance(value, int) and not isinstance(value, bool)
