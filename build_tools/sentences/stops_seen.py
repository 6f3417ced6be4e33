"""A signal to stop that can be seen: a hand, a card, the lamps."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

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
