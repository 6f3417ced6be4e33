"""A recording does not follow the dancers.

A drummer can wait for the last dancer to be still. A recording goes on: either the dancers follow
it, or they dance to each other and it is only there.

Bad:
    sound: {kind: recorded, what: …, follows: the sound follows the dancers}
Good:
    sound: {kind: drum, what: …, follows: the sound follows the dancers}
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
    """Yield a finding for each recording that is said to follow the dancers."""
    for path, sound, what in sounds(unit.dance):
        if sound.kind == "recorded" and sound.follows == "the sound follows the dancers":
            yield Finding(
                unit.file,
                (*path, "follows"),
                f"the sound of {what} is recorded, but `follows` says {sound.follows}",
                "write `follows: dancers follow the sound`, or let somebody play",
            )
