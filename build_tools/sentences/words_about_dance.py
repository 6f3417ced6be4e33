"""Small things that texts say about dancing, each asked by one rule or view.

Where in doubt they say yes: each keeps a rule silent, but `groups_at_a_time`.
"""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying

TWICE = Saying(
    """
    twice|again
    #2..3 =times|=runs|=goes
    second time|run|go
    """
)
"""The same thing is danced more than once."""

ENDING = Saying(
    """
    ending
    the ?very end
    n:finish
    finish ~1 with|in|on|as|low|high|together
    final
    bow
    last shape|moment|section|part|pose|picture !<before
    how|dance|it ~1 close|closes|ends|end
    how ~2 dance ~1 close|closes|ends|end
    close|end ~1 the|your|our dance
    close|end of|for ~1 dance
    the dance ~1 over
    the end
    """
)
"""It is about the end of the dance."""

WAITS = Saying(
    """
    still|stillness|hold|rest|freeze|repeat|again|twice|watch|waiting
    wait !for
    wait for !nobody|none
    stay|stays|keep|keeps ~1 down|low|up|there|put
    rock|sway|breathe|balance|turn ~1 on the spot
    """
)
"""What a part does while the other part goes on."""

SPACE = Saying(
    """
    high|low|middle|level|pathway|curve|curved|zigzag|straight|spiral|big+|small+|wide|narrow|
        forward|forwards|backward|backwards|sideways|diagonal|diagonally|down|near|far|circle|
        line|face|wall|direction|towards|spot
    up !to
    across|through|around ~2 pool|hall|space|room|floor|stage
    """
)
DYNAMICS = Saying(
    """
    strong+|light+|slow+|quick+|sudden+|smooth+|soft+|sharp+|gentle+|fast+|heavy+|jerky|speed|
        energy|
        sustained|floppy|stiff+|bouncy|calm+|fierce+|nervous+|delicate|tense|loose+|crisp+|
        weight|weightless|power|powerful|force|forceful|burst|explode|melt|tug
    """
)
WITH_WHOM = Saying(
    """
    partner|pair|=threes|=fours|group|mirror|follow|lead|leader|canon|match|circle|row|facing|
        neighbour|each-other|somebody|someone|copy|greet|meet|together
    in turn
    eye ~1 on !floor|spot|wall
    another|other boat|dancer|pupil|child
    #2.. ~1 boat|dancer|pupil|child ~1 make|form
    """
)

_GROUP = "group pair four three five six row pupil dancer couple"
_AT_A_TIME = Saying("#1..4 !<touch|point|name|choose|pick @group at a time", {"group": _GROUP})
"""Not how many are told off at a time, as when a teacher touches two pairs that belong together."""
_IN_TURN = Saying(
    """
    @group by|after @group
    each|every @group show|dance|perform ?it alone
    each|every @group show|dance|perform ?it in turn
    each|every @group show|dance|perform ?it by itself
    each|every @group show|dance|perform ?it to|for the ?whole class
    one @group after another
    one @group after the other
    """,
    {"group": _GROUP},
)


def groups_at_a_time(text: str) -> int | None:
    """How many groups show at once where `text` says they show in turn; None where it does not."""
    said = _AT_A_TIME.said(text)
    if said:
        return read(said.read).words[said.words[0]].number
    return 1 if _IN_TURN.said(text) else None
