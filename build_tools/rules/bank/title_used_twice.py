"""No two units of the bank have the same title.

Teachers say a unit by its title. Two units of one title are mixed up on the first morning.

Bad:
    in one unit: title: Paper boats
    in another unit: title: Paper boats
Good:
    in one unit: title: Paper boats
    in another unit: title: Paper boats in a storm
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.bank import BankOutline
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check_bank(bank: BankOutline) -> Iterator[Finding]:
    """Yield a finding for each title that another unit has before it; drafts may still change."""
    first: dict[str, str] = {}
    for unit in sorted((u for u in bank.units if not u.draft), key=lambda one: one.slug):
        said = " ".join(unit.title.split())
        title = said.casefold()
        if title in first:
            yield Finding(
                unit.file,
                ("title",),
                f"`{said}` is also the title of the unit in the folder `{first[title]}`",
                "add a word that tells the two apart",
            )
        else:
            first[title] = unit.slug
