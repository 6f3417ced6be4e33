"""Sections are joined only once each of them is made.

Pupils cannot practise the way from one section into the next while one of the two is not there.
A step that makes a section and joins it straight away is in order.

Bad:
    lesson 1: joins: [A, B]
Good:
    lesson 1: dances: [A]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import progress, steps_in_order

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where each section is first joined, if it is made only later."""
    found = progress(unit)
    late = {
        letter
        for letter in unit.dance.sections
        # a section that is never made has its own rule
        if (made := found[letter].made) and (joined := found[letter].joined) and joined < made[:1]
    }
    for place, lesson, step in steps_in_order(unit):
        for n, letter in enumerate(step.joins):
            if letter not in late:
                continue
            late.remove(letter)
            first = found[letter].made[0]
            yield Finding(
                lesson.file,
                ("steps", place.step, "joins", n),
                f"section {letter} is joined in {place}, but it is first made in {first}",
                f"join it after {first}, or make it before {place}",
            )
