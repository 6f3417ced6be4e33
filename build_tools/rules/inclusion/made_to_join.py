"""Nobody is pressed, shamed or led by the hand into dancing.

A pupil who will not join has a reason, and often cannot say it before the class. Something to hold,
a card or the drum, leaves the door open; a row that is told to wait for one of them shuts it.

Bad:
    will_not_join: Tell them the row will lose its turn until they dance.
Good:
    will_not_join: Offer the drum, or the cards.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.pressing import MADE_TO, NO_WAY_OUT, WILL_NOT_MADE_TO

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_ABOUT_ONE = frozenset({"will_not_join"})
_KINDS = frozenset(
    {"say", "task", "you", "easier", "notes", "partners", "safety", "silly", "loud", "finished"}
)


_WHAT = "presses a pupil to dance"
_HELP = "offer another part that keeps the dance going: a card, a sound, to call the moves"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that makes somebody join."""
    yield from said_in_fields(unit, MADE_TO, _KINDS, _WHAT, _HELP)
    yield from said_in_fields(unit, WILL_NOT_MADE_TO, _ABOUT_ONE, _WHAT, _HELP, NO_WAY_OUT)
