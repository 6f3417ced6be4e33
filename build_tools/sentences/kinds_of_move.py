"""Which kinds of action a text has pupils do: travel, turn, jump, gesture, shift of weight.

Telling of a move, drawing or watching one is none, and whoever sits moves the upper body only.
"""

from __future__ import annotations

from functools import cache, lru_cache

from build_tools.sentences.forms import forms, forms_of
from build_tools.sentences.reading import Reading, Word, read
from build_tools.sentences.sayings import Saying
from build_tools.sentences.word_lists import word_list

_VERBS = {
    "travel": (
        "walk run skip step side-step sidestep gallop travel jog march creep rush prowl dash "
        "wander "
        "dodge chase shuffle scuttle glide slide stroll trot swim fly drive go tiptoe follow "
        "stride "
        "race canter scamper tread pace crawl dart zigzag weave scurry sprint hurry roam amble "
        "saunter stomp lunge grapevine patter scoot skate gallop float swoop drift move stepping"
    ),
    "turn": "turn spin twist twirl whirl pivot swivel swirl rotate",
    "jump": "jump hop leap bounce spring jack skip star-jump hopscotch bunny-hop bob",
    "gesture": (
        "reach stretch swing shake point open close clap circle punch wave shrug flick press pull "
        "push nod unfold fold curl draw wiggle grow shrink wriggle roll conduct wring tap pat "
        "throw catch sweep"
    ),
    "transfer": (
        "rock sway bend sink rise lean fall melt lunge roll settle crouch squat tip drop balance "
        "grow shrink stamp curl lower sag plunge dip kneel collapse swell stoop plie swing"
    ),
}
_UPPER = forms_of("arm hand finger wrist shoulder head neck elbow face eye fist thumb palm jaw")
_TELLS = forms_of(
    "talk tell name draw list remember think watch listen discuss write read share guess describe "
    "sing chat recall imagine picture spell say colour sort match learn hear look choose answer "
    "ask "
    "explain suggest"
)
_SITS = word_list("sit sits sitting seated sat lie lies lying laid chair chairs legged kneeling")
_STANDS = word_list("stand stands standing up feet then afterwards next walk jog run finally")
_NOT_DONE = word_list("about the your that this which it its where of their his her our no")

WARMS_ANYTHING = Saying(
    """
    warm|loosen|wake|mobilise|ready ~4 body|part|move|joint|muscle|everything|limb|legs|knees|ankles
    every|each|all ~2 part|move|joint|muscle|limb
    body part|parts
    whole body
    all over
    move ~3 we|you|from ~3 use|dance|need|last
    joint|joints
    knee|ankle|knees|ankles ~2 up|high|bend|lift|circle|round
    lift|bend|circle|raise|roll|loosen ~3 knee|ankle|leg|foot|hips|hip
    @follow ~2 leader|me|front
    tag|traffic|stuck|musical|simon|fishes|dodge
    """,
    {"follow": "follow copy chase"},
)
"""A warm-up that says it gets the body ready, whatever it is made of."""

NO_MOVING = Saying(
    """
    sit|lie|listen|watch|talk|think|read|discuss|share|draw|name|write|breathe|sing|clap|wriggle|
        imagine|remember|still|look|tell|say|pull|smile|hum|chant|count|guess|describe|chair|rest
    """
)
"""A warm-up in which nobody moves, or only sits and talks."""


@lru_cache(maxsize=512)
def kinds_moved(text: str) -> frozenset[str]:
    """The kinds of action that the text has pupils do, stillness apart."""
    reading = read(text)
    found: set[str] = set()
    tells = sits = False
    for at, word in enumerate(reading.words):
        if at and reading.words[at - 1].sentence != word.sentence:
            tells = False
        if word.form in _TELLS and not word.as_thing:
            tells = True
        if word.form in ("then", "while") or _as_you(reading, at):
            tells = False
        sits = (sits or word.form in _SITS) and word.form not in _STANDS
        if not tells and _is_done(reading, at):
            found |= {k for k in _kinds_of(reading, at) if not sits or k == "gesture"}
    return frozenset(found)


def _as_you(reading: Reading, at: int) -> bool:
    words = reading.words
    return words[at].form == "as" and at + 1 < len(words) and words[at + 1].form == "you"


def _is_done(reading: Reading, at: int) -> bool:
    word = reading.words[at]
    if word.denied or word.unreal:
        return False
    before = reading.words[at - 1] if at else None
    return before is None or before.sentence != word.sentence or before.form not in _NOT_DONE


def _kinds_of(reading: Reading, at: int) -> frozenset[str]:
    kinds = _kinds().get(reading.words[at].form, frozenset())
    if kinds and _with_upper_body(reading.words, at):
        return frozenset({"gesture"})
    return kinds


def _with_upper_body(words: tuple[Word, ...], at: int) -> bool:
    """Whether arms, hands or the head do it: roll your wrists."""
    near = words[at + 1 : at + 4]
    return any(one.form in _UPPER and one.clause == words[at].clause for one in near)


@cache
def _kinds() -> dict[str, frozenset[str]]:
    found: dict[str, frozenset[str]] = {}
    for kind, verbs in _VERBS.items():
        for verb in verbs.split():
            for form in forms(verb):
                found[form] = found.get(form, frozenset()) | {kind}
    return found
