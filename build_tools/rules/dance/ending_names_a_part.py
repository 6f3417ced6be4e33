"""The ending fits whichever section comes last.

Where pupils decide the order, nobody knows beforehand which section that is. An ending that takes
one of them for granted is wrong for every class that orders them otherwise; and where the order is
fixed, it names the section that is last.

Bad:
    order: running-order
    ending: [{who: everyone, does: Hold the last shape of part C.}]
Good:
    order: running-order
    ending: [{who: everyone, does: Hold the last shape of whichever part comes last.}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.numbered import letters_said

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line of the ending that names a part which need not be the last."""
    dance = unit.dance
    for n, part in enumerate(dance.ending):
        named = letters_said(part.does, dance.sections)
        if not named or (not dance.order_choice and named[-1] == dance.form[-1]):
            continue
        why = (
            "pupils decide which part comes last"
            if dance.order_choice
            else f"the last part of {' '.join(dance.form)} is {dance.form[-1]}"
        )
        yield Finding(
            unit.file,
            ("ending", n, "does"),
            f"the ending is that of section {named[-1]}, but {why}",
            "say what is done at the end of whichever part comes last"
            if dance.order_choice
            else f"say what is done at the end of part {dance.form[-1]}",
        )
