"""Where a task needs a partner, the unit says what one pupil over does.

In a class of 29 somebody has no partner, and it is often the same pupil. One line, such as "one
over makes a three: two answer", keeps everyone in. Said once, it serves the whole unit.

Bad:
    grouping: pairs, task: One leads and the other mirrors. Swap.
Good:
    grouping: pairs, into: Turn to the nearest person. One over makes a three.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_lesson import NEEDS_A_PARTNER, ONE_OVER
from build_tools.views.words.plain_words import how_many
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
SOURCE = "common practice, no source"

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
    if any(
        step.into and ONE_OVER.search(step.into) for lesson in unit.lessons for step in lesson.steps
    ):
        return True
    return bool(ONE_OVER.search(unit_text(unit).whole))


def _first_with_partner(unit: Unit) -> tuple[Lesson, int] | None:
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            if step.grouping not in ("pairs", "threes") or step.phase not in _DEEDS:
                continue
            if NEEDS_A_PARTNER.search(f"{step.say or ''} {step.task}"):
                return lesson, index
    return None
