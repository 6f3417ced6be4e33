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

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.rates import Rate, rates
from build_tools.views.written.unit_text import named, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"

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
        for said in rates(one.text):
            if _fits(tempo, said):
                continue
            yield Finding(
                unit.file,
                ("dance", "tempo"),
                f"`tempo` is {tempo}, but {named(file)} says `{said.said}`, which is {_said(said)}",
                "write the tempo that is meant, and say it so in the words",
            )
            return


def _fits(tempo: int, said: Rate) -> bool:
    apart = (tempo - said.in_a_minute) / said.in_a_minute
    if not said.side:
        return abs(apart) <= _WITHIN
    return 0 < apart * said.side <= _BESIDE


def _said(said: Rate) -> str:
    which = {-1: "under ", 0: "", 1: "over "}[said.side]
    return f"{which}{figures(said.in_a_minute)} a minute"
