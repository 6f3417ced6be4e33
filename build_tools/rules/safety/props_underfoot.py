"""What lies on the floor while pupils dance is gone round, or taken away first.

A scarf or a sheet of paper under a running foot slides like ice. Say where things go before the
class travels: in the step that has them there, or in a line about them under `safety`.

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
from build_tools.sentences.props import UNDERFOOT, about_things, put_away, underfoot
from build_tools.views.written.hazards import Hazard, hazards, of_step

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first step that puts things on the floor and leaves them there."""
    found = hazards(unit, UNDERFOOT, underfoot)
    hazard = next((h for h in found if not _put_away(unit, h)), None)
    if hazard is None:
        return
    yield Finding(
        hazard.file,
        hazard.path,
        f"step {hazard.step + 1} leaves things where feet go ({hazard.said}), and nothing says "
        "to go round them or take them away",
        "say where they go, such as: pick them up before you travel, or lay them by the wall",
    )


def _put_away(unit: Unit, hazard: Hazard) -> bool:
    safety = unit.lessons[hazard.lesson].safety
    of_things = (line for line in safety if about_things(line))
    return any(put_away(text) for text in (*of_step(unit, hazard), *of_things))
