"""Nobody is ranked, marked or made to lose.

The best pair learns nothing from being called the best, and the others learn not to try. What was
seen, and what would make it clearer, helps whoever danced.

Bad:
    question: Who are the best dancers in the pair you saw?
Good:
    question: What could make the change easier to see?
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.ranking import RANKED

GRADE: Grade = "question"
READS = "en"
SOURCE = "Lerman and Borstel, 2003: what was seen and what it meant comes first, opinions come last"
_KINDS = frozenset(
    {
        "question",
        "say",
        "task",
        "you",
        "into",
        "notes",
        "looking_for",
        "look_for",
        "finished",
        "classroom_first",
        "harder",
        "easier",
    }
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that ranks dancers."""
    yield from said_in_fields(
        unit,
        RANKED,
        _KINDS,
        "ranks dancers against one another",
        "ask what was seen, and what would make it clearer",
    )
