"""What a lesson names as the next step is where the next lesson starts.

`next` is written so that what was seen today decides tomorrow's start. If the next lesson opens
with something else, the teacher of that lesson has nowhere to act on it.

Bad:
    lesson 1: next: {seen: dance the whole wave, not_yet: dance the sink first}
    lesson 2: warm-up, then a new motif
Good:
    lesson 2, recall: Dance the whole wave. If not yet together, dance the sink first.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_looking import telling_words
from build_tools.views.dance.progress import held

GRADE: Grade = "question"
SOURCE = (
    "Hattie and Timperley, The Power of Feedback, 2007: where to next is one of three questions"
)
NEEDS = ("next-step-missing", "unknown-name")
OPENING = 3
"""So many steps are the start of a lesson."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose next step the next lesson does not take up."""
    for lesson, following in zip(unit.lessons, unit.lessons[1:], strict=False):
        talk = lesson.look_and_talk
        if talk is None or talk.next is None or following.number != lesson.number + 1:
            continue
        opening = following.steps[:OPENING]
        if any(step.phase == "recall" and not _parts(step) for step in opening):
            continue
        if not _danced(unit.dance, lesson.steps).isdisjoint(_danced(unit.dance, opening)):
            continue
        promised = telling_words((talk.next.seen, talk.next.not_yet, talk.at, talk.looking_for))
        if not promised.isdisjoint(_words(opening)):
            continue
        yield Finding(
            lesson.file,
            ("look_and_talk", "next"),
            f"`next` says where lesson {following.number} starts, but none of its first "
            f"{len(opening)} steps takes that up",
            f"say it in a recall step of lesson {following.number}: what to dance first, and what "
            "if it was not seen yet",
        )


def _parts(step: Step) -> tuple[str, ...]:
    return (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)


def _danced(dance: Dance, steps: Iterable[Step]) -> frozenset[str]:
    return held(dance, (part for step in steps for part in _parts(step)))


def _words(steps: Iterable[Step]) -> frozenset[str]:
    return telling_words(
        text
        for step in steps
        for text in (step.does, step.say, step.task, *(one.question for one in step.ask))
    )
