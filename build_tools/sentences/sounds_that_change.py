"""A cue that says a sound stops, or starts."""

from __future__ import annotations

from functools import lru_cache

from build_tools.sentences.sayings import Saying

_SOUNDS = {
    "drum": "drum|drums|drumming|drumbeat|beat|beats|tap|taps|tapping|tambour|tambourine",
    "roll": "roll|rolls|drumroll",
    "shaker": "shaker|shakers|maraca|rattle",
    "claps": "clap|claps|clapping",
    "music": "music|recording|track|song",
    "voice": "voice|voices|whisper|whispers|whispering|singing|chant",
}
"""Each sound by the words that cues use for it."""
_STOPS = """
    @own ~1 =stop|=stops|=stopped|=end|=ends|=ended|=fades|=ceases|=finishes|=dies
    @own ~1 goes|falls|is|are|go|fall silent|quiet
    end|stop of|to ~1 @own
"""
_STARTS = """
    @own ~1 =start|=starts|=begin|=begins|=returns|=return|=resumes
    @own ~1 comes|come|is|are|goes|go back|on|again
"""


def sounds_that_stop(cue: str) -> tuple[str, ...]:
    """The sounds that a cue says stop: drum, roll, shaker, claps, music or voice."""
    return tuple(sound for sound in _SOUNDS if _saying(_STOPS, sound).said(cue))


def sounds_that_start(cue: str) -> tuple[str, ...]:
    """The sounds that a cue says start, or come back."""
    return tuple(sound for sound in _SOUNDS if _saying(_STARTS, sound).said(cue))


@lru_cache(maxsize=16)
def _saying(phrases: str, sound: str) -> Saying:
    own = " ".join(f"={word}" for word in _SOUNDS[sound].split("|"))
    return Saying(phrases, {"own": own})
