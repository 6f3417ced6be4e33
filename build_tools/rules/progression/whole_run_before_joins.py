"""Each join is practised before the dance is first run as a whole.

A first run finds out whether pupils know the dance. A join that nobody has walked yet stops it
there, and the run has shown nothing but that.

Bad:
    lesson 2: dances: [whole]
    lesson 3: joins: [A, B, C, D]
Good:
    lesson 2: dances: [A]
    lesson 3: joins: [A, B, C, D]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.joins import neighbours, practised
from build_tools.views.dance.when_made import step_at
from build_tools.views.dance.whole_runs import whole_runs
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken", "join-never-practised")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding, at the first run of the whole, if a join is practised only after it."""
    first = next((run.place for run in whole_runs(unit) if run.named), None)
    if first is None or unit.dance.order_choice:
        return
    joined = practised(unit)
    late = [pair for pair in neighbours(unit.dance) if joined[pair][0] > first]
    if not late:
        return
    lesson, step = step_at(unit, first)
    field = "dances" if "whole" in step.dances else "shows"
    said = listed([f"{a} to {b} in {joined[a, b][0]}" for a, b in late])
    yield Finding(
        lesson.file,
        ("steps", first.step, field, getattr(step, field).index("whole")),
        f"the whole is first run in {first}, but {len(late)} of its joins "
        f"{'is' if len(late) == 1 else 'are'} first practised after it: {said}",
        f"practise {listed([f'{a} to {b}' for a, b in late])} before {first}, or run the whole "
        "later",
    )
