"""Two words for one idea of the trade: unison and synchronised."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

SAME_IDEA = (
    (
        "unison",
        Saying(
            """
            synchronise|synchronize|synchronous|synchronously|synchrony|synchronisation|
                synchronization|tutti|simultaneous|simultaneously|simultaneity !<out|film
            sync|synch !<out|film !with
            synced|syncing|synched
            as|like one body|person|mind|dancer
            """
        ),
    ),
    ("question and answer", Saying("call and response")),
    ("pathway", Saying("floor pattern|track")),
    ("motif", Saying("movement phrase|sentence|motto\ndance sentence\nsignature move")),
    ("transition", Saying("linking phrase|move|movement|step")),
    ("canon", Saying("domino effect\nround-robin\nmexican wave")),
    ("retrograde", Saying("palindrome move\nrewind technique")),
)
"""A word of the bank and what else is said for it: a unit keeps to one."""

_IS_THE_SAME = Saying(
    """
    that ~1 is
    call|say|mean|means ~~10 our|we|same|it
    our word|name
    same ~1 thing|idea|word|as
    another|long|other|only|just ~2 word|name|way for|of
    word|name ~2 for
    or ~1 just
    which|that is|mean|means
    also ~1 call|known
    in ~1 other words
    =unison or
    or =unison
    """
)


def put_side_by_side(text: str, word: str) -> bool:
    """Whether a text that has the other word says that it is the same as `word`."""
    return word in text.lower() and _IS_THE_SAME.mentioned(text) is not None
