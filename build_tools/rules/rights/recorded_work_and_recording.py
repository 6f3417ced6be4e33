"""A recording is named with who made the music and who made the recording.

They are two works with two owners. A tune may be free to all while the recording of it is not, and
a school can only ask when it knows both.

Bad:
    sound: {kind: recorded, what: "Morning, recorded", …}
Good:
    sound: {kind: recorded, what: "Morning, composed for this unit; recorded by its author", …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Sound
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.recordings import (
    LEFT_TO_TEACHER,
    made_by_somebody,
    recorded_by_somebody,
)

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Copyright, Designs and Patents Act 1988, section 1(1): musical works and sound recordings are "
    "protected each on its own"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each recorded sound that leaves out one of the two."""
    yield from _sound(unit, ("dance", "sound", "what"), unit.dance.sound)
    for letter, section in unit.dance.sections.items():
        if section.sound is not unit.dance.sound:
            yield from _sound(unit, ("sections", letter, "sound", "what"), section.sound)


def _sound(unit: Unit, path: FieldPath, sound: Sound) -> Iterator[Finding]:
    if sound.kind != "recorded":
        return
    if LEFT_TO_TEACHER.said(sound.what):
        return
    made, recorded = made_by_somebody(sound.what), recorded_by_somebody(sound.what)
    if made and recorded:
        return
    missing = [
        *([] if made else ["who made the music"]),
        *([] if recorded else ["who made the recording"]),
    ]
    yield Finding(
        unit.file,
        path,
        f"the sound is recorded, but `what` does not say {' or '.join(missing)}",
        "write both, such as: composed by …, recorded by …; or: any slow music you may use",
    )
