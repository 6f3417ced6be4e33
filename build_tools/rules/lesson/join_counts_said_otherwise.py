"""The counts that a step says for a join are those of the join.

"Walk home in eight" where the walk has sixteen brings the class in half a phrase early. A join may
be said in pieces: eight to walk and eight to sink are a join of sixteen.

Bad:
    transitions: [{from: A, to: B, as: move, counts: 8, …}]
    a step: joins: [A, B], say: Walk into your four for four.
Good:
    transitions: [{from: A, to: B, as: move, counts: 8, …}]
    a step: joins: [A, B], say: Walk into your four for eight.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers_of_counts import lengths_told
from build_tools.views.dance.when_made import steps_in_order
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "transition-missing")

_FIELDS = ("say", "task")
_FEWEST = 3
"""Smaller numbers are said of other things: in two, for one."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each join that a step counts otherwise than the dance does."""
    for place, lesson, step in steps_in_order(unit):
        joins = _joins(unit.dance, step)
        if not joins:
            continue
        for field in _FIELDS:
            every = _numbers(getattr(step, field) or "")
            said = [number for number in every if number >= _FEWEST]
            if not said or any(_fits(told, joins, unit.dance, step) for told in (every, said)):
                continue
            wrong = next((n for n in said if n not in joins), said[0])
            yield Finding(
                lesson.file,
                ("steps", place.step, field),
                f"`{field}` says {wrong} counts, but the join has "
                f"{listed([str(n) for n in sorted(set(joins))], 'or')}",
                "say the counts that the join has, or mend the transition",
            )


def _joins(dance: Dance, step: Step) -> list[Fraction]:
    """The counts of each join that a step practises; joins in which no time passes have none."""
    between = [transition_between(dance, *pair) for pair in pairwise(step.joins)]
    return [t.counts for t in between if t is not None and t.counts]


def _numbers(text: str) -> list[int]:
    return list(lengths_told(text))


def _fits(said: list[int], joins: list[Fraction], dance: Dance, step: Step) -> bool:
    """Whether every number is a join's or a section's, or together they make up a join."""
    sections = {c for letter in step.joins if (c := dance.sections[letter].counts)}
    if all(number in joins or number in sections for number in said):
        return True
    own = [number for number in said if number not in sections or number in joins]
    return Fraction(sum(own)) in {*joins, sum(joins, Fraction(0))}
