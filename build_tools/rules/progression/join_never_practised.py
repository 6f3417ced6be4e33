"""Every way from one section into the next is practised in a step before the dance is shown.

Dances fall apart at the joins. Pupils who have danced both sections, and never gone from the end
of one to the start of the other, meet the join for the first time in a run of the whole. Where
pupils decide the order, no join is known beforehand.

Bad:
    no other step joins anything
    form: A B C
    lesson 3: joins: [A, B]
Good:
    form: A B C
    lesson 3: joins: [A, B, C]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.joins import neighbours, practised
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
SOURCE = (
    "NSW Department of Education, HSC dance: a transition between sections has to be devised; that "
    "it is practised is common practice"
)
NEEDS = ("unknown-name", "transition-missing")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each two neighbours in the form that no step joins."""
    dance, joined = unit.dance, practised(unit)
    if dance.order_choice:
        return
    for first, second in neighbours(dance):
        if (first, second) in joined:
            continue
        yield Finding(
            unit.file,
            _place(unit, first, second),
            f"section {first} leads into section {second} in {' '.join(dance.form)}, but 0 steps "
            f"in {how_many(len(unit.lessons), 'lesson')} join the two",
            f"write `joins: [{first}, {second}]` in the step where pupils go from one to the other",
        )


def _place(unit: Unit, first: str, second: str) -> FieldPath:
    for n, t in enumerate(unit.dance.transitions):
        if t.start in (first, "any") and t.end in (second, "any"):
            return ("transitions", n)
    return ("dance", "form")
