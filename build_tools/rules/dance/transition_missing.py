"""Between any two neighbouring sections, the unit says how pupils get from one to the next.

Dances fall apart at the joins. Pupils need to know where they go, how, in how many counts and
what tells them to start; `straight on` says that no time passes. Where pupils decide the order of
the sections, a transition from or to `any` covers what they may choose.

Bad:
    form: A B C
    transitions: [{from: A, to: B, …}]
Good:
    form: A B C
    transitions: [{from: A, to: B, …}, {from: B, to: C, as: straight on, …}]
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise, permutations

from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = (
    "NSW Department of Education, HSC dance: a transition between contrasting sections has to be "
    "devised"
)
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each pair of neighbours, in the form or as pupils may order them."""
    dance = unit.dance
    place: FieldPath = ("transitions",) if dance.transitions else ("dance", "form")
    missing = [
        pair for pair in dict.fromkeys(pairwise(dance.form)) if not transition_between(dance, *pair)
    ]
    for first, second in missing:
        yield Finding(
            unit.file,
            place,
            f"section {first} leads into section {second} in {' '.join(dance.form)}, but no "
            "transition says how",
            f"add a transition with `from: {first}` and `to: {second}`",
        )
    if not dance.order_choice or missing or len(dance.sections) < 2:
        return
    pairs = list(permutations(dance.sections, 2))
    unsaid = [pair for pair in pairs if not transition_between(dance, *pair)]
    if unsaid and not any("any" in (t.start, t.end) for t in dance.transitions):
        yield Finding(
            unit.file,
            place,
            f"pupils decide the order of the sections, but the transitions cover "
            f"{len(pairs) - len(unsaid)} of the {len(pairs)} ways from one to another",
            "add a transition with `from: any` and `to: any`",
        )
