"""Every motif and development that is danced is made or developed in a step.

A name in the dance that no lesson works on cannot be taught: the teacher reads that it is danced
and finds no step for it. A motif `from: teacher` is learned where it is first danced. What pupils
make or alter themselves needs a step that says so.

Bad:
    no step develops drift-slow
    sections: {B: {danced: [{what: [drift-slow], as: unison}, …], …}}
Good:
    sections: {B: {danced: [{what: [drift-slow], as: unison}, …], …}}
    lesson 2: develops: [drift-slow]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import held, inside, is_given, steps_in_order
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each motif or development danced in the form that no step makes."""
    dance = unit.dance
    made = {n for _, _, step in steps_in_order(unit) for n in (*step.makes, *step.develops)}
    letters = tuple(dict.fromkeys(dance.form))
    danced, below = inside(dance, letters), held(dance, letters)
    lessons = how_many(len(unit.lessons), "lesson")
    for name in dance.motifs:
        if name in below and name not in made and not is_given(dance, name):
            yield Finding(
                unit.file,
                ("motifs", name),
                f"`{name}` is danced and pupils have a hand in making it, but no step in "
                f"{lessons} makes it",
                f"write `makes: [{name}]` in the step where pupils make it, or `from: teacher` if "
                "they learn it as it is",
            )
    for name in dance.developments:
        if name in danced and name not in made:
            yield Finding(
                unit.file,
                ("developments", name),
                f"`{name}` is danced, but no step in {lessons} develops it",
                f"write `develops: [{name}]` in the step where pupils change the motif",
            )
