"""A development says what its device changes, and nothing else.

A size left beside a mirror is a rest of an earlier plan: it is danced by nobody, and whoever reads
the unit cannot tell which of the two is meant.

Bad:
    drift-mirrored: {of: drift, device: mirror, level: low}
Good:
    drift-mirrored: {of: drift, device: mirror}
    drift-low: {of: drift, device: change of level, level: low}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.devices import NEEDS as NEEDED
from build_tools.movement.devices import SET_ONE, WRITTEN
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
_ANY = "choice"
"""Whatever the device, pupils may decide how it changes the motif."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field of a development that its device does not use."""
    for name, development in unit.dance.developments.items():
        device = development.device
        for field in dict.fromkeys(NEEDED.values()):
            if field in (NEEDED.get(device), _ANY) or not getattr(development, field):
                continue
            written = WRITTEN.get(field, field)
            yield Finding(
                unit.file,
                ("developments", name, written),
                f"`{name}` is made by {device}, which does not use `{written}`",
                f"take `{written}` out, or make a second development of it",
            )
        if development.only and device not in SET_ONE:
            yield Finding(
                unit.file,
                ("developments", name, "only"),
                f"`{name}` is made by {device}, which changes the whole motif and has no use for "
                "`only`",
                "take `only` out, or choose a device that changes some actions",
            )
