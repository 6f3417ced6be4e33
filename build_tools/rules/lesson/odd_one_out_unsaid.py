"""Where a task needs a partner, the unit says what one pupil over does.

In a class of 29 somebody has no partner, and it is often the same pupil. One line, such as "one
over makes a three: two answer", keeps everyone in. Said once, it serves the whole unit: in a step
in pairs or threes, under `partners`, in `if`, or in the notes of a lesson or the unit.

Bad:
    nothing else says what one over does
    grouping: pairs, task: One leads and the other mirrors. Swap.
Good:
    grouping: pairs, task: One leads and the other mirrors. Swap.
    into: Turn to the nearest person. One over makes a three.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.getting_together import A_THREE, LEFT_OVER, NEEDS_A_PARTNER
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"

_PARTNERS = ("pairs", "threes")
_DEEDS = ("explore", "make", "develop", "rehearse", "join")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first task that needs a partner, if nothing is said of one over."""
    found = _first_with_partner(unit)
    if found is None or _said_of_one_over(unit):
        return
    lesson, index = found
    grouping = lesson.steps[index].grouping
    size = 2 if grouping == "pairs" else 3
    class_ = 29 if size == 2 else 28
    yield Finding(
        lesson.file,
        ("steps", index, "grouping"),
        f"step {index + 1} is danced in {grouping}, and a class of {class_} makes {class_ // size} "
        f"{grouping} with {class_ % size} over, but nothing in "
        f"{how_many(len(unit.lessons), 'lesson')} says what that pupil does",
        "add a line to `into`, such as: one over makes a "
        + ("three" if size == 2 else "four and shares a part"),
    )


def _said_of_one_over(unit: Unit) -> bool:
    """Whether it is said in a step with partners, or where it is said once for all."""
    notes = (unit.notes, *(lesson.notes for lesson in unit.lessons))
    for_all = (
        text
        for lesson in unit.lessons
        for text in (lesson.change.get("partners"), *lesson.trouble.values())
    )
    in_steps = (
        text
        for lesson in unit.lessons
        for step in lesson.steps
        if step.grouping in _PARTNERS
        for text in (step.into, step.say, step.task, step.you, step.easier)
    )
    return any(map(_says, chain(in_steps, for_all, notes)))


def _says(text: str | None) -> bool:
    return bool(LEFT_OVER.mentioned(text) or A_THREE.said(text))


def _first_with_partner(unit: Unit) -> tuple[Lesson, int] | None:
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            if step.grouping not in _PARTNERS or step.phase not in _DEEDS:
                continue
            if NEEDS_A_PARTNER.in_any((step.into, step.say, step.task)):
                return lesson, index
    return None
