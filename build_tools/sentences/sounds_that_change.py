"""A cue that says a sound stops, or starts."""

from __future__ import annotations

from functools import lru_cache

from build_tools.sentences.sayings import Saying

_SOUNDS = {
    "drum": "drum|drums|drumming|drumbeat|beat|beats|tap|taps|tapping|tambour|tambourine",
    "roll": "roll|rolls|drumroll",
    "shaker": "shaker|shakers|maraca|rattle|rattling",
    "bell": "bell|bells",
    "claps": "clap|claps|clapping",
    "music": "music|recording|track|song",
    "voice": "voice|voices|whisper|whispers|whispering|singing|chant|chanting|humming",
}
"""Each sound by the words that cues use for it."""
_STOPS = """
    @own ~1 =stop|=stops|=stopped|=end|=ends|=ended|=fades|=ceases|=finishes|=dies
    @own ~1 goes|falls|is|are|go|fall silent|quiet
    end|stop of|to ~1 @own
    no more ~1 @own
    @own ~1 is|are|has|have|been over|gone|finished|done|stopped|ended|ceased
    @own ~3 =die|=dies|=died|=fade|=faded away|out|down
    @own ~1 =give|=gives way
    @own ~1 =come|=comes ~1 to ~1 end|stop|halt|close
    take|takes over from ~1 @own
    @own over $
    @own ~~0 , over $
"""
_STARTS = """
    @own ~1 =start|=starts|=begin|=begins|=returns|=return|=resumes
    @own ~1 comes|come|is|are|goes|go back|on|again
    @own ~1 =take|=takes ~1 over|up
"""
_HEARD = """
    hear ~4 @own !<last|final|more|end
    @own ~2 =heard !<last|final|more|end
    @own ~1 ring|rings|burst|bursts|break|breaks ?out !from
    @own ~3 =tell|=tells|=send|=sends|=call|=calls you|us|them|everyone|everybody
"""
"""It sounds, and so is not to come only: three claps ring out."""
_VOICED = Saying(
    """
    class|everyone|everybody|somebody|someone|pupil|pupils|they|all|dancers
        ~2 begin|start|hear ~2 sing|hum|whisper|speak|chant
    hear ~3 class|everyone|everybody|pupils|dancers ~2 sing|hum|whisper|speak|chant
    """
)


def sounds_that_stop(cue: str) -> tuple[str, ...]:
    """The sounds that a cue says stop: drum, roll, shaker, bell, claps, music or voice."""
    return tuple(sound for sound in _SOUNDS if _saying(_STOPS, sound).said(cue))


def sounds_that_start(cue: str) -> tuple[str, ...]:
    """The sounds that a cue says start, or come back."""
    started = tuple(sound for sound in _SOUNDS if _saying(_STARTS, sound).said(cue))
    return (*started, "voice") if "voice" not in started and _VOICED.said(cue) else started


def sounds_that_are_heard(cue: str) -> tuple[str, ...]:
    """The sounds that a cue says are heard. A teacher's voice is no sound of the dance."""
    others = (sound for sound in _SOUNDS if sound != "voice")
    return tuple(sound for sound in others if _saying(_HEARD, sound).said(cue))


@lru_cache(maxsize=32)
def _saying(phrases: str, sound: str) -> Saying:
    own = " ".join(f"={word}" for word in _SOUNDS[sound].split("|"))
    return Saying(phrases, {"own": own})
