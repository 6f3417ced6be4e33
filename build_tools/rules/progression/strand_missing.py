"""Pupils make, perform and respond: all three in a unit, and at least two in each lesson.

A unit with no making teaches steps, one with no performing leaves a dance unfinished, and one with
no looking and talking teaches nobody to see. To dance something again in a recall or a warm-up is
dancing, and not performing yet: that is rehearsed or shown. In a dance that is learned as it is,
learning it counts as making.

Bad:
    lesson 2 has no look_and_talk
    every step of it: phase: make
Good:
    every step of it: phase: make
    lesson 2: look_and_talk: {who: partner, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import comes_ready
from build_tools.views.words.plain_words import how_many, listed

GRADE: Grade = "question"
SOURCE = (
    "Smith-Autard, The Art of Dance in Education: learning dance by composing, performing and "
    "appreciating"
)

_STRANDS = ("make", "perform", "respond")
_MAKING = ("explore", "make", "develop", "join")
_PERFORMING = ("rehearse", "show")
_HOW = {
    "make": "let pupils make, change or choose something in one step",
    "perform": "let pupils rehearse or show what they have made: `phase: rehearse`, or `shows`",
    "respond": "ask a question about what was danced, in `ask` or in `look_and_talk`",
}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for a strand the unit lacks, and for each lesson with fewer than two."""
    learned = bool(unit.dance.motifs) and all(comes_ready(unit.dance, m) for m in unit.dance.motifs)
    by_lesson = [(lesson, _strands(lesson)) for lesson in unit.lessons]
    present = {strand for _, strands in by_lesson for strand in strands}
    if learned and "perform" in present:
        present.add("make")
    for strand in _STRANDS:
        if unit.lessons and strand not in present:
            yield Finding(
                unit.file,
                ("title",),
                f"pupils {strand} in 0 of {how_many(len(unit.lessons), 'lesson')}",
                _HOW[strand],
            )
    for lesson, strands in by_lesson:
        if len(strands) >= 2:
            continue
        missing = [strand for strand in _STRANDS if strand not in strands]
        yield Finding(
            lesson.file,
            ("steps",),
            f"in lesson {lesson.number} pupils do not {listed(missing, 'or')}: "
            f"{len(strands)} of make, perform and respond, where 2 of the 3 are usual",
            _HOW[missing[-1]],
        )


def _strands(lesson: Lesson) -> set[str]:
    found = {strand for step in lesson.steps for strand in _strands_of(step)}
    return found | {"respond"} if lesson.look_and_talk else found


def _strands_of(step: Step) -> Iterator[str]:
    if step.phase in _MAKING or step.makes or step.develops or step.joins or step.settles:
        yield "make"
    if step.phase in _PERFORMING or step.shows:
        yield "perform"
    if step.phase == "look and talk" or step.ask:
        yield "respond"
