"""The stop signal can be seen as well as heard.

Thirty pairs of feet are louder than two taps, a pupil who hears little stops late, and in a dance
that is danced to a drum a tap is one tap more. A raised hand, a card or the lamps, with the sound
or without it, reach everybody.

Bad:
    say: Two quick taps mean stop.
Good:
    say: Two quick taps and my raised hand mean stop.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.signals import STOP_SIGNAL
from build_tools.sentences.stops_seen import SEEN
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_TELLS = frozenset({"say", "task", "you", "safety", "catch_up", "notes"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding at the first signal, where none of the unit's signals can be seen."""
    first = None
    for file, fields in unit_text(unit).documents:
        for one in fields:
            if one.kind not in _TELLS:
                continue
            if SEEN.said(one.text):
                return
            if first is None and file != unit.file and (said := STOP_SIGNAL.said(one.text)):
                first = file, one, said.text
    if first is None:
        return
    file, one, text = first
    yield Finding(
        file,
        one.path,
        f'the class is stopped by what it hears alone ("{text}"): nothing is raised or shown in '
        f"{len(unit.lessons)} lessons",
        "add what all can see, such as: and my raised hand",
    )
