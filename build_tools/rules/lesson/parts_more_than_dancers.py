"""A group that dances a section has a dancer for each part.

A canon in four parts needs four who start one after another; an answer needs somebody to ask. A
step that makes or dances it in smaller groups leaves parts with nobody in them. Where pairs or
groups are the parts, `who` says so.

Bad:
    sections: {B: {danced: [{what: [wave], as: canon, parts: 4, after: 4}], …}}
    a step: grouping: pairs, makes: [B]
Good:
    sections: {B: {danced: [{what: [wave], as: canon, parts: 4, after: 4}], …}}
    a step: grouping: fours, makes: [B]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.dance import Passage
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import parts_in
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import steps_in_order
from build_tools.views.lesson.class_groups import GROUP_SIZES

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "canon-not-spelt-out")

_NOT_DANCED = ("show", "look and talk", "explore")
_GROUPS = re.compile(
    r"\b(?:pairs?|groups?|rows?|lines?|halves|half|threes|fours|fives|sixes|tables?)\b",
    re.IGNORECASE,
)
_TOGETHER = ("canon", "canon in turn", "question and answer", "match", "lead and follow")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step whose groups are smaller than the parts they dance."""
    for place, lesson, step in steps_in_order(unit):
        size = GROUP_SIZES.get(step.grouping)
        if size is None or step.phase in _NOT_DANCED:
            continue
        if not (why := _too_few(unit, step, size)):
            continue
        yield Finding(
            lesson.file,
            ("steps", place.step, "grouping"),
            f"step {place.step + 1} is danced {'' if size == 1 else 'in '}{step.grouping}, but "
            f"{why}",
            "write the grouping that has a dancer for each part, or say in `who` that pairs or "
            "groups are the parts",
        )


def _too_few(unit: Unit, step: Step, size: int) -> str | None:
    """What needs more dancers than the groups of a step have, in the reader's words.

    No one word is right for a step that goes over parts of several groupings: there each part is in
    the groups in which it was made.
    """
    dance = unit.dance
    several = len({*step.makes, *step.dances}.intersection(dance.sections)) > 1
    for letter in (*step.makes, *step.dances):
        section = dance.sections.get(letter)
        if several and letter in step.dances:
            size = max(size, _made_by(unit, letter))
        for passage in section.danced if section else ():
            parts = _dancers(passage)
            if parts > size:
                return f"section {letter} has {parts} parts ({passage.fit})"
    word = next((w for w in step.teaches if w.casefold() in _TOGETHER), None)
    return f"it teaches {word}, which takes two" if word and size == 1 else None


def _made_by(unit: Unit, letter: str) -> int:
    """How many dancers the groups had in which a section was made."""
    made = (step for _place, _lesson, step in steps_in_order(unit) if letter in step.makes)
    return max((GROUP_SIZES.get(step.grouping, 1) for step in made), default=1)


def _dancers(passage: Passage) -> int:
    """How many dancers it takes; one where groups or pairs are the parts."""
    return 1 if _GROUPS.search(passage.who or "") else parts_in(passage)
