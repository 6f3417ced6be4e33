"""Where pupils keep in time with a sound, its tempo is one their age can keep.

Young children tap in time only near two beats a second; the slower the beat, the harder it is for
them. Up to age 6 a counted dance keeps between 100 and 160 beats a minute, later between 60
and 180. Where the sound follows the dancers, any tempo will do.

Bad:
    years: [{nation: England, years: [R]}]
    tempo: 72
Good:
    years: [{nation: England, years: [R]}]
    tempo: 120
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.tempo_for_age import tempo_for_age

GRADE: Grade = "question"
SOURCE = (
    "Drake, Jones and Baruch 2000, Cognition 77: the range of tempo a child can keep widens with "
    "age, mainly towards slower beats; the figures are common practice"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the tempo is outside what the youngest pupils keep."""
    dance, can = unit.dance, tempo_for_age(unit)
    if dance.tempo is None or can is None or can.slowest <= dance.tempo <= can.fastest:
        return
    kept = [
        letter
        for letter, section in dance.sections.items()
        if section.counts is not None and section.sound.follows == "dancers follow the sound"
    ]
    if not kept:
        return
    slow = dance.tempo < can.slowest
    yield Finding(
        unit.file,
        ("dance", "tempo"),
        f"section {kept[0]} is danced in time at {dance.tempo} beats a minute, which is hard at "
        f"age {can.age}: {can.slowest} to {can.fastest} can be kept",
        f"write `tempo: {can.slowest if slow else can.fastest}` or "
        + ("more" if slow else "less")
        + (", and give slow moves more counts" if slow else ", or count every other beat"),
    )
