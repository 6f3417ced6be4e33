"""Each motif and each development has a name of its own.

A lesson says `dances: [gust]` and a teacher turns to the gust. If a motif and a development share
the name, nobody can tell which is meant. `whole` is kept for the whole dance.

Bad:
    motifs: {gust: …}
    developments: {gust: {of: gust, device: mirror}}
Good:
    motifs: {gust: …}
    developments: {gust-mirrored: {of: gust, device: mirror}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each development named like a motif, and for the name `whole`."""
    for name in unit.dance.developments:
        if name in unit.dance.motifs:
            yield Finding(
                unit.file,
                ("developments", name),
                f"`{name}` is the name of a motif and of a development",
                f"rename the development, such as `{name}-changed`",
            )
    for field, names in (
        ("motifs", unit.dance.motifs),
        ("developments", unit.dance.developments),
    ):
        if "whole" in names:
            yield Finding(
                unit.file,
                (field, "whole"),
                "`whole` is a name here, but in lessons it stands for the whole dance",
                "choose another name, such as `whole-wave`",
            )
