"""The words for how an action is done do not rule each other out.

Weight, time, space and flow each go one way at a time. Strong and light at once, or a float that
is sudden, cannot be danced, and pupils do whichever they heard last.

Bad:
    {gesture: 2, as: open, dynamics: [float, strong]}
Good:
    {gesture: 2, as: open, dynamics: [float]}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.effort import opposite_quality, qualities
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.actions_written import actions_written
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = (
    "Laban and Lawrence, Effort, 1947: weight, time, space and flow, each between two opposites"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each action, or change of dynamics, with both ends of one quality."""
    written: list[tuple[FieldPath, tuple[str, ...]]] = [
        ((*path, "dynamics"), action.dynamics) for path, action in actions_written(unit.dance)
    ]
    written += [
        (("developments", name, "dynamics"), d.dynamics)
        for name, d in unit.dance.developments.items()
    ]
    for path, words in written:
        both = sorted(q for q in qualities(words) if opposite_quality(q) in qualities(words))
        if not both:
            continue
        pair = listed(sorted((both[0], opposite_quality(both[0]))))
        yield Finding(
            unit.file,
            path,
            f"`dynamics` has {listed([f'`{word}`' for word in words])}, which is {pair} at once",
            "keep one of the two, or make two actions of it",
        )
