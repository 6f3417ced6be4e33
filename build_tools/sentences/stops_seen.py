"""A signal to stop that can be seen: a hand, a card, the lamps."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying
from build_tools.sentences.signals import STOP_SIGNAL

_STOPS = "=stop|=stops|freeze|freezes|still|halt|signal|statue|statues|pause"
SEEN = Saying(
    f"""
    raise|lift|hold|wave|show|put|see|watch ~3 hand|hands|arm|arms|card|flag|palm|palms|scarf
        ~~8 {_STOPS}
    {_STOPS} ~~8 raise|raises|raised|lift|hold|show|put|see ~3 hand|hands|arm|arms|card|flag|palm|
        palms|scarf
    =raised hand|arm|palm|card ~~8 {_STOPS}
    {_STOPS} ~~8 =raised hand|arm|palm|card
    hand|arm|card|flag|palm|palms|scarf ~3 up|high|means|mean|says|goes ~~6 {_STOPS}
    {_STOPS} ~~6 hand|arm|card|flag|palm ~3 up|high|goes|raised
    flash|flashes|switch|turn|dim ~3 light|lights|lamp|lamps
    light|lights|lamp|lamps ~2 off|out|flash|flashes|dim ~~6 {_STOPS}
    """
)
"""A text that tells of a signal to stop that is seen."""

_KINDS = {
    "a raised hand": Saying(
        """
        raise|raises|lift|hold|put|see ~3 hand|hands|arm|arms|palm
        =raised hand|arm|palm
        hand|arm|palm ~3 up|high
        """
    ),
    "a call": Saying("call|calls|say|says|shout|shouts ~2 freeze|stop|halt|still\nfreeze and"),
    "taps": Saying("n:tap|=taps|tapping"),
    "claps": Saying("n:clap|=claps"),
    "the drum": Saying("drum|drumbeat|gong|tambourine"),
    "a bell": Saying("bell|triangle|chime|cymbal|whistle"),
    "the lamps": Saying("light|lights|lamp|lamps ~2 off|out|flash|on|dim"),
    "a card or a scarf": Saying(
        "card|flag|scarf ~3 up|high|red\nraise|hold|show ~3 card|flag|scarf"
    ),
}


def signals_in(text: str) -> frozenset[str]:
    """The kinds of signal by which a text stops the class; none where it stops nobody."""
    if SEEN.said(text) is None and STOP_SIGNAL.said(text) is None:
        return frozenset()
    return frozenset(kind for kind, saying in _KINDS.items() if saying.said(text))
