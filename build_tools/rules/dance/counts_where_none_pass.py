"""A cut, and a change straight on, take no counts.

Counts written beside them are left out of the dance's length: the teacher counts eight more than
the sum says, or leaves them out and the class is early.

Bad:
    {from: A, to: B, as: cut, counts: 8, …}
Good:
    {from: A, to: B, as: hold, counts: 8, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_NO_TIME = ("cut", "straight on")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each transition in which no time passes and that has counts."""
    for n, t in enumerate(unit.dance.transitions):
        if t.kind in _NO_TIME and t.counts is not None:
            yield Finding(
                unit.file,
                ("transitions", n, "counts"),
                f"the change from {t.start} to {t.end} is `{t.kind}`, in which no time passes, but "
                f"it has {counts_in_words(t.counts)}",
                "take `counts` out, or write `as: move` or `as: hold`",
            )
