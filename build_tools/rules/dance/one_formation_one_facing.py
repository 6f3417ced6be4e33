"""From age 7, a dance has two formations or two facings at least.

Rows that face one wall from the first count to the last are easy to keep, and thin to watch and to
make: nobody finds out what a turn to another wall or a cluster does to the same moves. For the
youngest, one place is enough.

Bad:
    years: [{nation: England, years: [5]}]
    start: {formation: line, facing: front, …}
    end: {formation: line, facing: front, …}
Good:
    years: [{nation: England, years: [5]}]
    start: {formation: line, facing: front, …}
    end: {formation: circle, facing: centre, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import how_many
from build_tools.views.words.standing_said import standing_in_words

GRADE: Grade = "note"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "year-unknown-in-nation")
_FROM = 7


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one note where all of the dance stands and faces alike; a draft may still change."""
    known, dance = ages(unit.years), unit.dance
    if known is None or known[0] < _FROM or unit.draft:
        return
    places = [place for one in dance.sections.values() for place in (one.start, one.end)]
    alike = {(place.formation, place.facing) for place in places}
    if len(alike) != 1 or next(iter(alike))[1] == "mixed":
        return
    names = {what for s in dance.sections.values() for p in s.danced for what in p.what}
    if any(action.facing for name in names for action in actions_of(dance, name)):
        return
    yield Finding(
        unit.file,
        ("sections",),
        f"all {how_many(len(dance.sections), 'section')} start and end "
        f"{standing_in_words(places[0])}: one formation and one facing in the whole dance",
        "let one section face another way or stand in another shape",
    )
