"""What is left out when time is short is nothing that the lesson makes.

Leaving out the slow wave in the lesson that makes it leaves the rest of the unit without it. What
can go is trying out, a second run, or a join that may wait a week.

Bad:
    lesson 2 makes B: short_of_time: Leave out part B.
Good:
    short_of_time: Leave out exploring.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.parts_said import parts_said

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice")

_LEAVE = re.compile(
    r"\b(?:leav|skip|drop|omit|miss|cut)\w*\b(?: out)?(?P<what>[^.;,]*)", re.IGNORECASE
)
_LEARNING = re.compile(r"^\s*(?:the )?(?:learn|teach|mak(?:e|ing)\b)\w*(?! sure)", re.IGNORECASE)
"""The learning itself, whatever is learned."""
_ONLY_A_GO = re.compile(
    r"\b(?:explor|try|trial|practis|rehears|second|again|twice|once|repeat|harder|talk|watch|show|"
    r"join|run)\w*",
    re.IGNORECASE,
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson that gives up what one of its steps makes."""
    for lesson in unit.lessons:
        made = {n for step in lesson.steps for n in (*step.makes, *step.develops)}
        for leave in _LEAVE.finditer(lesson.trouble["short_of_time"]):
            what = leave.group("what")
            if _ONLY_A_GO.search(what):
                continue
            gone = next((one.said for one in parts_said(unit, what) if one.parts & made), None)
            if gone is None and made and _LEARNING.match(what):
                gone = what.strip()
            if gone is None:
                continue
            yield Finding(
                lesson.file,
                ("if", "short_of_time"),
                f"`short_of_time` leaves out `{gone}`, which lesson {lesson.number} makes",
                "leave out a step that only explores or practises, and mark it `can_wait`",
            )
