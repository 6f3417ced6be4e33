"""What the notes say of a move is written as a line of that move.

A move's line begins with a hyphen and its word in bold: "- **Hop**: two feet to two feet". It is
told in the step where pupils meet the move. Without the bold, or under another form of the word,
nothing says whether it is such a line, and the page keeps it with the notes at the foot.

Bad:
    actions: [{jump: 2, as: hop}]
    notes: "Hop: two feet to two feet."
Good:
    actions: [{jump: 2, as: hop}]
    notes: "- **Hop**: two feet to two feet."
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.lesson.move_lines import asked_about

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line of a lesson's notes that may be meant for a move."""
    for lesson in unit.lessons:
        for one in asked_about(lesson.notes, unit.dance):
            yield Finding(
                lesson.file,
                ("notes", one.line),
                f"is `{one.typed.strip()}` the move {one.word}? Its line is not written so, stays "
                "with the notes at the foot of the page and is told in no step",
                f"if it is, let the line begin with `{one.head}`",
            )
