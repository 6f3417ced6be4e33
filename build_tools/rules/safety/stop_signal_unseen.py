"""The stop signal can be seen as well as heard.

Thirty pairs of feet are louder than two taps, a pupil who hears little stops late, and in a dance
that is danced to a drum a tap is one tap more. A raised hand, a card or the lamps, with the sound
or without it, reach everybody. A nod, or eyes that are lowered, reach those who look at the face.

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
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.sayings import Saying
from build_tools.sentences.signals import STOP_SIGNAL
from build_tools.sentences.stops_seen import SEEN
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_TELLS = frozenset({"say", "task", "you", "safety", "catch_up", "notes"})


_TOO_SMALL = Saying(
    """
    when|if|once|whenever|as|moment ~1 i ~1 nod|wink|blink|smile|frown|whisper|sniff ~~6 @stop
    when|if|once|whenever|as|moment ~1 i ~1 lower|close|shut|roll|raise|drop
        ~2 eye|eyes|eyebrow|eyebrows|eyelid|eyelids|chin ~~6 @stop
    when|if|once|whenever|as|moment ~1 i ~1 look ~1 down|away|up ~~6 @stop
    @stop ~~3 when|if|once|whenever|moment ~1 i ~1 nod|wink|blink|smile|frown|whisper|sniff
    @stop ~~3 when|if|once|whenever|moment ~1 i ~1 lower|close|shut|roll|raise|drop
        ~2 eye|eyes|eyebrow|eyebrows|eyelid|eyelids|chin
    my|teacher ~1 nod|wink|smile|frown ~1 mean|means|says|say ~2 @stop
    """,
    {"stop": "=stop =freeze =still =halt =statue =statues =stopping"},
)
"""A signal in a face, which nobody sees who is turned away."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield each signal in a face, and the first where none of the unit's can be seen."""
    yield from said_in_fields(
        unit,
        _TOO_SMALL,
        _TELLS,
        "stops the class by what nobody sees who is turned away",
        "raise a hand high, or show a card, and call the word with it",
    )
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
