"""Somewhere before the class moves, the unit says to check the floor.

Crumbs, a wet patch or a splinter are only found by looking. One line is enough: in a lesson's
`safety`, `classroom_first`, `collect` or `say`, or in the notes of a lesson or the unit.

Bad:
    safety: [The school's risk assessment comes first.]
Good:
    safety: [The school's risk assessment comes first., Check the floor is dry and clear.]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.floor import LOOKED_AT
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Cambridgeshire PE service after afPE, Safe Practice, 2020: check the floor before the activity"
)
_KINDS = frozenset({"safety", "notes", "classroom_first", "collect", "say"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where no line anywhere in the unit checks the floor."""
    if any(unit_text(unit).saying(LOOKED_AT, _KINDS, meant=False)):
        return
    first = unit.lessons[0]
    many = len(first.safety)
    said = _FEW.get(many, f"none of the {many} safety lines here checks the floor")
    yield Finding(
        first.file,
        ("safety",) if many > first.standing else (),
        f"{said}, and nothing elsewhere in the unit checks it",
        "add a line under `safety`: check the floor is dry and clear",
    )


_FEW = {
    0: "no line under `safety` of this lesson or of the unit checks the floor",
    1: "the 1 safety line here does not check the floor",
}
