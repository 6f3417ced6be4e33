"""Where pupils are filmed, or pictures of them shared, the school's policy decides.

A recording of a child is that child's personal data, and some may not be shown at all. Which
cameras may be used, and what may leave the room, the school and the families have settled before;
the step says so.

Bad:
    task: Film each pair on the tablet and watch it back.
Good:
    task: Film each pair only if your school's policy allows it, on a school device.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.rights import FILMING, filming
from build_tools.views.written.unit_text import place_of, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "UK General Data Protection Regulation, article 6 and recital 38: children merit specific "
    "protection of their personal data"
)
_KINDS = frozenset(
    {
        "classroom_first",
        "does",
        "into",
        "say",
        "task",
        "you",
        "easier",
        "harder",
        "seen",
        "not_yet",
        "finished",
        "not_dancing",
        "pupils_make",
        "notes",
    }
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field in which pupils are filmed with no word on the policy."""
    for found in unit_text(unit).saying(FILMING, _KINDS):
        said = filming(found.field.text)
        if said is None:
            continue
        yield Finding(
            found.file,
            place_of(found.field, said.text),
            f'`{found.field.kind}` has pupils filmed or their pictures shared ("{said.text}"), and '
            "does not name the school's policy",
            "add: only if your school's policy allows it and families have agreed; or draw it",
        )
