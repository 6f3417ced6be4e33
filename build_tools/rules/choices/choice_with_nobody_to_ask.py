"""A choice that pairs or groups make is settled where pupils are in them.

"Agree with your partner" needs a partner. In a step in which each pupil dances alone there is
nobody to agree with.

Bad:
    choices: {answer-size: {by: pairs, …}}
    a step: grouping: alone, settles: [answer-size]
Good:
    choices: {answer-size: {by: pairs, …}}
    a step: grouping: pairs, settles: [answer-size]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each choice of pairs or groups settled by pupils alone."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            for at, name in enumerate(step.settles):
                by = unit.dance.choices[name].by
                if by in ("pairs", "groups") and step.grouping == "alone":
                    yield Finding(
                        lesson.file,
                        ("steps", n, "settles", at),
                        f"`{name}` is settled by {by}, but in step {n + 1} pupils are alone",
                        f"write the grouping in which {by} can agree, or `by: each pupil` in the "
                        "choice",
                    )
