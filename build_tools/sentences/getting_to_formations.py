"""How pupils get from one formation into another."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "go": (
        "walk run step side-step sidestep travel creep skip gallop jog march tiptoe crawl roll "
        "slide glide drift float flow spiral wander go come gather spread scatter melt shuffle "
        "stream weave wind unwind swim fly leap hop hurry trot bounce sneak prowl tread pace "
        "stroll parade sail blow wash rush dash dart file move shift peel fan lead follow set "
        "wheel swing cross scurry patter swarm tumble bowl return drain push pull back circle "
        "disperse retreat advance drop stride"
    ),
    "shape": (
        "line row circle ring pair group four three partner cluster column file square semicircle "
        "horseshoe "
        "arc diamond pool place spot space side wall corner middle centre edge end number tape "
        "chalk position home star half curtain team front back left right own new letter name "
        "neighbour three six five other each-other them other others opposite station post house "
        "window door stage block chain crowd heap huddle formation"
    ),
    "opens": (
        "open split break snap straighten divide part unfold unroll peel unzip flatten uncurl fan "
        "bend stretch stream thin loosen cut unwind unravel dissolve explode burst spread close "
        "shut curve curl bend join link form make find draw gather bunch cluster"
    ),
}

GETS_THERE = Saying(
    """
    v:@go ~6 into|to|onto|towards|toward|for|back|in|from|out|away|apart|across|behind|between|
        beside|home|where|along|round|around|down|up|past|through|off|by|near|over|alongside|
        forward|
        forwards|backwards|sideways
    v:@opens ~6 into|to|onto|until|in|out|apart|open|down|at|like|towards ~6 @shape|straight|wide
    #1..40 side-steps|steps|strides|paces ?in|back|out|across|left|right|forward|until
    side steps|step
    ^ v:@opens ~3 circle|ring|line|row|group|cluster|column|semicircle|horseshoe
    v:form|make|find|join|take|reach ~3 @shape
    v:become ~4 line|row|circle|ring|pair|pairs|group|four|fours|three|threes|column|square|file
    v:step|walk|come|move ~1 out|in|back|off|away ~3 of ~2 ring|circle|line|pair|group|row
    take|#1..40 ~4 step|steps|counts|strides ~3 into|to|in|towards|back|out|apart|away|forward|
        forwards|sideways|across
    v:@go apart|out|away|home|together|closer|inwards|outwards|aside|across
    half|one|two|front|back|odd|even|every ~3 @go ~4 @shape
    spread|scatter|gather|disperse|huddle|bunch ?out|up|in|together
    each|every|half|ones|twos|odds|evens ~2 @go|@opens
    into|to ~2 own|your|their|new|two|a|the ~2 @shape
    """,
    _LISTS,
)
"""Somebody goes somewhere else."""

STAYS = Saying(
    """
    back to ~3 place|spot|space|where ~4 left|start|began|begun|from|came
    on the|your spot
    all the way round
    round ~2 circle|ring ~~6 back
    stay|remain|keep|hold ~3 circle|ring|line|place|where|put|closed|row|shape|still
    where you are
    turn ~2 once|round|around ~3 spot
    as if by magic
    """
)
"""Whoever does so is where they were."""

TURNS = Saying(
    """
    turn|face|look ~4 partner|each-other|neighbour|centre|middle|front|out|outwards|inwards|away
    """
)
"""Turning is all it takes to stand in pairs, or to face another way."""
TURNS_ON_THE_SPOT = Saying("own|same|your place|spot ~~6 turn")
"""Turning where one stands: a file becomes a line, and a line a file."""


def gets_there(how: str) -> bool:
    """Whether some sentence part of `how` takes pupils elsewhere."""
    parts = how.replace(";", ".").replace(", then ", ". ").split(".")
    return any(GETS_THERE.said(part) and not STAYS.said(part) for part in parts)
