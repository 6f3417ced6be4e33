"""A signal to stop that can be seen: a hand, a card, the lamps."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying
from build_tools.sentences.signals import STOP_SIGNAL

_STOPS = "=stop|=stops|freeze|freezes|still|halt|signal|statue|statues|pause"
_A_THING = "!<wheel|wheels|chair|chairs|wheelchair|ball|balls|engine|wind|rain|marble|marbles"
"""What stops is no pupil: arms thrown up while the wheels stop are a move, and no signal."""
SEEN = Saying(
    f"""
    raise|lift|hold|wave|show|put|see|watch ~3 hand|hands|arm|arms|card|flag|palm|palms|scarf
        ~~8 {_STOPS} {_A_THING}
    {_STOPS} ~~8 raise|raises|raised|lift|hold|show|put|see ~3 hand|hands|arm|arms|card|flag|palm|
        palms|scarf
    =raised hand|arm|palm|card ~~8 {_STOPS} {_A_THING}
    {_STOPS} ~~8 =raised hand|arm|palm|card
    hand|arm|card|flag|palm|palms|scarf ~3 up|high|means|mean|says|goes ~~6 {_STOPS} {_A_THING}
    {_STOPS} ~~6 hand|arm|card|flag|palm ~3 up|high|goes|raised
    flash|flashes|switch|turn|dim ~3 light|lights|lamp|lamps
    light|lights|lamp|lamps ~2 off|out|flash|flashes|dim ~~6 {_STOPS}
    {_STOPS} ~2 when|if|once|as ~1 =i|teacher ~1 stand|sit|kneel|crouch|step
    """
)
"""A text that tells of a signal to stop that is seen."""

_KINDS = {
    "a raised hand": Saying(
        """
        raise|raises|lift|hold|put|see ~3 hand|hands|arm|arms|palm !down|flat
        =raised hand|arm|palm
        hand|arm|palm ~~3 up|high
        up ~2 hand|arm
        """
    ),
    "a call": Saying("call|calls|say|says|shout|shouts ~2 freeze|stop|halt|still\nfreeze and"),
    "taps": Saying("n:tap|=taps|tapping"),
    "claps": Saying("n:clap|=claps"),
    "the drum": Saying("drum|drumbeat|gong|tambourine"),
    "a bell": Saying("bell|triangle|chime|cymbal|whistle"),
    "the lamps": Saying(
        "light|lights|lamp|lamps ~2 off|out|flash|on|dim\nflick|flash ~2 light|lights|lamp|lamps"
    ),
    "a card or a scarf": Saying(
        "card|flag|scarf ~3 up|high|red\nraise|hold|show ~3 card|flag|scarf"
    ),
}

_TELLS = Saying(
    """
    mean|means ~1 stop|freeze
    that|this|is ~2 stop
    word stop ~1 is
    when ~1 =i ~~6 stop|freeze
    """
)
_ANOTHER = "a sign of its own"


def signals_in(text: str) -> frozenset[str]:
    """The kinds of signal by which a text stops the class; none where it stops nobody.

    They stand in the sentence that tells of the signal, or in the one before, if that is a
    question: my hand is up? Then stop.
    """
    if SEEN.said(text) is None and STOP_SIGNAL.said(text) is None and not _TELLS.said(text):
        return frozenset()
    sentences = read(text).sentences
    telling = [one for one in sentences if SEEN.said(one) or STOP_SIGNAL.said(one)]
    telling = telling or [one for one in sentences if _TELLS.said(one)]
    found = _kinds_in(" ".join(telling))
    return found or _kinds_in(text) or frozenset({_ANOTHER})


def _kinds_in(text: str) -> frozenset[str]:
    return frozenset(kind for kind, saying in _KINDS.items() if saying.said(text))
