"""A lesson that says nobody jumps has no jump in it.

Whoever reads "no jumps today" leaves out the landing cue, and lets a pupil with a sore ankle join
in. If the lesson dances a jump, the line belongs to another one.

Bad:
    safety: [There are no jumps in this lesson.]
Good:
    safety: ["Hops land softly, on two feet, knees bent."]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import inside, names_in
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_NONE = re.compile(
    r"\b(?:no|without(?: any)?|never any|not (?:any|a single)) (?:jumps?|jumping|leaps?|hops?)\b|"
    r"\bnobody (?:jumps|leaps|hops)\b|\bno one (?:jumps|leaps|hops)\b",
    re.IGNORECASE,
)
_LIMITED = re.compile(
    r"\b(?:over|on to|off|onto|near|while|until|before|if|unless)\b", re.IGNORECASE
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each safety line that rules jumps out of a lesson which has one."""
    dance = unit.dance
    for lesson in unit.lessons:
        lines = [
            n
            for n, line in enumerate(lesson.safety)
            if _NONE.search(line) and not _LIMITED.search(line)
        ]
        if not lines:
            continue
        names = {name for step in lesson.steps for name in inside(dance, names_in(step))}
        jumps = [
            (name, action)
            for name in sorted(names - set(dance.sections))
            for action in actions_of(dance, name)
            if "jump" in action.kinds
        ]
        if jumps:
            name, action = jumps[0]
            yield Finding(
                lesson.file,
                ("safety", lines[0]),
                f"`safety` says that nobody jumps, but lesson {lesson.number} dances `{name}`, in "
                f"which {action_label(action)} is a jump",
                "say how the jump lands, such as: on two feet, knees bent",
            )
