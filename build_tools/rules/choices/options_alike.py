"""The options of a choice are different from one another.

Two options that are the same are a copy in which the change was forgotten, and pupils have less to
choose than it seems.

Bad:
    from: [bigger, bigger]
Good:
    from: [bigger, smaller]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.same_words import same_words
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each option that an earlier one of the choice says already."""
    for name, choice in unit.dance.choices.items():
        seen: dict[str, int] = {}
        for n, option in enumerate(choice.options):
            said = same_words(option)
            first = seen.setdefault(said, n)
            if first != n:
                yield Finding(
                    unit.file,
                    ("choices", name, "from", n),
                    f"option {n + 1} of `{name}` is option {first + 1} again: `{option}`",
                    "write something else to choose, or take it out",
                )
