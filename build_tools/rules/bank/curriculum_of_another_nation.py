"""A curriculum link is to the curriculum of a nation that the unit is for.

`years` says for which nations and years a unit is. A link to Scotland's curriculum in a unit for
England's years promises something to nobody.

Bad:
    {nation: Wales, stage: progression step 2, …}
Good:
    {nation: England, stage: key stage 2, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each link to a nation that has no entry under `years`."""
    nations = list(dict.fromkeys(one.nation for one in unit.years))
    for n, link in enumerate(unit.curriculum):
        if link.nation not in nations:
            yield Finding(
                unit.file,
                ("curriculum", n, "nation"),
                f"the link is to the curriculum of {link.nation}, but `years` has "
                f"{listed(nations)}",
                f"add the school years in {link.nation} under `years`, or take the link out",
            )
