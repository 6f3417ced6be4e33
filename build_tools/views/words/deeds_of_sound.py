"""What people do who make a sound: tap, clap, knock, say the words; and how."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from build_tools.sentences.numbers import number_of

DO = {
    "beat": ("tap", "taps", ""),
    "soft beat": ("tap", "taps", "softly"),
    "roll": ("roll the drum", "rolls the drum", ""),
    "shaker": ("shake the shaker", "sounds the shaker", ""),
    "bell": ("ring the bell", "rings the bell", ""),
    "claps": ("clap", "claps", ""),
    "voice": ("make your sound", "makes its sound", ""),
    "recording": ("play the music", "plays the music", ""),
}
"""What one person does who makes a sound, what the class or a player does, and how."""
_WORDS = ("say the words", "says the words", "")
_COUNT = ("count aloud", "counts aloud", "")
_BODY = frozenset({"claps", "beat", "soft beat"})
"""Sounds that dancers make on themselves, each in a way of its own: they knock, rap or stamp."""
_CLAPS = re.compile(r"\bclap", re.IGNORECASE)
_BY = {"class": "the class", "player": "a player"}


class OwnWords(NamedTuple):
    """What the author says of a sound, and the words of the moves that are danced to it."""

    what: str = ""
    moves: frozenset[str] = frozenset()


NO_WORDS = OwnWords()


class Deed(NamedTuple):
    """What somebody does who makes a sound, and how: the class taps, softly."""

    does: str
    how: str


def deed(sound: str, by: str | None, words: Sequence[str], own: OwnWords) -> Deed:
    """What `by` does; `words` are those said on its strokes, or else over all of it.

    Where dancers sound on themselves, the word is the author's: "knock" where a move that sounds
    is called so, "clap" where they are said to clap, else "sound".
    """
    one, others, how = DO[sound]
    if sound == "voice" and words:
        one, others, how = _COUNT if all(_is_count(word) for word in words) else _WORDS
    if by in _BY:
        return Deed(f"{_BY[by]} {others}", how)
    if by != "dancers":
        return Deed(one, how)
    if sound == "voice" and not words:
        return Deed("dancers make their sounds", how)
    if sound in _BODY:
        return Deed(f"dancers {_on_themselves(words, own)}", how)
    return Deed(f"dancers {one}", how)


def _is_count(word: str) -> bool:
    return number_of(word.casefold()) is not None


def _on_themselves(words: Sequence[str], own: OwnWords) -> str:
    if _CLAPS.search(own.what):
        return "clap"
    called = {word.casefold() for word in words}
    return called.pop() if len(called) == 1 and called <= own.moves else "sound"
