"""Only a recording has a length, and only a recording is played round and round.

A drum, a voice or a silence lasts as long as it is wanted. A length beside it is left over from a
recording, and whoever reads it looks for a file.

Bad:
    sound: {kind: drum, what: A steady beat, follows: …, lasts: 120}
Good:
    sound: {kind: drum, what: A steady beat, follows: …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.sounds import sounds

GRADE: Grade = "note"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each live sound or silence with a length or a loop."""
    for path, sound, what in sounds(unit.dance):
        if sound.kind == "recorded":
            continue
        field = "lasts" if sound.lasts is not None else "looped" if sound.looped else None
        if field:
            yield Finding(
                unit.file,
                (*path, field),
                f"the sound of {what} is `{sound.kind}`, but it has `{field}`, as a recording has",
                f"take `{field}` out, or write `kind: recorded`",
            )
