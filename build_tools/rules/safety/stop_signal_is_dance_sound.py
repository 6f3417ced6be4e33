"""The stop signal is a sound that the dance does not use.

Where the dance itself is danced to taps, a tap that means stop is one more tap. Pupils either stop
in the middle of the dance or run on through the signal; and a drum roll begins with two taps. A
raised hand, a word or another sound can be told apart.

Bad:
    sound: {what: Drum taps, …}
    say: Two quick taps mean freeze.
Good:
    sound: {what: Drum taps, …}
    say: My raised hand means stop.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from build_tools.model.dance import Dance, Heard
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.stopping import may_be_signal, signal_of, sounds_in
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"say", "task", "you", "safety"})
_STROKES = frozenset({"drum", "beat", "tap"})
_SOUNDS = {
    "beat": _STROKES,
    "soft beat": _STROKES,
    "roll": _STROKES | {"roll"},
    "shaker": frozenset({"shaker"}),
    "bell": frozenset({"bell"}),
    "claps": frozenset({"clap"}),
    "recording": frozenset({"music"}),
}
"""What each sound that is heard is as a signal: a roll begins with a tap."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first line of each lesson that stops by a sound of the dance."""
    in_words = (sounds_in(what) for what in _told(unit.dance))
    heard = (_SOUNDS.get(one.sound, ()) for one in _heard(unit.dance))
    sounds = frozenset().union(*in_words, *heard)
    if not sounds:
        return
    for file, fields in unit_text(unit).documents[1:]:
        asked = (one for one in fields if one.kind in _KINDS and may_be_signal(sounds, one.text))
        told = ((one, said) for one in asked if (said := signal_of(sounds, one.text)))
        for one, said in islice(told, 1):
            yield Finding(
                file,
                one.path,
                f'`{one.kind}` stops the class by "{said.text}", and the dance is danced to it',
                "choose a signal that can be told apart, such as a raised hand, a word or a bell",
            )


def _heard(dance: Dance) -> Iterator[Heard]:
    """Every piece that the unit says is heard, in sections and in joins."""
    for section in dance.sections.values():
        yield from section.heard
    for join in dance.transitions:
        yield from join.heard


def _told(dance: Dance) -> Iterator[str]:
    """What the dance is danced to in words: its own sound, and those of sections."""
    yield dance.sound.what
    for section in dance.sections.values():
        if section.sound is not dance.sound:
            yield section.sound.what
