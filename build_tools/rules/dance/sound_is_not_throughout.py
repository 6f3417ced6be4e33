"""A sound that is said to go on throughout is in every section.

"A steady beat throughout", and in the storm there are rolls and silences: whoever plays the drum
reads the first line and drums through the stillness. What each section has is compared.

Bad:
    sound: {kind: drum, what: A steady drum beat throughout, …}
    heard: [{counts: 8, sound: silence}]
Good:
    sound: {kind: drum, what: "A drum beat, and one silence", …}
    heard: [{counts: 8, sound: silence}]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Said
from build_tools.sentences.stopping import sounds_in
from build_tools.sentences.what_sounds import FAMILIES, throughout
from build_tools.views.dance.timeline import section_sounding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)

_BESIDE = re.compile(r"\b(?:under|over|with|beside|besides) (?:the|a|an|some) \w+", re.IGNORECASE)
"""Another sound, which is there as well."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where some section has not the sound that goes on throughout."""
    dance = unit.dance
    said = throughout(dance.sound.what)
    if said is None:
        return
    own = _own_sounds(dance.sound.what, said)
    family = frozenset().union(*(FAMILIES.get(one, ()) for one in own))
    without = {}
    for letter, section in dance.sections.items():
        pieces = section_sounding(dance, section).pieces
        other = [piece.sound for piece in pieces if piece.sound not in family]
        if family and other:
            without[letter] = other[0]
    if without:
        yield Finding(
            unit.file,
            ("dance", "sound", "what"),
            f'the sound of the dance is there "{said.text}", but '
            + listed([f"section {letter} has {sound}" for letter, sound in without.items()]),
            "say in `what` where it stops or changes, or let it go on there",
        )


def _own_sounds(text: str, said: Said) -> frozenset[str]:
    """The sounds that go on: those named before it is said, or in the whole line."""
    before = text.partition(said.text)[0]
    return sounds_in(_BESIDE.sub("", before)) or sounds_in(_BESIDE.sub("", text))
