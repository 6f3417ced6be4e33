"""Where an answer is bigger or smaller, its travel is not, if both are to come home.

Ones scuttle two steps and twos answer bigger, with three: after the swap each has gone three one
way and two the other, and "the same place" is half a step off for everybody. Jumps, arms and levels
may grow; what takes a dancer over the floor keeps its size.

Bad:
    crab: {actions: [{travel: 4, direction: sideways, side: right, steps: 4}, {gesture: 4}], …}
    crab-answer: {of: crab, device: change of size, size: big}
    danced: [{what: [crab, crab-answer], as: question and answer}]
Good:
    crab: {actions: [{travel: 4, direction: sideways, side: right, steps: 4}, {gesture: 4}], …}
    crab-answer: {of: crab, device: change of size, size: big, only: [2]}
    danced: [{what: [crab, crab-answer], as: question and answer}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.body.ages import at_age, tables
from build_tools.model.dance import Dance, Passage
from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CHANGE_OVER
from build_tools.movement.development import actions_of
from build_tools.paths.steps import goes, way_long
from build_tools.paths.whole import USUAL_AGE
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import action_label, listed

GRADE: Grade = "question"
SOURCE = "lengths of steps, and of big ones, for the age as in build_tools/body/ages.json"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_MATTERS = 0.25
"""Metres: nearly half a step."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each answer whose travel changes its size."""
    dance = unit.dance
    told: set[str] = set()
    for section in dance.sections.values():
        for passage in section.danced:
            sized = _sized(dance, passage)
            if sized is None or sized in told:
                continue
            told.add(sized)
            found = _longer(unit, sized)
            if found is None:
                continue
            words, metres = found
            yield Finding(
                unit.file,
                ("developments", sized),
                f"`{sized}` changes the size of {words}, which travels: bigger, it goes "
                f"{metres:.1f} metres farther than `{dance.developments[sized].of}`, so that those "
                f"who dance one against the other in section {section.letter} do not come home",
                "write in `only` the moves that change their size, without those that travel",
            )


def _sized(dance: Dance, passage: Passage) -> str | None:
    """The thing of the passage that is another in another size; None where there is none."""
    if passage.fit not in CHANGE_OVER:
        return None
    for what in passage.what:
        one = dance.developments.get(what)
        if one is not None and one.device == "change of size" and len(set(passage.what)) > 1:
            return what
    return None


def _longer(unit: Unit, name: str) -> tuple[str, float] | None:
    """The moves that travel and change their size, and by how many metres they grow."""
    development = unit.dance.developments[name]
    known = ages(unit.years)
    body = at_age((known[0] + known[1]) / 2 if known else USUAL_AGE)
    grows = abs(float(tables()["steps"]["big"]) - 1)
    actions = [
        action
        for n, action in enumerate(actions_of(unit.dance, development.of), start=1)
        if (not development.only or n in development.only)
        and "travel" in action.kinds
        and goes(action)
    ]
    metres = sum(way_long(action, body) for action in actions) * grows
    if metres < _MATTERS:
        return None
    return listed([action_label(action) for action in actions]), metres
