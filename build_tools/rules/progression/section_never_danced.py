"""Every section that is made is danced, joined or shown in a step.

Making is not yet dancing. A section that is made and then left out of every later step is
forgotten by the day of showing.

Bad:
    no step dances, joins or shows A or whole
    lesson 1: makes: [A]
Good:
    lesson 1: makes: [A]
    a later step: dances: [A]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import progress

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section made and never danced; one never made has its own rule."""
    found = progress(unit)
    for letter in unit.dance.sections:
        here = found[letter]
        if not here.made or here.danced or here.shown:
            continue
        left_out = "" if letter in unit.dance.form else f", and the form has no {letter}"
        yield Finding(
            unit.file,
            ("sections", letter),
            f"section {letter} is made in {here.made[0]}, but no step dances, joins or shows it"
            f"{left_out}",
            f"write `dances: [{letter}]` in the step where pupils dance it, or take the section "
            "out",
        )
