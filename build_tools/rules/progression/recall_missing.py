"""Each lesson after the first begins with what pupils made before.

A week lies between two lessons. What is not danced again at the start is lost, and what is new
then stands on nothing. A warm-up that dances earlier material is a recall too.

Bad:
    lesson 2, step 1: phase: warm-up
    step 2: phase: explore
Good:
    lesson 2, step 1: phase: warm-up
    step 2: phase: recall, dances: [A]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.going_back import dances_again
from build_tools.views.dance.when_made import inside, progress
from build_tools.views.words.parts_said import first_made, parts_said

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")

_FIRST_STEPS = 3


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson from the second on that starts with nothing earlier."""
    for before, lesson in zip(unit.lessons, unit.lessons[1:], strict=False):
        opening = lesson.steps[:_FIRST_STEPS]
        if any(_goes_back(unit, lesson, step) for step in opening):
            continue
        if any(_dances_again(unit, lesson, t) for step in opening for t in (step.say, step.task)):
            continue
        number = min(_FIRST_STEPS, len(lesson.steps))
        first = "step does" if number == 1 else f"{number} steps do"
        yield Finding(
            lesson.file,
            ("steps",),
            f"the first {first} not dance anything from lesson {before.number}, the one before",
            f"put a step with `phase: recall` after the warm-up, in which pupils dance what "
            f"lesson {before.number} made",
        )


def _goes_back(unit: Unit, lesson: Lesson, step: Step) -> bool:
    """Whether a step dances what an earlier lesson made, or names it."""
    ways = progress(unit)
    names = inside(unit.dance, (*step.dances, *step.joins, *step.shows))
    if any(place.lesson < lesson.number for name in names for place in ways[name].made[:1]):
        return True
    if step.phase not in ("warm-up", "recall", "rehearse", "join"):
        return False
    said = parts_said(unit, f"{step.does}. {step.task}")
    return any(
        (made := first_made(unit, one.parts)) and made.lesson < lesson.number for one in said
    )


def _dances_again(unit: Unit, lesson: Lesson, text: str | None) -> bool:
    """Whether the words have pupils dance what was made in an earlier lesson."""
    ways, dance = progress(unit), unit.dance
    earlier = [
        name
        for name in (*dance.motifs, *dance.developments)
        if (made := ways[name].made) and made[0].lesson < lesson.number
    ]
    moves = [
        tuple(action.word for action in dance.motifs[name].actions if action.word)
        for name in earlier
        if name in dance.motifs
    ]
    return dances_again(text, earlier, moves)
