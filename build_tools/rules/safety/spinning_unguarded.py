"""A spin comes with how to keep it safe: slow, once, eyes open, then the other way.

Spinning makes pupils dizzy, and a dizzy pupil falls into the next one. It is said in the step that
spins; one line about spins under `safety`, or in an earlier step, will do as well.

Bad:
    task: Spin like a seed for eight counts.
Good:
    task: Spin once like a seed, slowly, eyes open. Then the other way.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.spins import ABOUT_DIZZINESS, SAFE_SPIN, SPIN, spin
from build_tools.views.written.hazards import (
    first_hazard,
    names_with,
    of_step,
    told_before,
    written_actions,
)

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first spin of the unit, if nothing said by then keeps it safe."""
    named = any(_spins(action) for action in written_actions(unit.dance))
    hazard = first_hazard(unit, SPIN, names_with(unit.dance, _spins) if named else (), spin)
    if hazard is None or SAFE_SPIN.in_any(of_step(unit, hazard)):
        return
    if ABOUT_DIZZINESS.in_any(told_before(unit, hazard)):
        return
    yield Finding(
        hazard.file,
        hazard.path,
        f"step {hazard.step + 1} has the first spin of the unit ({hazard.said}), but nothing up to "
        "there says how to keep from getting dizzy",
        "add: one slow turn, eyes open, then the other way",
    )


def _spins(action: Action) -> bool:
    return spin(action.word or "") is not None
