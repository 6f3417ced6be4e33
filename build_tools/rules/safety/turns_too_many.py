"""A turn has counts enough to be made with eyes open.

One turn on small steps takes about two counts. Three or four in as many counts make pupils dizzy,
and dizzy pupils fall over one another.

Bad:
    motifs: {gust: {actions: [{turn: 2, as: whirl}], …}}
    makes: [gust], task: Make the whirl, four turns.
Good:
    motifs: {gust: {actions: [{turn: 2, as: whirl}], …}}
    makes: [gust], task: Make the whirl, one turn.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.turns_asked import turns_asked, turns_on_each_count
from build_tools.views.dance.when_made import inside, names_in, steps_in_order

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_FIELDS = ("say", "task", "harder")
_TURN = ("turn", "spin", "whirl", "twirl", "rotat", "round")
_MAY_TURN = re.compile(
    r"turns\b|spins\b|twirls\b|\btwice|\btimes\b|\bevery\b|\beach\b|\bnot\b|\bone (?:\w+ )?turn|"
    r"\b(?:third|fourth|fifth) (?:turn|spin|whirl|twirl)",
    re.IGNORECASE,
)
"""Every text that asks for several turns has one of these."""
_SEVERAL = 2
_LEAST = Fraction(3, 2)
"""Counts for each turn."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that asks for more turns than its counts have room for."""
    for place, lesson, step in steps_in_order(unit):
        for field in _FIELDS:
            text = getattr(step, field) or ""
            if not (_speaks_of_turns(text) and _MAY_TURN.search(text)):
                continue
            each, number = turns_on_each_count(text), turns_asked(text)
            if not each and number < _SEVERAL:
                continue
            counts = _turning(unit.dance, step)
            number = int(counts) if each else number
            if number >= _SEVERAL and 0 < counts < number * _LEAST:
                yield Finding(
                    lesson.file,
                    ("steps", place.step, field),
                    f"`{field}` asks for {number} turns, but what step {place.step + 1} dances has "
                    f"{figures(counts)} counts of turning",
                    "ask for one turn, or give the turn more counts",
                )


def _speaks_of_turns(text: str) -> bool:
    small = text.casefold()
    return any(one in small for one in _TURN)


def _turning(dance: Dance, step: Step) -> Fraction:
    """The most counts of turning in one thing that the step names."""
    return max(
        (
            sum((a.counts for a in actions_of(dance, name) if "turn" in a.kinds), Fraction(0))
            for name in inside(dance, names_in(step)) - set(dance.sections)
        ),
        default=Fraction(0),
    )
