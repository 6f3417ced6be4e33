"""Each unit that a unit builds on, or leads to, is in the bank under that name.

The page links to it. A name that no folder has gives a teacher no link, only the words. It may be a
slip, or a unit that came from another school without the one before it: an adviser decides. A unit
that is there but has faults of its own is not missing.

Bad:
    builds_on: {in_words: Moving to a beat, units: [paper-boat]}
Good:
    builds_on: {in_words: Moving to a beat, units: [paper-boats]}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.bank import BankOutline
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.schema_check.wording import nearest

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check_bank(bank: BankOutline) -> Iterator[Finding]:
    """Yield a finding for each name under `builds_on` or `leads_to` that no unit has."""
    for unit in bank.units:
        for field, names in (
            ("builds_on", unit.builds_on.units),
            ("leads_to", unit.leads_to.units),
        ):
            for n, name in enumerate(names):
                if name in bank.folders:
                    continue
                near = nearest(name, bank.folders - {unit.slug})
                yield Finding(
                    unit.file,
                    (field, "units", n),
                    f"`{field}` names `{name}`, but the bank has no unit in a folder of that name",
                    f"did you mean `{near}`?"
                    if near
                    else "write the name of a unit's folder, take that unit in too, or keep only "
                    "`in_words`",
                )
