"""A unit has at most 8 lessons, so that it fits into half a term.

Longer units are broken off when the hall is needed, often before the dance is shown.

Bad:
    lesson-9.md: lesson: 9
Good:
    lesson-8.md: lesson: 8
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = "common practice, no source"
NEEDS = ("lesson-numbers-broken",)

_MOST = 8


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding, at the first lesson beyond the eighth."""
    if len(unit.lessons) > _MOST:
        yield Finding(
            unit.lessons[_MOST].file,
            ("lesson",),
            f"the unit has {len(unit.lessons)} lessons, and a half-term holds about {_MOST}",
            f"join lessons until there are {_MOST} or fewer, or make two units of it",
        )
