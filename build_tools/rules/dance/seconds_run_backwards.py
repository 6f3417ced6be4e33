"""A length that may vary is written from the least to the most.

At least 40 and at most 20 seconds can be kept by nobody, and the dance's length is summed from it.

Bad:
    seconds: 40 to 20
Good:
    seconds: 20 to 40
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section whose least seconds are more than its most."""
    for letter, section in unit.dance.sections.items():
        if section.seconds and section.seconds.least > section.seconds.most:
            least, most = figures(section.seconds.least), figures(section.seconds.most)
            yield Finding(
                unit.file,
                ("sections", letter, section.kind, "seconds"),
                f"section {letter} lasts from {least} to {most} seconds, which runs backwards",
                f"write `seconds: {most} to {least}`",
            )
