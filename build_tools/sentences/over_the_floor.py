"""Whether a task takes pupils over the floor, as one on the spot does not.

Who uses a wheelchair has the brakes on where nobody travels, and pushes where everybody does.
"""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying

_LISTS = {
    "limb": (
        "shoulder head wrist ankle neck joint arm hand elbow finger knee hip back spine ribs "
        "down up through"
    ),
    "joined": "your the each their one both every",
    "place": "hall gap room space wall edge corner place line circle middle",
}

_GOES = Saying(
    """
    walk|skip|jog|gallop|tiptoe|sidestep|side-step|travel|creep|scuttle|chase|prowl
    v:stride|wander|zigzag|trot|scurry|crawl
    v:run !<let|wave|push !the|@limb
    v:roll !@joined|@limb
    v:move|go|float|fly|drift|dance|flow|glide|slide|swim|rush|stream|spin|hop|leap|jump|bounce|
        march|tread ~2 about|round|around|through|across|over|into|between|past|to|towards
        ~3 @place
    go ~1 while|when|anywhere|everywhere|forwards|backwards|out|home
    set off|out
    push ~2 wheels
    follow ~3 leader|file|line|front
    off you go
    """,
    _LISTS,
)
"""The words alone say it."""

_STEPS = Saying("v:step|march|tread\nstep|steps")
"""Over the floor, unless they are said to be on the spot or the dance itself leaves no spot."""

_TURNS = Saying("v:turn|spin|twirl|whirl !over|off|on|your|the|a|it|to|each|head")

_ON_THE_SPOT = Saying("on|in ~2 spot\nstand|stay still|where")


def over_the_floor(heading: str, task: str, place: str, *, dance_travels: bool) -> bool:
    """Whether pupils leave their spots in a step with this heading, task and place.

    `dance_travels` is asked for steps alone, which may be on the spot and not say so.
    """
    if any(map(_ON_THE_SPOT.said, (heading, place))):
        return False
    texts = (heading, task, place)
    if any(map(_goes, texts)):
        return True
    on_the_spot = any(map(_ON_THE_SPOT.said, texts))
    return dance_travels and not on_the_spot and any(map(_STEPS.said, texts))


def turns_round(text: str) -> bool:
    """Whether a body turns, which wheels do with the brakes off."""
    return _TURNS.said(text) is not None


def _goes(text: str) -> bool:
    """Whether a sentence says so that has nothing of the spot in it."""
    reading = read(text)
    sentences = (reading.sentence_of(said.words[0]) for said in _GOES.all_in(text))
    return not all(map(_ON_THE_SPOT.said, sentences))
