"""Pupils dance the whole at least twice before they show it.

The first run finds out what does not hold, the second is the first that can be enjoyed. A run that
half the class watches counts, and a step that says twice or again counts two. In a dance of one
section, dancing that section is dancing the whole. Where a section comes back, dancing each letter
once is not.

Bad:
    lesson 6: dances: [whole]
    a later step: shows: [whole]
Good:
    lesson 5: dances: [whole]
    lesson 6: dances: [whole]
    a later step: shows: [whole]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.whole_runs import step_of_showing, whole_runs

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")
READS = "en"

_ENOUGH = 2


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the last lesson shows a whole that was danced less than twice."""
    place = step_of_showing(unit)
    if place is None:
        return
    runs = [run for run in whole_runs(unit) if run.place < place]
    times = sum(run.times for run in runs)
    if times >= _ENOUGH:
        return
    said = f"danced once before it, in {runs[0].place}" if runs else "danced 0 times before it"
    yield Finding(
        unit.lessons[-1].file,
        ("steps", place.step, "shows"),
        f"the whole dance is shown in {place}, and it is {said}",
        "write `dances: [whole]` in a rehearsing step before the showing, and let pupils dance it "
        "twice",
    )
