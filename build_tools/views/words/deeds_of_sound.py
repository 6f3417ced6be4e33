"""What people do who make a sound: tap, clap, knock, say the words; and how."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from build_tools.page_words.words import N_, _
from build_tools.sentences.numbers import number_of


class _Does(NamedTuple):
    """What one person does who makes a sound, told to them; then what others do, and how."""

    you: str
    the_class: str
    a_player: str
    dancers: str
    how: str = ""


_TAP = _Does(N_("tap"), N_("the class taps"), N_("a player taps"), N_("dancers tap"))
_PAT = N_("pat")
"""What the teacher does whose beats the unit pats, on a book or a leg."""
_PATS = re.compile(r"\bpat(?:s|ted|ting)?\b", re.IGNORECASE)
_DOES = {
    "beat": _TAP,
    "soft beat": _TAP._replace(how=N_("softly")),
    "roll": _Does(
        N_("roll the drum"),
        N_("the class rolls the drum"),
        N_("a player rolls the drum"),
        N_("dancers roll the drum"),
    ),
    "shaker": _Does(
        N_("shake {shaker}"),
        N_("the class sounds {shaker}"),
        N_("a player sounds {shaker}"),
        N_("dancers shake {shaker}"),
    ),
    "bell": _Does(
        N_("ring the bell"),
        N_("the class rings the bell"),
        N_("a player rings the bell"),
        N_("dancers ring the bell"),
    ),
    "claps": _Does(N_("clap"), N_("the class claps"), N_("a player claps"), N_("dancers clap")),
    "voice": _Does(
        N_("make your sound"),
        N_("the class makes its sound"),
        N_("a player makes its sound"),
        N_("dancers make their sounds"),
    ),
    "recording": _Does(
        N_("play the music"),
        N_("the class plays the music"),
        N_("a player plays the music"),
        N_("dancers play the music"),
    ),
}
_SAYS = _Does(
    N_("say the words"),
    N_("the class says the words"),
    N_("a player says the words"),
    N_("dancers say the words"),
)
_WHISPERS = _Does(
    N_("whisper the words"),
    N_("the class whispers the words"),
    N_("a player whispers the words"),
    N_("dancers whisper the words"),
)
_WHISPERED = re.compile(r"\bwhisper(?:s|ed|ing)?\b", re.IGNORECASE)
_SAYS_THESE = _Does(
    N_("say {words}"),
    N_("the class says {words}"),
    N_("a player says {words}"),
    N_("dancers say {words}"),
)
_COUNTS = _Does(
    N_("count aloud"),
    N_("the class counts aloud"),
    N_("a player counts aloud"),
    N_("dancers count aloud"),
)
_COUNTS_THESE = _Does(
    N_("count {words}"),
    N_("the class counts {words}"),
    N_("a player counts {words}"),
    N_("dancers count {words}"),
)
_BODY = frozenset({"claps", "beat", "soft beat"})
"""Sounds that dancers make on themselves, each in a way of its own: they knock, rap or stamp."""
_TAPPED = frozenset({"beat", "soft beat"})
_SOUNDED = {"clap": N_("dancers clap"), "sound": N_("dancers sound")}
_WITH_A_WORD = N_("dancers {word}")
_CLAPS = re.compile(r"\bclap", re.IGNORECASE)


_WATCHERS = "watchers"
_THOSE_WHO_WATCH = {
    "beat": N_("those who watch tap"),
    "soft beat": N_("those who watch tap"),
    "roll": N_("those who watch roll the drum"),
    "shaker": N_("those who watch sound {shaker}"),
    "bell": N_("those who watch ring the bell"),
    "claps": N_("those who watch clap"),
    "voice": N_("those who watch make their sound"),
    "recording": N_("those who watch play the music"),
}


def by_watchers(by: str | None) -> str | None:
    """Who of the class sounds what follows the dancers: only who does not dance can see them."""
    return _WATCHERS if by == "class" else by


class OwnWords(NamedTuple):
    """What the author says of a sound, and the words of the moves that are danced to it.

    `whole` are words of what else is said of the same, in which its syllables stand together.
    """

    what: str = ""
    moves: frozenset[str] = frozenset()
    whole: tuple[str, ...] = ()


NO_WORDS = OwnWords()


class Deed(NamedTuple):
    """What somebody does who makes a sound, and how: the class taps, softly."""

    does: str
    how: str = ""
    taps: bool = False
    """Whether it is tapping, of which as many counts are told as taps: tap four."""


def deed(sound: str, by: str | None, words: Sequence[str], own: OwnWords, shaker: str = "") -> Deed:
    """What `by` does; `words` are those said on its strokes, or else over all of it.

    Where dancers sound on themselves, the word is the author's: "knock" where a move that sounds
    is called so, "clap" where they are said to clap, else "sound". `shaker` is what is shaken.
    """
    does = _DOES[sound]
    if by == _WATCHERS:
        said = _(_THOSE_WHO_WATCH[sound], shaker=shaker or _("the shaker"))
        return Deed(said, _(does.how) if does.how else "", sound in _TAPPED)
    if sound == "voice" and words:
        says = _WHISPERS if _WHISPERED.search(own.what) else _SAYS
        does = _COUNTS if are_counts(words) else says
    how = _(does.how) if does.how else ""
    if by == "dancers" and sound in _BODY:
        called = _on_themselves(words, own)
        return Deed(
            _(_SOUNDED.get(called, _WITH_A_WORD), word=called),
            how,
            called.endswith(("tap", "taps")),
        )
    if by in (None, "teacher") and sound in _TAPPED and _PATS.search(own.what):
        return Deed(_(_PAT), how, taps=True)
    said = _(_by(does, by), shaker=shaker or _("the shaker"))
    return Deed(said, how, sound in _TAPPED and by != "dancers")


def saying(by: str | None, words: Sequence[str], said: str) -> str:
    """What `by` says or counts aloud, the words themselves told as `said`, in quotation marks."""
    return _(_by(_COUNTS_THESE if are_counts(words) else _SAYS_THESE, by), words=said)


def _by(does: _Does, by: str | None) -> str:
    others = {"class": does.the_class, "player": does.a_player, "dancers": does.dancers}
    return others.get(by or "", does.you)


def are_counts(words: Sequence[str]) -> bool:
    """Whether what is said is numbers alone."""
    return all(number_of(word.casefold()) is not None for word in words)


def _on_themselves(words: Sequence[str], own: OwnWords) -> str:
    if _CLAPS.search(own.what):
        return "clap"
    called = {word.casefold() for word in words}
    return called.pop() if len(called) == 1 and called <= own.moves else "sound"
