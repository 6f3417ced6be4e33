"""A travel has no more steps than feet can take in its counts.

Six side-steps in two counts, at the speed of this drum, are more than five a second: pupils skid,
or take two and stand about. It is the steps of the field with the counts of the move and the tempo
of the dance.

Bad:
    dash: {actions: [{travel: 2, step: walk, steps: 8}, {stillness: 6}], …}
Good:
    dash: {actions: [{travel: 2, step: walk, steps: 2}, {stillness: 6}], …}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = (
    "Sutherland and others, The development of mature walking, 1988 (from memory): at 7 about 144 "
    "steps a minute at a free walk; that 240 are the most in a dance: common practice, no source"
)
_MOST_A_MINUTE = 240
"""Steps a minute."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each travel that is written with more steps than can be taken."""
    tempo = unit.dance.tempo
    if tempo is None:
        return
    for path, action in _written(unit):
        if action.steps is None or not action.counts or "travel" not in action.kinds:
            continue
        a_minute = action.steps / action.counts * tempo
        if a_minute > _MOST_A_MINUTE:
            can = max(1, int(_MOST_A_MINUTE * action.counts / tempo))
            yield Finding(
                unit.file,
                (*path, "steps"),
                f"{figures(action.steps)} steps in {figures(action.counts)} counts, at {tempo} a "
                f"minute, are {figures(Fraction(round(a_minute)))} steps a minute, and "
                f"{_MOST_A_MINUTE} are the most",
                f"write `steps: {can}` or fewer, or give the move more counts",
            )


def _written(unit: Unit) -> Iterator[tuple[FieldPath, Action]]:
    """Each move where it is written."""
    for name, motif in unit.dance.motifs.items():
        for n, action in enumerate(motif.actions):
            yield ("motifs", name, "actions", n), action
    for name, development in unit.dance.developments.items():
        if development.replacement is not None:
            yield ("developments", name, "replace", "by"), development.replacement
        for n, addition in enumerate(development.added):
            yield ("developments", name, "add", n, "action"), addition.action
