"""Pupils dance again what they made before, in whatever words; and what a next step promises."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.sentences.own_names import danced_by_name, listed_moves
from build_tools.sentences.sayings import Said, Saying, saying_of

_LISTS = {
    "dance": (
        "dance show run go do perform walk repeat start begin recall rehearse practise practice "
        "bring teach finish end open revisit revise recap try play mark let join keep use take "
        "continue swap polish retrace relive copy pick return get"
    ),
    "made": "motif motifs move moves dance part section phrase what where everything all sequence",
    "past": (
        "made make left last learnt learned week's ended finished stopped danced before earlier "
        "already had know kept settled yesterday monday tuesday wednesday thursday friday"
    ),
}

DANCES_AGAIN = Saying(
    """
    v:@dance ~~8 @made ~6 @past
    v:@dance ~~6 last ~2 week|lesson|time|monday|friday ~4 @made
    v:@dance ~3 the|your|our|their ~1 motif|motifs
    the|your|our motif ~2 run|once|twice|again|through
    start|begin|pick|go|carry|continue ~4 where ~3 left|ended|stopped|finished
    v:@dance ~~6 so far
    v:@dance ~~3 again ~4 @made
    as ~3 last|before ~~8 @made ~2 run|again|twice|once
    """,
    _LISTS,
)
"""Pupils dance what they made last lesson."""


def dances_again(text: str | None, names: Sequence[str], moves: Sequence[tuple[str, ...]]) -> bool:
    """Whether a text has pupils dance again.

    `names` are those of what was made before, `moves` the words of the moves of each motif.
    """
    if not text:
        return False
    if DANCES_AGAIN.said(text) or any(danced_by_name(text, name) for name in names):
        return True
    return any(listed_moves(text, words) for words in moves)


_PROMISED = {
    "mirror": Saying("mirror|reflect|reflection"),
    "canon": Saying("canon\none after another\nin turn"),
    "backwards": Saying("backwards|reverse|retrograde|rewind"),
    "faster": Saying("fast+|quick+|hurry|rapid+\ndouble|top|full speed"),
    "a game": Saying("game"),
    "a film or picture": Saying("film|video|clip|picture|photo|slide|screen"),
    "joining": Saying("join|link|combine|connect ~6 with|to|and|onto"),
    "a poem": Saying("poem|rhyme|verse|story|book|letter|map"),
    "talk": Saying("talk|discuss|discussion|chat|conversation|question|listen"),
    "teaching one another": Saying("teach|coach|instruct"),
    "a showing": Saying(
        """
        show|perform|present ~~8 other|half|class|audience|watcher|pair|group|four
        group|pair|half|four|each ~2 show|perform|present
        """
    ),
    "something new": Saying(
        """
        new|second|another|different|next motif|part|section|dance|idea|move|game|stimulus|shape
        straight|right on to
        make|invent|create|find|learn ~2 new|another|different
        """
    ),
    "three times": Saying("#3..9 times"),
    "pairs": Saying("in|as|with pairs|partner|twos|partners\npartner"),
    "threes": Saying("in threes"),
    "fours": Saying("in fours"),
    "sitting": Saying("v:sit|seated"),
    "low": Saying("low+|level|floor"),
    "high": Saying("high+|level|tall"),
    "bigger": Saying("big+|large+|size"),
    "smaller": Saying("small+|tiny|size"),
    "the other side": Saying("other|left|right side|hand|foot"),
    "unison": Saying("unison"),
    "no music": Saying("silence\nwithout ~1 music|drum|sound"),
    "eyes shut": Saying("eyes ~1 shut|closed"),
}
"""Ways in which a lesson may start, as a next step promises them."""
_WHOLE = Saying("all|whole|every|full|complete|through|entire|everything|moves|lot")
_ALONE = Saying("only|just|alone|single|by itself\non its|their own\nfirst")


def promised_otherwise(promise: str, opening: Sequence[str]) -> str | None:
    """What a next step promises and the opening of the next lesson has not: its words."""
    for saying in _PROMISED.values():
        said = saying.said(promise)
        if said and not any(saying.mentioned(text) for text in opening):
            return said.text
    return None


def one_move_alone(promise: str, names: Sequence[str], moves: tuple[str, ...]) -> str | None:
    """The one move of a motif that a next step starts from; None where it starts from more."""
    if _WHOLE.said(promise) or any(saying_of(name).mentioned(promise) for name in names):
        return None
    found = [move for move in moves if _is_named(promise, move)]
    return found[0] if len(found) == 1 < len(moves) else None


def _is_named(promise: str, move: str) -> Said | None:
    return saying_of(f"the|a|your {move}").said(promise)


def says_alone(texts: Sequence[str]) -> bool:
    """Whether a text starts from less than the whole."""
    return _ALONE.in_any(texts)
