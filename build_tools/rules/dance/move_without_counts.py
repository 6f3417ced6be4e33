"""A move, a hold or an overlap in a counted dance says how many counts it takes.

Without a number the teacher does not know when to start the next section, and the dance is summed
as if no time passed.

Bad:
    {from: A, to: B, as: move, how: Walk into your four, …}
Good:
    {from: A, to: B, as: move, counts: 8, how: Walk into your four, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)

_TIMED = ("move", "hold", "overlap")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each such transition without counts where sections are counted."""
    sections = unit.dance.sections
    if not any(section.counts is not None for section in sections.values()):
        return
    for n, t in enumerate(unit.dance.transitions):
        if t.kind in _TIMED and t.counts is None:
            yield Finding(
                unit.file,
                ("transitions", n),
                f"the change from {t.start} to {t.end} is `{t.kind}`, but it has no `counts`",
                "add its counts, such as `counts: 8`, or write `as: straight on`",
            )
