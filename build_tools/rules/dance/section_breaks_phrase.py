"""A counted section is made of whole phrases, or ends at the half of one.

Drums and music go in phrases, and pupils feel where the next one starts. A section that ends in
the middle of one starts the next section on a count that nobody hears as one.

Bad:
    phrase: 8
    A: {counts: 30, …}
Good:
    phrase: 8
    A: {counts: 32, …}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = "common practice, no source"
NEEDS = ("counts-do-not-fill-section",)

_PHRASED = ("recorded", "drum")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section danced to drum or music that breaks off a phrase."""
    dance = unit.dance
    for letter, section in dance.sections.items():
        if section.counts is None or section.sound.kind not in _PHRASED:
            continue
        if section.sound.follows != "dancers follow the sound":
            continue
        left = section.counts % dance.phrase
        if left in (0, Fraction(dance.phrase, 2)):
            continue
        yield Finding(
            unit.file,
            ("sections", letter, "counts"),
            f"section {letter} has {figures(section.counts)} counts, which is "
            f"{section.counts // dance.phrase} phrases of {dance.phrase} and {figures(left)} over",
            f"add {figures(dance.phrase - left)} counts, take {figures(left)} off, or write the "
            "phrase that the sound has",
        )
