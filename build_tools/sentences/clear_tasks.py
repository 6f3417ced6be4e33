"""What tells pupils when something they make is finished, and how they will find it again."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "unit": (
        "count beat eight bar phrase second breath tap =moves =movements =shapes =actions =steps "
        "=gestures =statues =pictures =poses =jumps =turns =pauses =travels =sounds =words =lines "
        "drumbeat =claps =parts =sections =ideas =balances"
    ),
    "moves": (
        "move movement order word name shape it them step count sequence pattern action phrase"
    ),
    "keep": (
        "memorise memorize recall memory rehearse practise practice repeat rerun relearn recite"
    ),
}

LENGTH = Saying(
    """
    # ~2 @unit
    #1..2 minute long|worth
    @unit ~1 of ~1 #
    half ~1 minute
    #4..64 $
    =first|last ~1 # @unit
    length ~3 song|verse|music|poem|track|chorus|rhyme|# !any
    once|twice through|round|over
    a|one|each|every|whole @unit long|each|apart
    until|till|as ~3 verse|music|song|poem|bell|drum|track ~3 end|stop|last|finish
    @unit|counts ~1 each|apart|long
    for|in|over|on|of|to ?a ?full #4..64
    in|within|over|for|fill one|a|whole|each phrase|verse|bar|eight
    =eights
    """,
    _LISTS,
)
"""How long something is, or how much of it."""

KEPT = Saying(
    """
    @keep
    remember !to|that|how|who|not
    say|call|chant|sing|whisper|speak|tell|name|number ~5 @moves|aloud
    give ~4 name|word|number|title
    write|draw|sketch|note|jot|record|film|photograph|map|list|score|scribble|mark|pin|stick|print|
        trace ~6 @moves|card|paper|down|arrow|board|map|wall|score|notebook|it|web|drawing|idea
    draw|sketch|film|photograph|note
    card|cards|notebook|whiteboard|diagram|chart|list|strip
    dance|do|run|go|perform|play|show ~4 =twice|again|over|times !and
    dance|do|run|go ~6 #3..9 times
    keep|fix|set|settle|learn|save|store|hold ~1 it|them|this|same|that|these|those|what|your|on
    keep ~3 same
    same ~4 time|twice|again|each|every|way
    so ~4 can|could|will|know ~4 again|teach|remember|find|repeat|know|show
    know ~3 by heart|backwards
    by heart
    in|into|that|this|same order !you|they
    back to ~2 beginning|start|first
    until ~6 know|stick|sure|secure|same|sticks|memory|remember|ready|match
    know|find|need|show|dance|use|ready|want ~6 next|=monday|=tuesday|=wednesday|=thursday|=friday|
        tomorrow
    next week|lesson|time
    teach ~6 pair|four|group|partner|other|another|somebody|someone|class|rest
    number ~3 moves|shapes|parts|them
    agree ~6 order|same|on|which|what|count|exactly
    """,
    _LISTS,
)
"""How what is made will be remembered."""
