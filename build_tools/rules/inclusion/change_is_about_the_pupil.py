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
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_inclusion import KINDS_OF_PUPILS, KINDS_WORDS
from build_tools.views.lesson.changes import lines_of_change
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
SOURCE = (
    "Black and Stevenson, The Inclusion Spectrum, 2011: space, task, equipment and people are what "
    "is changed; the wording is common practice"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line of change that names a kind of pupil."""
    words = KINDS_WORDS & unit_text(unit).words
    if not words:
        return
    for lesson, path, text in lines_of_change(unit):
        low = text.lower()
        if not any(word in low for word in words):
            continue
        if found := KINDS_OF_PUPILS.search(text):
            yield Finding(
                lesson.file,
                path,
                f"`{path[-1]}` names a kind of pupil, `{found.group()}`, where it could say what "
                "changes",
                "say what changes in the room, the task, the things, the partners or the cue",
            )
