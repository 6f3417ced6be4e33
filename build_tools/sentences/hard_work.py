"""What is hard on knees, wrists and shins, and what makes it softer."""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

JUMPS = (
    "jump hop leap bounce skip spring bound pogo vault pounce star-jump hopscotch jack bunny frog"
)
_LISTS = {
    "jump": JUMPS,
    "knee": "=knee =knees",
    "drop": (
        "drop fall crash collapse slam throw fling hurl dive plunge flop plummet tumble topple "
        "dump plop smash thud hit land slump keel pitch crumple"
    ),
    "ground": (
        "floor ground board boards floorboard deck earth knee bottom seat back front stomach tummy "
        "belly hip side hand bum elbow tailbone shoulder chest"
    ),
    "limb": "hand finger fingertip arm eye eyelid shoulder head voice elbow wrist chin chest jaw",
    "patter": "pat tap slap clap beat drum hand clapping rhythm rap",
    "my": "your their his her our my both the one each",
    "far": "far other whole wall end length diagonal side",
}

ON_KNEES = Saying(
    """
    v:kneel !<imaginary
    kneeling !<no
    crawl !<hand|finger|fingertip|arm|eye|front|voice|slow
    on|onto|to|upon|over !<@patter ?to ?@my ?hands ?and @knee !bend|bent|height
    on|onto|down|crouch ?to ?@my all-fours
    on|onto|using|with ?to ?your|their|both hands|hand and|& knees|feet|foot
    hands and knees
    knee slide|walk|drop|spin
    =bottom|=bottoms|bum shuffle|walk|slide
    crab|bear|duck|caterpillar|seal|commando|leopard walk|crawl|scuttle
    @drop !fall|land|of !<drop|raindrop|rain|snow|leaf|petal ?down|backwards|forwards|sideways|
        straight|over|flat|yourself|hard|suddenly|heavily|themselves|back|right
        ~1 to|on|onto|into|against ~3 @ground
    v:hit|slap|strike|smack ~1 floor|ground|deck
    throw|fling|hurl|launch|chuck yourself|yourselves|themselves|himself|herself|itself !into
    collapse !<arm|chest|shoulder|middle|slowly
    fall|crash|drop|flop|topple|slump|tumble|dive down|flat|over|backwards|sideways|headlong|
        heavily !by|from|a
    belly flop|crawl|slide
    slide|skid|slither ~2 on ~2 knee|bottom|stomach|tummy|belly|back|side
    slither|wriggle|commando ~3 floor|ground|hall
    plank|press-up|push-up|backbend|crab-walk
    press|push =ups
    """,
    _LISTS,
)
"""On the knees or wrists, or down on to the floor with a bump."""

MANY_JUMPS = Saying(
    """
    keep ?on jumping|hopping|leaping|bouncing|skipping|springing
    @jump ~~6 again|over and again|over
    @jump ~~4 non-stop|nonstop|endlessly|continuously|repeatedly
    @jump ~~6 without|never|not ~1 stop|stopping|rest|resting|pause|pausing|break
    @jump ~~8 for ~2 minute|minutes|ages
    @jump ~~8 as long as
    @jump ~~8 until ~3 stop|end|over|finish|finishes|stops|ends|tired|drop
    @jump ~~8 throughout|whole|entire|all of
    @jump ~~3 all|right the way
    @jump ~2 on|at each|every ~1 beat|count|tap|drum ~~5 all|whole|both|throughout|
        eights|song|track
    @jump ~4 across|round|around|along|down|up ~3 room|hall|space|floor|stage|gym
    @jump ~4 to|from ~3 @far
    @jump !and|then ~~5 #12.. ~3 time|times|jump|jumps|row|in|on|count|counts|hop|hops
    @jump ~~2 #12..
    #12.. ~3 @jump
    another|more|next|further #12..
    many|lots ~3 @jump
    as many ~2 @jump
    """,
    _LISTS,
)
"""Jumps, over and over."""

NOT_REALLY = Saying(
    """
    jump|hop|leap|bounce|skip in|at|to with|idea|conclusion
    shoulder|eyebrow|finger|heart|eye|hand|elbow ~3 @jump
    """,
    _LISTS,
)
"""Nothing that leaves the floor."""

SOFTER = Saying(
    """
    mat|cushion|carpet|padded|pad|pads|rug|padding
    slow+|soft+|gentle+|careful|carefully|control|controlled|lightly|gradual|gradually|tender
    with|take care
    slow motion
    few|briefly|short
    or ~~6 stand|stay|sit|crouch|step|lunge|squat|bend|creep|low|foot|feet|stoop|chair|walk|
        rise|choose|fold|hover|standing|sitting|crouching|halfway|bow|reach|tiptoe
    choose|choice|prefer|instead|rather
    if|anyone|whoever|unless|those ~~6 sore|hard|like|want|prefer|wish|rather|need|hurt|easier
    may|can ~2 stay|stand|sit|crouch|use|keep|choose|fold
    through ~1 bent|bend|soft
    #1..2 ?second|counts only
    =knees|knee|hands|hand|hips|hip|feet first
    lower yourself|down|through|with
    no|not more|longer than #..8
    =knee|=knees bend|bent|soft
    easy|easily
    """
)
"""A softer way, a soft floor, or care."""

FEWER = Saying(
    """
    no|not more|further than #..11
    at-most|only|up|just ?to #..8

    few|fewer|low|small|little|tiny|rise|tiptoe|toes|instead|lower|smaller
    swap|change when|if|before|halfway
    choose|choice|prefer
    or ~~6 step|rise|walk|bounce|march|bend|lift|stretch|stay|tiptoe|feet|heel
    just as|as good|well
    soft mat|floor
    """,
)
"""A limit or a smaller move."""

_REST = Saying(
    """
    rest|recover|breathe|breath|walk|pause|still !of
    stop when|if|before|halfway
    """
)
"""A rest, which eases what came before it."""

_A_REST = Saying("rest|recover|breathe|breath|pause !of")

EASED_JUMPS = Saying(
    """
    @jump ~~8 few|low|rest|small|rise|tiptoe|toes|fewer|instead|mat|little
    few|low|small|little|fewer ~~4 @jump
    rise|instead|rest ~~8 @jump
    """,
    _LISTS,
)
"""A line that says few, low or rest of jumps."""

_AGAIN = Saying(
    """
    no|without|never|not ~2 rest|stop|pause|break|breath
    another|more|again ~2 #12..
    """
)
"""No rest, or one before as many again."""

_NO_REST = Saying(
    _AGAIN.phrases
    + """
    #24.. ~3 @jump
    @jump ~~4 #24..
    """,
    _LISTS,
)


def softer(text: str) -> bool:
    """Whether a text offers a softer way, a soft floor, or care."""
    return SOFTER.said(text) is not None


def many_jumps(text: str) -> Said | None:
    """Jumps over and over that a text asks for, and nothing in its own sentence that says few."""
    for said in MANY_JUMPS.all_in(text):
        if not NOT_REALLY.said(read(text).sentence_of(said.words[0])):
            return said
    return None


def fewer(text: str) -> bool:
    """Whether a text sets a limit or gives a rest; a rest before as many again is none."""
    told = FEWER.said(text) or _REST.said(_from_the_jumps(text))
    return bool(told) and not _NO_REST.mentioned(text)


def eased(text: str, beside: Iterable[str]) -> bool:
    """Whether jumps over and over that a text asks for are few or have a rest, by it or beside it.

    Standing still at a signal is no rest that is told beside; and two dozen or more need one.
    """
    if _NO_REST.mentioned(text):
        own = () if _AGAIN.mentioned(text) else (_from_the_jumps(text),)
        return any(_A_REST.said(one) for one in (*own, *beside))
    return fewer(text) or any(FEWER.said(one) or _A_REST.said(one) for one in beside)


def _from_the_jumps(text: str) -> str:
    """The text from the sentence on that has jumps over and over; all of it where none has."""
    sentences = read(text).sentences
    first = next((n for n, one in enumerate(sentences) if MANY_JUMPS.said(one)), 0)
    return " ".join(sentences[first:])
