"""Spinning, and what keeps it from making dizzy."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "spin": "spin whirl twirl pirouette rotate revolve whizz gyrate",
    "small": (
        "wrist finger fingertip hand arm thumb story tale web yarn wool thread coin hoop plate "
        "ribbon scarf baton rope poi umbrella"
    ),
    "many": "fast+ quick+ rapidly hard wildly madly furiously swiftly speed endlessly",
}

SPIN = Saying(
    """
    v:@spin !<@small !@small|a
    v:@spin a|your ~1 body|way|whole|self
    a|another|=big|full|double|fast|wild|quick|tight|some spin|whirl|twirl|pirouette|spins|
        twirls !<@small
    spinning|whirling|twirling|rotating|revolving !<@small !wheel
    keep ?on turning
    turn|roll|go|run|travel|circle|twist round|around ~1 round|around
    v:turn and turn
    round and round !<hand|arm|wrist|finger|each-other|roll !each-other|the
    v:turn ~4 @many !@small
    quick+|fast+ ~2 =turns|turn
    #2.. ~3 =turns|=spins|=twirls|=rotations|=revolutions|=pirouettes !each|at|of|with|for
    turn ~2 on the spot ~~6 until|as long|again|fast+|times
    like|be|become|as a ~2 spinning top|tornado|whirlwind|whirlpool|carousel|propeller
    whirlwind|tornado|whirlpool|merry-go-round ~3 @many
    """,
    _LISTS,
)
"""A body that turns and turns."""

SAFE_SPIN = Saying(
    """
    dizzy+|giddy|giddiness|sick|queasy|swimmy|wobbly|woozy
    =eyes ~2 open|fixed|fix|on
    open|fix|keep ~2 =eyes !shut|closed
    spot|fix ~2 point|wall|mark|something
    slow+|gentle+|steady+|careful|carefully|lazy+|unhurried|calmly
    once|single !<at|all|more|jump
    one|a|half|quarter|single|1 ?slow|full|small|gentle|only|big|whole turn|spin|twirl|whirl|
        pirouette|rotation !after|and
    no|not|never more|further than
    at-most|only #1..3
    other|opposite|both|each|either|another ~2 way|direction|side|ways|directions|sides
    change|switch|swap|reverse ~2 direction|side|way|sides|directions
    unwind|back again|unspin
    rest|pause|stop|stand|walk|sit ~3 if|whenever|when|as
    if|when|anyone|anybody|whoever ~~5 stop|rest|pause|sit|stand|walk
    walk it|out
    """
)
"""Slow, once, eyes open, the other way too: in the step that spins."""

ABOUT_DIZZINESS = Saying(
    """
    dizzy+|giddy|giddiness
    @spin|turn ~~5 slow+|once|other way|both ways|eyes open|sides
    slow+|one|once|half ~3 @spin|turn
    """,
    _LISTS,
)
"""The same, said of spins in another step or for the whole lesson."""

_OF_SOMETHING_SMALL = Saying(
    """
    @spin|roll|circle|turn ?your|the|a|both|their ?two|both|own @small
    @small ~3 @spin|round
    """,
    _LISTS,
)
"""Wrists, fingers or a story are spun, and no body is."""


def spin(text: str) -> Said | None:
    """The first spin of a whole body that a text asks for."""
    for said in SPIN.all_in(text):
        if not _OF_SOMETHING_SMALL.mentioned(read(text).sentence_of(said.words[0])):
            return said
    return None
