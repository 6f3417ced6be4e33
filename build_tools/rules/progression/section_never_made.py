"""Every section of the dance is made in a step of a lesson.

A section that no lesson makes is a hole in the dance: on the day, nobody knows what to do in it.
An improvised section, and one made only of motifs `from: teacher`, needs no more than to be
danced: a step that names it in `dances` makes it too.

Bad:
    sections: {A: …, B: …}
    lesson 1: makes: [A]
Good:
    sections: {A: …, B: …}
    lesson 1: makes: [A]
    lesson 2: makes: [B]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import progress
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section that no step makes."""
    found = progress(unit)
    for letter in unit.dance.sections:
        if found[letter].made:
            continue
        yield Finding(
            unit.file,
            ("sections", letter),
            f"no step in {how_many(len(unit.lessons), 'lesson')} makes section {letter}",
            f"write `makes: [{letter}]` in the step where pupils make it, or take the section out",
        )
