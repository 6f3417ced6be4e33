"""Pupils have a moment to turn before a section that starts facing another way.

After a cut, a hold or a change straight on, the next section begins where and as the last one
ended. If it ends facing a partner and the next begins facing the front, the first move is danced
while turning round. A move has counts for it, and so has a change whose words say to turn.

Bad:
    A: {end: {facing: outwards, …}, …}
    B: {start: {facing: front, …}, …}
    transitions: [{from: A, to: B, as: straight on, how: Rise where you are, …}, …]
Good:
    A: {end: {facing: outwards, …}, …}
    B: {start: {facing: front, …}, …}
    transitions: [{from: A, to: B, as: straight on, how: Rise and turn to the front, …}, …]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.joins import crossings
from build_tools.views.words.plain_words import transition_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "transition-missing")
READS = "en"

_STAYS = ("hold", "cut", "straight on")
_TURNS = re.compile(
    r"\b(?:turn|fac|look|spin|swing|pivot|wheel)(?:e|es|s|ing)?\b|\bto the front\b", re.IGNORECASE
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each change in which nobody can turn to the next section's facing."""
    dance = unit.dance
    told: set[int] = set()
    for way in crossings(dance):
        end, start, transition = way.end, way.start, way.by
        if "mixed" in (end.facing, start.facing) or end.facing == start.facing:
            continue
        if transition is None or transition.kind not in _STAYS or id(transition) in told:
            continue
        if _TURNS.search(transition.how):
            continue
        told.add(id(transition))
        yield Finding(
            unit.file,
            ("transitions", dance.transitions.index(transition), "how"),
            f"section {way.second} starts `facing: {start.facing}`, but section {way.first} before "
            f"it ends `facing: {end.facing}`, and the change is {transition_in_words(transition)}",
            f"start section {way.second} `facing: {end.facing}`, or say in `how` that pupils turn",
        )
