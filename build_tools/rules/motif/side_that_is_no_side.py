"""A move that goes forwards or backwards has no side to go to.

A mirror swaps left and right, and leaves forwards as it is: a forwards travel marked right goes
forwards both times. Either it goes sideways, or the side is left over. Round a ring, forwards has a
side: which way round.

Bad:
    {travel: 2, as: scuttle, direction: forwards, side: right}
Good:
    {travel: 2, as: scuttle, direction: sideways, side: right}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.actions_written import actions_written
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_NO_SIDE = ("forwards", "backwards", "up", "down")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each travel or jump with a side and a direction that has none."""
    for path, action in actions_written(unit.dance):
        if action.kind not in ("travel", "jump") or "turn" in action.also:
            continue
        if action.side and action.direction in _NO_SIDE and not action.goes_round:
            yield Finding(
                unit.file,
                path,
                f"{action_label(action)} goes `{action.direction}` and has `side: {action.side}`, "
                "which is another way",
                "write `direction: sideways`, or take `side` out",
            )
