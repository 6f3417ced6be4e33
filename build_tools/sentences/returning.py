"""How a part of a dance is when it comes back: the same, or how different."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "time": (
        "time a part round section verse turn visit tide appearance meeting crossing journey "
        "dawn dusk flight storm version performance"
    ),
    "how": (
        "slow+ fast+ quick+ soft+ loud+ quiet+ small+ big+ large+ high+ low+ strong+ gentle+ "
        "light+ "
        "heavy+ calm+ wild+ tired weary short+ long+ same different+ differ unchanged changed "
        "change "
        "alike identical exactly reverse reversed opposite backwards half alone together fewer "
        "more "
        "less as-before unlike new louder sad+ happy+ tight+ loose+ wide+ narrow+ dark+ bright+ "
        "without fade end stop out every everyone mirrored mirror whisper silent silently still "
        "double dancers moves counts facing smooth+ sharp+ worn "
        "rough+ old empty full crowded gone final finish settle settles ragged broken whole "
        "peaceful"
    ),
    "back": "return repeat reprise recap recapitulation homecoming second-time encore echo",
}

SAYS_HOW_IT_RETURNS = Saying(
    """
    second|last|final|third|next|closing|other @time
    =second|=last|=final|third|closing =a
    =second|=last|=final ~2 be ~2 @how
    when|as|once|whenever ~4 come|go|get|return|be ~2 back|again|home|round|returns|returned|return
    when|as|once|whenever ~3 returns|return|returned|repeats|repeat
    its|the|their|this|on|each|every ~1 @back
    @back ~6 @how
    a ~1 again
    ^ again|later|afterwards ~12 @how
    later|afterwards|finally ~3 same|section|part|a|moves|dance|it
    end|close|finish|ending ~6 same|exactly|alike|just|danced|again|unlike|different|slow+|soft+|
        as
    same ~4 end|close|finish|last|later|again|back|return|time|before|start|beginning|first|both
    start|first|beginning|opening ~8 end|close|finish|last ~6 @how
    alike|identical|exactly|same|unchanged|differently|different ~8 start|first|beginning|before|
        opening|time|both|last|end|close|each
    nothing|no|little|everything|something|one|only ~2 change|changes|different|new ~4 when|back|
        return|again|time|second
    on|for ~2 way back|home
    to begin with ~~10 last|end|later|then
    before ~~12 after
    first time ~~14 second|last|then|later
    twice ~~10 first
    come|bring|get|go|head home
    come ~3 back ~~4 @how
    each|every @time
    both ~1 @time
    twice|again ~3 same|but|slow+|soft+|different|with|in
    dance ~3 again|twice ~~8 @how
    repeat ~6 close|end|same|exactly
    return ~~6 same|@how
    at the end|close|finish ~~8 @how
    as before|first
    chorus|refrain
    last|final time|tide|round
    """,
    _LISTS,
)
"""A text says how something is when it comes back."""

STEP_SAYS_HOW = Saying(
    """
    different|same|differently|unlike|unchanged
    now|this ?time @how
    first|last|second|final time|tide
    """,
    _LISTS,
)
"""What a step says of it that dances it again."""


def says_how_it_returns(text: str | None) -> bool:
    """Whether the text says so; that nothing changes says it too."""
    return SAYS_HOW_IT_RETURNS.mentioned(text) is not None
