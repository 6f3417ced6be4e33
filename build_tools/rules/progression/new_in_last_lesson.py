"""The last lesson brings no new motif, section, development or device.

Pupils show well what they have danced often. What is new on the last day is danced once, badly,
in front of watchers. A new ending, a bow, or roles swapped round are fine: they need no new moves.

Bad:
    lesson 6 of 6: makes: [gust]
Good:
    lesson 6 of 6: dances: [whole]
    a later step: shows: [whole]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.devices import DEVICES
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import StepPlace, progress, steps_in_order

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")

_RELATIONSHIPS = ("unison", "canon", "question and answer", "match", "lead and follow")
_DEVICES = {*DEVICES, *_RELATIONSHIPS}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each thing that first appears in the last of two lessons or more."""
    if len(unit.lessons) < 2:
        return
    last = unit.lessons[-1]
    new = {
        name
        for name, p in progress(unit).items()
        if (places := (*p.made, *p.danced, *p.shown)) and min(places) >= StepPlace(last.number, 0)
    }
    taught = {
        word.casefold()
        for place, _, step in steps_in_order(unit)
        if place.lesson < last.number
        for word in step.teaches
    }
    for index, step in enumerate(last.steps):
        for field, n, name, said in _firsts(step, new, taught):
            yield Finding(
                last.file,
                ("steps", index, field, n),
                f"lesson {last.number} is the last, and it {field} {said}, which no earlier "
                "lesson has",
                "move it to an earlier lesson, and keep the last one for rehearsing and showing"
                if len(name) > 1
                else f"make section {name} earlier, and keep the last lesson for rehearsing and "
                "showing",
            )


def _firsts(step: Step, new: set[str], taught: set[str]) -> Iterator[tuple[str, int, str, str]]:
    """The field, the index in it, the name and the words for each new thing in `step`."""
    for field, names in (("makes", step.makes), ("develops", step.develops)):
        for n, name in enumerate(names):
            if name in new:
                new.remove(name)
                yield field, n, name, f"section {name}" if len(name) == 1 else f"`{name}`"
    for n, word in enumerate(step.teaches):
        if word.casefold() in _DEVICES and word.casefold() not in taught:
            taught.add(word.casefold())
            yield "teaches", n, word, word
