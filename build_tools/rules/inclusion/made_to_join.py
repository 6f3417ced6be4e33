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
from build_tools.sentences.joining_in import MADE_TO
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"will_not_join", "say", "task", "easier", "notes", "partners", "safety"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that makes somebody join."""
    for found in unit_text(unit).saying(MADE_TO, _KINDS, meant=True):
        yield Finding(
            found.file,
            found.path,
            f'`{found.field.kind}` presses a pupil to dance ("{found.said.text}")',
            "offer another part that keeps the dance going: a card, a sound, to call the moves",
        )
