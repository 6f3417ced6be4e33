"""What lies on the floor while pupils dance is gone round, or taken away first.

A scarf or a sheet of paper under a running foot slides like ice. Say where things go before the
class travels.

Bad:
    task: Drop your scarf on the floor and run on.
Good:
    task: Drop your scarf by the wall and run on.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_safety import PROPS_AWAY, PROPS_DOWN
from build_tools.views.written.hazards import beside, first_hazard

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first step that puts things on the floor and leaves them there."""
    hazard = first_hazard(unit, PROPS_DOWN)
    if hazard is None or PROPS_AWAY.in_any(beside(unit, hazard)):
        return
    yield Finding(
        hazard.file,
        hazard.path,
        f"step {hazard.step + 1} leaves things where feet go ({hazard.said}), and nothing says "
        "to go round them or take them away",
        "say where they go, such as: pick them up before you travel, or lay them by the wall",
    )
