"""Each change of a lesson says something of its own.

A clearer signal, other partners and another room each help where the others do not. The same
sentence in two of them leaves a class with one way less, and a teacher reading twice.

Bad:
    change: {room: Sit down to dance., task: Sit down to dance.}
Good:
    change: {room: "Small hall: dance in two halves.", task: Sit down to dance.}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = (
    "Black and Stevenson, The Inclusion Spectrum, 2011: space, task, equipment and people are four "
    "things to change"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each change that repeats another of its lesson or its step."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            if step.easier and step.harder and _plain(step.easier) == _plain(step.harder):
                yield Finding(
                    lesson.file,
                    ("steps", n, "harder"),
                    f"`harder` says the same as `easier` in step {n + 1}",
                    "write under `harder` what would stretch pupils who have it already",
                )
        first: dict[str, str] = {}
        for name, text in lesson.change.items():
            other = first.setdefault(_plain(text), name)
            if other != name:
                yield Finding(
                    lesson.file,
                    ("change", name),
                    f"`{name}` says the same as `{other}`",
                    f"say what changes in the {name}, or leave the line out",
                )


def _plain(text: str) -> str:
    return text.strip(" .!;").casefold()
