"""A dance that is counted to a sound says how fast the counts go.

Without a tempo nobody knows whether 32 counts are 12 seconds or 30: the teacher cannot tap the
beat, and the length of the dance cannot be told. Where the sound follows the dancers, or they
follow each other, there is no tempo to keep.

Bad:
    sections that are counted, and no tempo
Good:
    tempo: 108
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "common practice, no source"

_KEPT = "dancers follow the sound"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where counts go with a sound and the dance has no tempo."""
    dance = unit.dance
    if dance.tempo is not None:
        return
    counted = [
        f"section {letter} has {figures(section.counts)}"
        for letter, section in dance.sections.items()
        if section.counts is not None and section.sound.follows == _KEPT
    ]
    if dance.sound.follows == _KEPT:
        counted += [
            f"the transition from {t.start} to {t.end} has {figures(t.counts)}"
            for t in dance.transitions
            if t.counts is not None
        ]
    if counted:
        yield Finding(
            unit.file,
            ("dance",),
            f"{counted[0]} counts to keep with the sound, but `tempo` is not there to say how fast "
            "they go",
            "add `tempo: 108` under `dance`, with the beats a minute that you tap or hear",
        )
