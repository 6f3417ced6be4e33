"""Every transition joins two sections that follow one another in the dance.

A transition that the dance never comes to is left over from an earlier form, and a teacher may
practise it for nothing.

Bad:
    form: A B C
    transitions: [{from: A, to: B, …}, {from: B, to: C, …}, {from: A, to: C, …}]
Good:
    form: A C B
    transitions: [{from: A, to: C, …}, {from: C, to: B, …}]
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each transition between sections that never meet."""
    dance = unit.dance
    if dance.order_choice:
        return
    neighbours = set(pairwise(dance.form))
    for n, transition in enumerate(dance.transitions):
        used = any(
            transition.start in (first, "any") and transition.end in (second, "any")
            for first, second in neighbours
        )
        if not used:
            yield Finding(
                unit.file,
                ("transitions", n),
                f"a transition leads from section {transition.start} to {transition.end}, but in "
                f"{' '.join(dance.form)} they never follow one another",
                "take it out, or change the form",
            )
