"""Whether a text names a device, or says in plain words what it does to a motif."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying

_MOTIF = {
    "motif": "motif move moves movement phrase dance dancing sequence film action order pattern "
    "steps "
    "it them row wave card",
    "one": "move movement action shape count card step moves actions one word",
    "first": "first start beginning front top opening",
    "last": "last end finish final close",
}

_RETROGRADE = Saying(
    """
    retrograde
    finish|end|last|close ~~2 middle ~~3 start|beginning|first
    start ~1 where ~3 end|finish|stop
    the wrong|other way round|about
    backwards ~~8 forwards again
    last ~1 @one ~~8 @first
    what|whatever|that ~3 last ~4 first
    from|begin|start|starting ?with ?at ?the last ~~8 first|beginning|start
    from ~2 finish|end|last ~4 to|back ~2 @first
    end|finish|last ?one to|until ?the beginning|start|first
    first ~3 become|becomes|comes|is|be|goes ~2 last
    last ~3 become|becomes|comes|is|be|goes ~2 first
    last ~2 first !week|time|lesson
    end|finish|ending|last ~2 be|become ~1 start|beginning|first
    right to left
    in reverse
    reverse|reversed ~1 order|motif|moves|movements|phrase|sequence|it|them|pattern|film
    @motif ~2 reverse|reversed
    v:dance|do|perform|play|say|read|run|go|take|move|show ~5 @motif|through ~3 backwards|backward
    @motif|through ~3 backwards|backward
    backwards|backward through
    rewind ~2 @motif !music
    rewind $
    undo|unpick|unravel|unknit|unwind ~3 move|action|step|motif|each|=it|scarf|thread|dance
    each|every @one undone
    order ~4 flip|reverse|round|around|opposite|upside
    turn|flip|swap ~3 order ~1 round|around|over
    opposite|other|wrong|reverse order
    opposite|other|wrong way round|around ~4 order
    same ~1 @one ~~3 opposite|reverse|wrong|other ~1 order
    four ~~1 three ~~1 two ~~1 one
    three ~~1 two ~~1 one ~~6 order|way|moves
    """,
    _MOTIF,
)

_PLAIN = {
    "repetition": "repeat|repetition|=twice|again|thrice\n#2..9 =times|=goes\neach time",
    "change of speed": (
        "slow+|fast+|quick+|speed|tempo|hurry\n"
        "double|half|twice ~2 time|speed|long|as|counts\n"
        "long+ ~2 time|than|move|each|over\n"
        "take ~3 longer|long|counts\n"
        "# counts"
    ),
    "change of rhythm": "rhythm|uneven+|syncopate|short+|long+|beat|pause|wait|jerky",
    "change of size": "big+|small+|large+|tiny|grow|shrink|size|huge|enormous|little|stretch|wide+",
    "change of level": "low+|high+|level|middle|floor|up|down|kneel|sink|rise|ground|tall",
    "change of direction": (
        "direction|backwards|backward|forwards|forward|sideways|side|diagonal|diagonally|back\n"
        "other|opposite|new|different way\nturn ~2 round|back"
    ),
    "change of facing": (
        "face|facing|turn|away|towards|front|outwards|inwards|back|wall|window|audience"
    ),
    "change of pathway": (
        "path|pathway|curve|curved|zigzag|straight|line|circle|spiral|wind|winding|loop|weave"
    ),
    "change of dynamics": (
        "dynamic|dynamics|strong+|light+|sudden+|soft+|heavy+|smooth+|sharp+|gentle+|sustained|"
        "float|punch|press|flick|feel|feeling|calm+|jerky|energy|force|fierce+|lightly|power"
    ),
    "change of body part": (
        "part|elbow|shoulder|knee|foot|hand|arm|hip|head|leg|back|finger|nose|toe|chest|heel|body"
    ),
    "mirror": (
        "mirror|reflect|reflection|opposite|swap|left|side\nother|opposite|both side|way\nlook "
        "~2 glass"
    ),
    "change of order": (
        "order|shuffle|rearrange|first|mix|jumble|swap|last|sequence|reorder|different+"
    ),
    "replacing an action": "replace|swap|instead|place|new|change|substitute|exchange|for|other",
    "leaving out": "leave|without|miss|out|drop|skip|only|away|cut|omit|take",
    "embellishment": "add|decorate|trim|embellish|extra|ornament|more|put|fill|between|detail",
    "fragmentation": "only|just|part|piece|bit|fragment|break|keep|half|one|section|small",
    "accumulation": "build|accumulate|add|grow|more|each|bit|snowball|next\none ~~1 two|one",
    "combination": "join|combine|link|together|then|add|put|mix|merge",
    "change of formation": (
        "formation|line|circle|scatter|cluster|file|pair|square|shape|spread|stand|space|row|group"
    ),
    "change of number of dancers": (
        "alone|pair|=threes|=fours|=fives|=sixes|half|halves|class|all|everyone|partner|group|"
        "solo|together|number|one|two|three|four"
    ),
    "change of relationship": (
        "canon|unison|mirror|match|lead|follow|question|answer|together|partner|contrast|facing|"
        "after|against|opposite|beside|towards|each-other|side"
    ),
    "own variation": "own|choose|pick ~~6 change|variation|device|way\nvary|variation",
}
_SAYS = {device: Saying(words) for device, words in _PLAIN.items()} | {"retrograde": _RETROGRADE}
_ROLES = frozenset(
    {"one", "two", "three", "four", "ones", "twos", "threes", "fours", "odd", "even", "odds",
     "evens", "leader", "follower", "leaders", "followers", "a", "b"}
)  # fmt: skip
_SHORTEST = 3
"""So many words said one way and then the other are a row and its reverse."""


def says_device(device: str, text: str | None) -> bool:
    """Whether a text names the device, or says in plain words what it does.

    It may liken it to something: as if a film ran backwards.
    """
    if not text:
        return False
    if device in text.lower() or _SAYS[device].mentioned(text):
        return True
    return device == "retrograde" and _says_both_ways(text)


def _says_both_ways(text: str) -> bool:
    """Whether some words stand in a row and then in the opposite order: roll, reach, stamp."""
    forms = [word.form for word in read(text).words]
    rows = {tuple(forms[at : at + _SHORTEST]): at for at in range(len(forms) - _SHORTEST + 1)}
    return any(
        len(set(row)) == len(row) and not _change_over(row) and rows.get(row[::-1], -1) > at
        for row, at in rows.items()
    )


def _change_over(row: tuple[str, ...]) -> bool:
    """Whether two roles stand round what one does to the other: ones ask, twos answer."""
    return {row[0], row[-1]} <= _ROLES and not _ROLES.issuperset(row)
