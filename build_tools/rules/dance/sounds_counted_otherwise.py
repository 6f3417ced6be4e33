"""As many rolls, rings or shakes as a part's sound is said to have are heard in it.

Four rolls in words, and three in the score: who plays by the score leaves the class half way over,
waiting for the wave that brings it home.

Bad:
    D: {sound: {what: "Two rolls, then silence", …}, heard: [{seconds: 8, sound: roll}], …}
Good:
    D: {sound: {what: "One roll, then silence", …}, heard: [{seconds: 8, sound: roll}], …}
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers import number_of
from build_tools.sentences.word_lists import word_row

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_SOUNDS = {"roll": "roll", "shake": "shaker", "ring": "bell", "silence": "silence"}
_NUMBERS = word_row("one two three four five six seven eight nine ten")
_COUNTED = re.compile(
    rf"\b(?P<number>\d|{'|'.join(_NUMBERS)})(?: [a-z]+)? (?P<what>{'|'.join(_SOUNDS)})s?\b",
    re.IGNORECASE,
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section of which another number of sounds is said than written."""
    for letter, section in unit.dance.sections.items():
        if not section.heard or section.sound is unit.dance.sound:
            continue
        if section.returns and "sound" not in section.changes:
            continue
        for one in _COUNTED.finditer(section.sound.what):
            sound = _SOUNDS[one.group("what").lower()]
            said = number_of(one.group("number").lower())
            heard = sum(piece.sound == sound for piece in section.heard)
            if said is None or not heard or said == heard:
                continue
            yield Finding(
                unit.file,
                ("sections", letter, "sound", "what"),
                f"`what` says `{one.group(0)}`, but `heard` of section {letter} has {heard}",
                f"write {said} under `heard`, or say {heard}",
            )
            break
