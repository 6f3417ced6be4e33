"""Which sound a text speaks of, and what it says of it: it stops, it changes, it goes on."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.sentences.sayings import Said, Saying

FAMILIES: dict[str, frozenset[str]] = {
    "drum": frozenset({"beat", "soft beat", "roll"}),
    "tap": frozenset({"beat", "soft beat", "roll"}),
    "beat": frozenset({"beat", "soft beat", "claps", "roll", "recording"}),
    "roll": frozenset({"roll"}),
    "shaker": frozenset({"shaker"}),
    "clap": frozenset({"claps"}),
    "voice": frozenset({"voice"}),
    "whisper": frozenset({"voice"}),
    "hum": frozenset({"voice"}),
    "music": frozenset({"recording"}),
    "bell": frozenset({"beat", "soft beat", "roll", "recording"}),
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
    "hum": "n:hum humming singing chanting =chants",
    "music": "music recording track song",
    "bell": "n:bell =bells chime",
}
_ENDS = "stop|end|fade|cease|die|pause|finish"
_ENDING = {
    sound: Saying(
        f"""
        @own ~1 {_ENDS}
        @own ~2 change|changes|quieten|soften|slow ~2 from|to|into
        @own fall|falls|go|goes|become|becomes ~1 silent|quiet|softer
        last @own
        no more ~1 @own
        @own ~1 turn|turns|grow|grows|change|melt|melts|swell|swells ~2 into|to
        @own ~1 get|gets|grow|grows|become ~1 soft+|quiet+|slow+|quick+|fast+|loud+
        @own ~1 come|comes ~2 to ~1 end|stop|halt|close
        @own ~1 is|are|has|have ~1 over|gone|finished|done|stopped|ended
        """,
        {"own": words},
    )
    for sound, words in _WORDS.items()
}
THROUGHOUT = Saying(
    """
    throughout !<nearly|almost|mostly
    all ~1 way|time ~1 through !<nearly|almost
    all|whole|entire|every ~2 dance|section|part|minute
    right|straight|all through ~1 dance
    from ~1 first|start|beginning ~3 last|end|finish
    unbroken
    non stop
    keep|keeps|carry|carries ~1 on|going ~3 end|finish|under
    """
)
_NEVER = Saying("stop|pause|cease|break\nfall|falls ~1 silent\nlet|lets up")
"""What is denied of such a sound."""
_NOT_ALL_OF_IT = Saying("except\napart from\nsave for")


def throughout(text: str) -> Said | None:
    """Where a text says of a sound that it is there from the start of the dance to its end."""
    if _NOT_ALL_OF_IT.mentioned(text):
        return None
    return THROUGHOUT.said(text) or _NEVER.denied(text)


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
