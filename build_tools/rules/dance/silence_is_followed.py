"""Nobody is told to follow a silence.

Where there is no sound, dancers follow each other, or a leader gives the signs. "Dancers follow the
sound" beside a silence leaves thirty pupils listening for something that never comes.

Bad:
    sound: {kind: silence, what: Only breathing, follows: dancers follow the sound}
Good:
    sound: {kind: silence, what: Only breathing, follows: dancers follow each other}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.sounds import sounds

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each silence that dancers follow, or that follows them."""
    for path, sound, what in sounds(unit.dance):
        if sound.kind != "silence" or sound.follows == "dancers follow each other":
            continue
        yield Finding(
            unit.file,
            (*path, "follows"),
            f"the sound of {what} is silence, but `follows` says {sound.follows}",
            "write `follows: dancers follow each other`, or say which sound there is",
        )
