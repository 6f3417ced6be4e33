"""A section that says it ends in the same place brings everybody back to it.

A wave goes two steps to the left, another two to the right, and a third, slow one to the left once
more: the class ends two steps nearer the left wall, though the unit says "the same place". Danced
twice, nobody fits in the hall. All the ways of a section are added up.

Bad:
    start: {formation: scattered, facing: front, apart: 3, place: Your own spot, …}
    end: {place: The same spot, …}
    danced: [{what: [drift], as: unison, who: everyone}]
    drift: {actions: [{travel: 4, direction: sideways, side: left, steps: 4}], …}
Good:
    start: {formation: scattered, facing: front, apart: 3, place: Your own spot, …}
    end: {place: Four side-steps to the left, …}
    danced: [{what: [drift], as: unison, who: everyone}]
    drift: {actions: [{travel: 4, direction: sideways, side: left, steps: 4}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.paths.drift import drifts
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.sentences.staying_in_place import same_place
from build_tools.views.dance.on_the_floor import on_the_floor, told
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "lengths of steps for the age as in build_tools/body/ages.json; that a step and a bit do not "
    "matter is common practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_OF_THE_DANCE = Saying("dance|first|began|started|begin|start")
"""A place of the whole dance, to which a later section may bring everybody back."""
_MATTERS = 0.8
"""Metres: a step and a bit."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section that ends metres from where it says that it ends."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    known = {number: section for number, _, section in told(paths)}
    done: set[str] = set()
    for drift in drifts(paths):
        section = known.get(drift.stretch)
        if section is None or {section.letter, section.returns} & done or drift.metres < _MATTERS:
            continue
        said = _same_place(section)
        if said is None or (_OF_THE_DANCE.said(said) and section.letter != unit.dance.form[0]):
            continue
        done.add(section.letter)
        assert section.counts is not None
        yield Finding(
            unit.file,
            ("sections", section.letter, "end", "place"),
            f"section {section.letter} ends `{said}`, but in its "
            f"{counts_in_words(section.counts)} the class goes {drift.metres:.1f} metres nearer "
            f"{_wall(unit, drift.side)} than it began",
            "go as far back as forth, or say in `place` where they end",
        )


def _same_place(section: Section) -> str | None:
    """The words that say it ends where it starts; None where it does not say so."""
    said = same_place(section.end.place)
    if said is not None:
        return said.text
    if section.end.place == section.start.place:
        return section.end.place
    return None


def _wall(unit: Unit, side: str) -> str:
    own = unit.dance.sides.get(side)
    return f"the {own} ({side})" if own else f"the {side}"
