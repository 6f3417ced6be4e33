"""A lesson or a step that is named by its number is there.

"In step 7" of a lesson with six steps, or "in lesson 8" of six, sends a teacher looking. The number
was right before a step or a lesson was taken out. So with the joins: a dance of five parts has
four.

Bad:
    short_of_time: Leave the join for lesson 9.
Good:
    short_of_time: Leave the join for lesson 3.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import reduce
from operator import or_

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers import number_of
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.words.numbered import lessons_said, steps_said
from build_tools.views.words.plain_words import how_many
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("lesson-numbers-broken",)

_THINGS = ("esson", "tep", "join")
"""Every text that names a lesson, a step or joins contains one of these."""
_OF_THIS_LESSON = ("never_did_last", "if", "change")
"""Fields in which a step is one of the lesson's own."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that names a lesson, or a step of its own, that is gone."""
    steps = {lesson.file: len(lesson.steps) for lesson in unit.lessons}
    last = len(unit.lessons)
    text = unit_text(unit)
    for file, one in text.at(reduce(or_, map(text.containing, _THINGS))):
        if not one.path or one.path[0] == "curriculum":
            continue
        gone = [f"lesson {n}" for n in _lessons(one.text) if n > last]
        has = how_many(last, "lesson")
        if not gone and file in steps and one.path[0] in _OF_THIS_LESSON:
            gone = [f"step {n}" for n in steps_said(one.text) if n > steps[file]]
            has = how_many(steps[file], "step")
        there = len(unit.dance.form) - 1
        if not gone and (joins := joins_said(one.text, there)) and joins != there:
            yield _joins(unit, file, one, joins)
        if gone:
            thing = "the unit" if gone[0].startswith("lesson") else "the lesson"
            yield Finding(
                file,
                one.path,
                f"`{one.kind}` names {gone[0]}, but {thing} has {has}",
                "write the number that it has now, or say it in words",
            )


_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth")
_NTH_LESSON = re.compile(rf"\b({'|'.join(_ORDINALS)}) lesson\b", re.IGNORECASE)
_NO_LESSON = re.compile(r"\b(?:no|isn't a|not a) lesson \w+", re.IGNORECASE)


def _lessons(text: str) -> tuple[int, ...]:
    """Lessons by number: lesson 4, the fourth lesson; there's no lesson 4 names none."""
    if "esson" not in text:
        return ()
    nth = (_ORDINALS.index(said.lower()) + 1 for said in _NTH_LESSON.findall(text))
    return (*lessons_said(_NO_LESSON.sub("", text)), *nth)


_ALL_JOINS = re.compile(
    r"\b(?:all|every|every one|the|its|their)(?: of (?:the|its))? (\w+) joins\b", re.IGNORECASE
)
"""How many joins there are in all."""
_JOINS = re.compile(r"\b(\w+) joins\b", re.IGNORECASE)


def joins_said(text: str, there: int) -> int | None:
    """The number of all joins that a text gives, or of any joins if it is more than are `there`."""
    if "joins" not in text:
        return None
    if re.search(r"\bboth joins\b", text, re.IGNORECASE):
        return 2
    said = _ALL_JOINS.search(text)
    if said and (number := number_of(said.group(1).lower())):
        return number
    some = [number for one in _JOINS.findall(text) if (number := number_of(one.lower()))]
    if re.search(r"\bhalf a dozen joins\b", text, re.IGNORECASE):
        some = [6]
    return next((number for number in some if number > there), None)


def _joins(unit: Unit, file: str, one: FieldText, said: int) -> Finding:
    there = len(unit.dance.form) - 1
    return Finding(
        file,
        one.path,
        f"`{one.kind}` names {said} joins, but {' '.join(unit.dance.form)} has {there}",
        "write the number that it has now, or say it in words",
    )
