"""When pupils go into groups, the teacher has the words that get them there.

"Get into fours" is where lessons are lost: friends first, one pupil left, three minutes gone. A
line ready to say, such as "two pairs make a four", does it in seconds. A pair for a task that each
could do alone needs no words, nor does a group that was there earlier in the lesson.

Bad:
    pairs, then grouping: fours with no `into`
Good:
    pairs, then grouping: fours, into: Two pairs make a four.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_lesson import GETS_INTO_GROUPS, NEEDS_A_PARTNER

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_GROUPS = ("pairs", "threes", "fours", "fives", "sixes")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each new grouping that comes without words."""
    for lesson in unit.lessons:
        for index in _new_groupings(lesson):
            step = lesson.steps[index]
            if step.into or _said_elsewhere(step):
                continue
            before = lesson.steps[index - 1].grouping if index else "the classroom"
            yield Finding(
                lesson.file,
                ("steps", index, "grouping"),
                f"step {index + 1} goes from {before} to {step.grouping}, but there is no `into` "
                "to say how",
                _help(step),
            )


def _new_groupings(lesson: Lesson) -> Iterator[int]:
    """The steps that bring pupils into groups they were not in before in the lesson."""
    been: set[str] = set()
    for index, step in enumerate(lesson.steps):
        if step.grouping in _GROUPS and step.grouping not in been:
            been.add(step.grouping)
            yield index


def _said_elsewhere(step: Step) -> bool:
    text = f"{step.say or ''} {step.task}"
    if step.grouping == "pairs" and (
        step.phase == "look and talk" or not NEEDS_A_PARTNER.search(text)
    ):
        return True
    return bool(GETS_INTO_GROUPS.search(text))


def _help(step: Step) -> str:
    words = {
        "pairs": "Turn to the nearest person. One over makes a three.",
        "fours": "Two pairs make a four. A pair over joins a four.",
    }.get(step.grouping, f"Get into {step.grouping} with those nearest to you.")
    return f"add the words to say, such as `into: {words}`"
