"""Every choice that pupils make is settled in a step of a lesson.

A choice left open is still open on the day of showing, and then the teacher decides it in a hurry
or half the class does one thing and half another.

Bad:
    no step settles last-shape
    choices: {last-shape: …}
Good:
    choices: {last-shape: …}
    lesson 3: settles: [last-shape]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import settled
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each choice that no step settles."""
    for name, places in settled(unit).items():
        if not places:
            yield Finding(
                unit.file,
                ("choices", name),
                f"pupils choose `{name}`, but no step in {how_many(len(unit.lessons), 'lesson')} "
                "settles it",
                f"write `settles: [{name}]` in the step where they decide",
            )
