"""No transition stands behind another that covers all it is for.

The first that fits is the one that is danced. A second for the same two sections, or one written
below `any` to `any`, is read by the teacher and never danced.

Bad:
    transitions: [{from: any, to: any, …}, {from: A, to: D, …}]
Good:
    transitions: [{from: A, to: D, …}, {from: any, to: any, …}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Transition
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each transition that an earlier one covers."""
    before: list[Transition] = []
    for n, t in enumerate(unit.dance.transitions):
        hides = next((e for e in before if _covers(e, t)), None)
        before.append(t)
        if hides is None:
            continue
        yield Finding(
            unit.file,
            ("transitions", n),
            f"transition {n + 1}, from {t.start} to {t.end}, is never danced: transition "
            f"{before.index(hides) + 1} above it, from {hides.start} to {hides.end}, comes first",
            "take one of the two out, or put this one above the other",
        )


def _covers(earlier: Transition, later: Transition) -> bool:
    return earlier.start in (later.start, "any") and earlier.end in (later.end, "any")
