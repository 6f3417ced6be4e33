"""A choice is settled in one step.

What pupils have decided they go on with. A second step that settles the same thing is left over
from an earlier plan, or it throws away what was rehearsed.

Bad:
    lesson 2: settles: [last-shape]
    lesson 3: settles: [last-shape]
Good:
    lesson 3: settles: [last-shape]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import settled, step_at

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that settles what is settled already."""
    for name, places in settled(unit).items():
        for place in places[1:]:
            lesson, step = step_at(unit, place)
            yield Finding(
                lesson.file,
                ("steps", place.step, "settles", step.settles.index(name)),
                f"`{name}` is settled in {places[0]} already, and settled again in {place}",
                "take it out of one of the two",
            )
