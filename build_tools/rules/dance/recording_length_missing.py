"""A recording that is played once says how long it lasts.

Only then can the teacher, and this bank, see whether the dance fits into it.

Bad:
    sound: {kind: recorded, what: …, follows: …}
Good:
    sound: {kind: recorded, what: …, follows: …, lasts: 130}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Sound
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "note"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each recording with no length that is not played round and round."""
    dance = unit.dance
    sounds: list[tuple[FieldPath, Sound, str]] = [(("dance", "sound"), dance.sound, "the dance")]
    sounds += [
        (("sections", letter, "sound"), section.sound, f"section {letter}")
        for letter, section in dance.sections.items()
        if section.sound is not dance.sound
    ]
    for path, sound, what in sounds:
        if sound.kind == "recorded" and sound.lasts is None and not sound.looped:
            yield Finding(
                unit.file,
                path,
                f"the recording for {what} has no `lasts`, so nobody can see whether {what} fits "
                "into it",
                "add `lasts: 130` with its own seconds, or `looped: true`",
            )
