"""A section that ends in the place where it started comes back there.

Travels forwards and backwards are added up. If pupils go forwards for six counts and back for two,
they do not end in the row they left, and the next section starts somewhere else each time.

Bad:
    draw: {actions: [{travel: 2, direction: forwards}, {stillness: 2}], …}
    start: {facing: front, place: Your own row, …}
    end: {facing: front, place: Your own row, …}
    danced: [{what: [draw], as: unison}]
Good:
    draw: {actions: [{travel: 2, direction: forwards}, {travel: 2, direction: backwards}], …}
    start: {facing: front, place: Your own row, …}
    end: {facing: front, place: Your own row, …}
    danced: [{what: [draw], as: unison}]
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance, Section
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of
from build_tools.movement.way_travelled import way_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")

_FIXED = re.compile(r"\b(?:rows?|lines?|spots?|homes?|places?|wall|corners?|edge|ring|chairs?)\b")
"""What stays where it is: pupils can be beside a partner anywhere."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section with one place for both ends and a way that is left over."""
    for letter, section in unit.dance.sections.items():
        if not _same_place(section):
            continue
        left = _forwards(unit.dance, section)
        if not left:
            continue
        which = "forwards" if left > 0 else "backwards"
        yield Finding(
            unit.file,
            ("sections", letter, "end", "place"),
            f"section {letter} ends where it starts, but {figures(abs(left))} counts of travelling "
            f"{which} are left over in what is danced",
            "let one of its moves go the other way, or write where it ends",
        )


def _same_place(section: Section) -> bool:
    start, end = (" ".join(s.place.casefold().split()) for s in (section.start, section.end))
    if section.start.facing != section.end.facing or section.end.facing == "mixed":
        return False
    return end.startswith("the same ") or (start == end and bool(_FIXED.search(end)))


def _forwards(dance: Dance, section: Section) -> Fraction:
    """Counts of travelling forwards that nothing takes back; 0 where a way is not known.

    Where parts do different things, what all of them go is added: if each comes back, it is 0.
    """
    left = Fraction(0)
    for passage in section.danced:
        ways = [way_of(actions_of(dance, name)) for name in passage.what]
        along = [way.forwards for way in ways if way is not None]
        if len(along) < len(ways):
            return Fraction(0)
        left += sum(along, Fraction(0)) * passage.times
    return left
