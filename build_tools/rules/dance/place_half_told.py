"""Where a unit says how far apart dancers stand, it says so for each new place.

The tide stands five steps apart, the crabs three, and nobody knows how near the anemones are to one
another: whether they can open without touching, and whether all get there in eight counts, cannot
be reckoned. A unit that gives no distances at all is let be.

Bad:
    A: {start: {formation: rows, within: line, apart: 2, groups_apart: 3, …}, …}
    B: {start: {formation: pairs, facing: partner, spot: new place, place: Near your partner}, …}
Good:
    A: {start: {formation: rows, within: line, apart: 2, groups_apart: 3, …}, …}
    B: {start: {formation: pairs, facing: partner, spot: new place, place: Near your partner,
      within: face to face, apart: 3}, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.on_the_floor import on_the_floor
from build_tools.views.words.standing_said import standing_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each new place whose distances are left open."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    for one in paths.unsaid:
        if one.path[0] != "sections" or one.path[2:] != ("start", "apart"):
            continue
        letter = str(one.path[1])
        start = unit.dance.sections[letter].start
        others = [x for x, s in unit.dance.sections.items() if s.start.apart is not None]
        yield Finding(
            unit.file,
            ("sections", letter, "start"),
            f"section {letter} starts in a new place, {standing_in_words(start)}, but not how far "
            f"apart: `apart` is missing, which {len(others)} of {len(unit.dance.sections)} "
            f"sections say; it would be drawn {one.drawn_as}",
            "write `apart`, the steps between neighbours",
        )
