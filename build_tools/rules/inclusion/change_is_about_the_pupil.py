"""A change says what changes in the task, not what is the matter with the pupil.

"For the less able" tells a teacher nothing to do, and pupils hear it. "Rise on the toes for the
jump" can be offered to anyone, today.

Bad:
    easier: Weaker pupils do only the first four counts.
Good:
    easier: Dance the first four counts, then hold still.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.about_pupils import KIND_OF_PUPIL
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Black and Stevenson, The Inclusion Spectrum, 2011: space, task, equipment and people are what "
    "is changed; the wording is common practice"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line of change that names a kind of pupil."""
    for found in unit_text(unit).saying(KIND_OF_PUPIL, at=_is_line_of_change):
        path = found.field.path
        yield Finding(
            found.file,
            path,
            f"`{path[-1]}` names a kind of pupil, `{found.said.text}`, where it could say what "
            "changes",
            "say what is done differently: the sign, with whom, where, what or with what",
        )


def _is_line_of_change(path: FieldPath) -> bool:
    """Whether it makes a step easier or harder, or stands under `change` or `if` of a lesson."""
    return path[-1:] in (("easier",), ("harder",)) or path[:1] in (("change",), ("if",))
