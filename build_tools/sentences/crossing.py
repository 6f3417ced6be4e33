"""How far a text has pupils travel."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "go": (
        "go walk run travel move skip gallop jog march step stride stroll tiptoe creep crawl "
        "scuttle shuffle slide glide skate float drift dance rush dash race hurry trot prowl "
        "wander weave dart zoom whizz hop leap sprint charge chase flow stream fly sail swoop roam "
        "scurry cross pass swim roll parade process file fetch snake wind spiral sweep circle pour "
        "scatter spread head make get find return come jump bound slither"
    ),
    "far": "far opposite other furthest farthest next adjacent",
    "place": (
        "wall corner end side door stage window piano line edge bench back front hall room shore "
        "bank goal"
    ),
}

FAR = Saying(
    """
    @go ~5 to|towards|into|for|at|on ~2 @far ~2 @place
    @go ~4 to|into ~3 corner|corners|wall|walls|end|ends|edge|edges|door|stage|sides|places|back|
        front !of
    @go ~4 to|into ~3 corner|end|edge|back|front|side of ~2 hall|room|floor|space|stage
    @go ~4 to|into ~1 one|the|your|a|each side !<one|jump|step|little
    cross|crosses|crossing ~3 hall|room|floor|space|stage|gym
    @go ~4 across|along|through|over|down|up ~3 hall|room|floor|space|stage|gym|length|width|
        diagonal
    @go ~4 round|around ~3 hall|room|outside|edge|floor|space|perimeter|everyone|class|gym|others
    lap|circuit ~3 hall|room|floor|space|gym
    full|whole|big|wide ~1 circle|lap|loop|circuit ~3 round|around|of|outside
    @go ~3 whole|full|entire ~1 length|width|hall|room|floor|diagonal
    @go ~4 from ~3 @place ~2 to ~3 @place
    from ~3 wall|corner|end|side ~3 to ~2 wall|corner|end|side|other
    @go ~2 in|inwards|together from ~4 wall|side|corner|edge|end
    all the way round|around|across
    swap|change|exchange ~3 place|places|side|sides|end|ends ~5 other|opposite|far ~1 end|side|wall
    swap|change|exchange ~2 ends|sides|corners|halves
    @go ~5 through ~3 groups|everyone|class|crowd|others ~3 to
    leave|exit ~4 and ~3 come|return|enter|re-enter ~2 back|on|in|again|from|at
    leave ~2 hall|room|stage
    to ~2 far ~2 @place
    """,
    _LISTS,
)
"""Pupils cross the hall, or go all the way round it."""

STEPS = Saying(
    """
    #4.. ~3 step|steps|strides|paces|skips|gallops|hops|jumps|leaps|bounces
    """
)
"""A number of steps."""

_NOT_NOW = Saying(
    """
    later|afterwards
    stay|stays|remain|remains
    no|never further|farther
    look|looks|face|faces|point|points|turn|turns|nod|glance|gaze|reach|stretch|lean|wave
    """
)
_TRAVELS = Saying(
    """
    @go
    """,
    {"go": _LISTS["go"].replace(" head make get find return come", "")},
)


def far(text: str) -> Said | None:
    """The first words that send pupils across or round the hall."""
    for said in FAR.all_in(text):
        sentence = read(text).sentence_of(said.words[0])
        if _NOT_NOW.mentioned(sentence) and not _hurries(sentence):
            continue
        return said
    return None


def _hurries(sentence: str) -> bool:
    """Whether a sentence that looks or turns as well still travels."""
    first = _TRAVELS.said(sentence)
    other = _NOT_NOW.mentioned(sentence)
    return bool(first and other and first.words[0] < other.words[0])


def steps(text: str) -> int:
    """The most steps that a text names; 0 for none, or fewer than four."""
    reading = read(text)
    numbers = (reading.words[said.words[0]].number for said in STEPS.all_in(text))
    return max((number for number in numbers if number), default=0)
