"""What is danced next begins at the level where the last thing ended.

An anemone ends in a low grip, and on the next count it flicks high: nobody has counted the rise.
Danced as written, a class springs up in half a second, or leaves something out. Each dancer is
followed from one motif to the next; within a motif level-does-not-follow asks the same.

Bad:
    open: {actions: [{gesture: 4, level: middle to high}, {stillness: 4, level: low}], …}
    shut: {actions: [{gesture: 1, level: high}, {transfer: 7, level: high to low}], …}
    danced: [{what: [open, shut], as: unison}]
Good:
    open: {actions: [{gesture: 4, level: middle to high}, {stillness: 4, level: high}], …}
    shut: {actions: [{gesture: 1, level: high}, {transfer: 7, level: high to low}], …}
    danced: [{what: [open, shut], as: unison}]
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.dance import Action, Dance, Section
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.one_dancer import Thing, everyones_things
from build_tools.views.words.plain_words import action_label, counts_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "canon-not-spelt-out",
    "level-does-not-follow",
)
_HEIGHT = {"low": 0, "middle": 1, "high": 2}
_MOVES_THE_BODY = ("transfer", "travel", "turn")
_AT_ONCE = 1
"""Counts in which nobody gets two levels up or down as well as doing the move."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each two things that follow one another and do not join."""
    told: set[tuple[str, str]] = set()
    for section in unit.dance.sections.values():
        if section.counts is None:
            continue
        for _, things in everyones_things(unit.dance, section):
            for before, after in pairwise(things):
                if (before.what, after.what) in told:
                    continue
                found = _gap(unit, section, before, after)
                if found is not None:
                    told.add((before.what, after.what))
                    yield found


def _gap(unit: Unit, section: Section, before: Thing, after: Thing) -> Finding | None:
    last, first = _ends(unit.dance, before), _starts(unit.dance, after)
    if last is None or first is None:
        return None
    (ending, ended), (starting, starts) = last, first
    apart = abs(_HEIGHT[ended] - _HEIGHT[starts])
    level = starting.level or ""
    if " to " in level:
        # an arm may end high while the body is at middle
        wrong = apart == 2 or (
            apart == 1 and starting.kind in _MOVES_THE_BODY and ending.kind != "gesture"
        )
    else:
        wrong = apart == 2 and starting.counts <= _AT_ONCE
    if not wrong or starting.kind in ("jump", "travel"):
        return None
    return Finding(
        unit.file,
        ("sections", section.letter, "danced", after.passage),
        f"in section {section.letter} `{before.what}` ends {ended} ({action_label(ending)}), but "
        f"on count {figures(after.start + 1)} `{after.what}` starts {starts} "
        f"({action_label(starting)}, {counts_in_words(starting.counts)}, `level: {level}`)",
        f"let one end where the other begins, or put a move from {ended} to {starts} between them",
    )


def _ends(dance: Dance, thing: Thing) -> tuple[Action, str] | None:
    """The last action that says a level, and that level; None after a jump, which lands anyhow."""
    left = thing.end - thing.start
    found = None
    for action in actions_of(dance, thing.what):
        if left <= 0:
            break
        if action.level is not None:
            found = action
        left -= action.counts
    if found is None or found.level is None or "jump" in found.kinds:
        return None
    return found, found.level.rpartition(" to ")[2]


def _starts(dance: Dance, thing: Thing) -> tuple[Action, str] | None:
    """The first action and the level it starts at, if it says one."""
    action = actions_of(dance, thing.what)[0]
    return (action, action.level.partition(" to ")[0]) if action.level else None
