"""The tempo that the words give is the tempo of the dance.

Teachers who do not read numbers of beats tap by the words: "two taps a second" is 120. If the
tempo was changed and the words were not, they tap the dance too slow or too fast.

Bad:
    tempo: 100
    notes: Tap three beats a second.
Good:
    tempo: 100
    notes: Tap a little slower than two beats a second.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers import number_of
from build_tools.views.written.unit_text import named, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"

_RATE = re.compile(
    r"(?P<than>\b(?:slower|faster|quicker|under|over|less|more) than )?"
    r"\b(?P<number>\d|[a-z]+) (?:taps?|beats?|claps?|counts?|steps?) "
    r"(?:a|each|every|per|in a) second",
    re.IGNORECASE,
)
_SLOWER = ("slower", "under", "less")
_WITHIN = 0.15
_BESIDE = 0.35
"""How far from a round number "a little slower" may be, as a share of it."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding, at the tempo, if a text gives another one."""
    tempo = unit.dance.tempo
    if tempo is None:
        return
    text = unit_text(unit)
    for file, one in text.at(text.containing("second")):
        for said in _RATE.finditer(one.text):
            number = number_of(said.group("number").lower())
            if number is None or _fits(tempo, number * 60, said.group("than")):
                continue
            yield Finding(
                unit.file,
                ("dance", "tempo"),
                f"`tempo` is {tempo}, but {named(file)} says "
                f"`{' '.join(said.group().split())}`, which is "
                f"{_said(number * 60, said.group('than'))}",
                "write the tempo that is meant, and say it so in the words",
            )
            return


def _fits(tempo: int, rate: int, than: str | None) -> bool:
    apart = (tempo - rate) / rate
    if than is None:
        return abs(apart) <= _WITHIN
    if than.split()[0].lower() in _SLOWER:
        return -_BESIDE <= apart < 0
    return 0 < apart <= _BESIDE


def _said(rate: int, than: str | None) -> str:
    if than is None:
        return f"{rate} a minute"
    return f"{'under' if than.split()[0].lower() in _SLOWER else 'over'} {rate} a minute"
