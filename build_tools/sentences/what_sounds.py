"""Which sound a text speaks of, and what it says of it: it stops, it changes, it goes on."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.sentences.sayings import Saying

FAMILIES: dict[str, frozenset[str]] = {
    "drum": frozenset({"beat", "soft beat", "roll"}),
    "tap": frozenset({"beat", "soft beat", "roll"}),
    "beat": frozenset({"beat", "soft beat", "claps", "roll", "recording"}),
    "roll": frozenset({"roll"}),
    "shaker": frozenset({"shaker"}),
    "clap": frozenset({"claps"}),
    "voice": frozenset({"voice"}),
    "whisper": frozenset({"voice"}),
    "music": frozenset({"recording"}),
}
"""Sounds by the word for them, and what each is written as in `heard`."""
_WORDS = {
    "drum": "drum drums drumming drumbeat",
    "tap": "n:tap =taps tapping",
    "beat": "n:beat =beats",
    "roll": "n:roll =rolls",
    "shaker": "shaker maraca",
    "clap": "n:clap =claps clapping",
    "voice": "voice voices",
    "whisper": "n:whisper whispering",
    "music": "music recording track song",
}
_ENDS = "stop|end|fade|cease|die|pause|finish"
_ENDING = {
    sound: Saying(
        f"""
        @own ~1 {_ENDS}
        @own ~2 change|changes|quieten|soften|slow ~2 from|to|into
        @own fall|falls|go|goes|become|becomes ~1 silent|quiet|softer
        last @own
        """,
        {"own": words},
    )
    for sound, words in _WORDS.items()
}
THROUGHOUT = Saying(
    """
    throughout
    all ~1 way|time ~1 through
    all|whole|entire|every ~1 dance|section|part|minute
    from ~1 first|start|beginning ~3 last|end
    never ~1 stop|stops|pause|pauses|falls|changes
    without ~2 break|pause|stopping
    """
)
"""Said of a sound that is there from the start of the dance to its end."""


@dataclass(frozen=True, slots=True)
class Ended:
    """A sound that a text says stops or changes: its word, and the text of it."""

    sound: str
    text: str


def ends_or_changes(text: str) -> Ended | None:
    """The first sound that a text says stops, fades or changes into another."""
    for sound, saying in _ENDING.items():
        said = saying.said(text)
        if said is not None:
            return Ended(sound, said.text)
    return None
