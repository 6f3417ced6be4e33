"""Two who face one another do not rise or jump nearer than an arm's length.

Low and face to face at a hand's width, both burst up: two heads rise in half a second under each
other's chins. An arm's length is enough, or back to back, or one after the other.

Bad:
    start: {formation: pairs, facing: partner, within: face to face, columns: 4, apart: 1/2, …}
    danced: [{what: [burst], as: unison, who: both at once}]
    burst: {actions: [{gesture: 2, as: burst, level: low to high}], …}
Good:
    start: {formation: pairs, facing: partner, within: face to face, columns: 4, apart: 2, …}
    danced: [{what: [burst], as: unison, who: both at once}]
    burst: {actions: [{gesture: 2, as: burst, level: low to high}], …}
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.movement.whole import section_spans
from build_tools.paths.facings import partners
from build_tools.paths.hall import bearing, metres
from build_tools.paths.model import Paths
from build_tools.paths.nearness import nearer_than
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.on_the_floor import on_the_floor, passage_at, told
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
SOURCE = (
    "an arm's length for the age as in build_tools/body/ages.json; that heads keep it is common "
    "practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_STRAIGHT_AT = 60.0
"""Degrees to either side within which a dancer faces another; common practice, no source."""
_UP = ("low to middle", "low to high", "middle to high")


class _Rise(NamedTuple):
    word: str
    start: float


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first moves in which partners rise face to face, too near."""
    paths = on_the_floor(unit)
    if paths is None:
        return
    near = nearer_than(paths, paths.body.arm)
    for number, stretch, section in told(paths):
        close = [one.dancers for one in near if one.stretch == number]
        if not close or max(map(len, stretch.together)) < 2:
            continue
        partner = partners(stretch.together)
        pairs = [(one, other) for one, other in close if partner[one] == other]
        for rise in _rises(unit, section) if pairs else ():
            apart = _face_to_face(paths, pairs, stretch.begins + rise.start)
            if apart is None or apart >= paths.body.arm:
                continue
            place = passage_at(unit.dance, section, rise.start + 1e-6)
            yield Finding(
                unit.file,
                ("sections", section.letter, "danced", place),
                f"on count {rise.start + 1:.0f} of section {section.letter} partners go up in "
                f"`{rise.word}`, face to face and {apart:.1f} metres apart; an arm's length is "
                f"{paths.body.arm:.1f}",
                "let them stand an arm's length apart, look another way, or go up in turn",
            )
            return


def _rises(unit: Unit, section: Section) -> tuple[_Rise, ...]:
    """The moves of a section that rise or jump, one for each count before which one starts."""
    found: dict[float, _Rise] = {}
    for span in section_spans(unit.dance, section):
        start = float(span.start)
        for action in actions_of(unit.dance, span.what):
            if action.level in _UP or "jump" in action.kinds:
                found.setdefault(start, _Rise(action_label(action), start))
            start += float(action.counts)
    return tuple(found[start] for start in sorted(found))


def _face_to_face(paths: Paths, pairs: list[tuple[int, int]], moment: float) -> float | None:
    """Metres between the nearest partners who look at one another then; None if none do."""
    found = []
    for one, other in pairs:
        a, b = paths.at(one, moment), paths.at(other, moment)
        way = bearing((a.x, a.y), (b.x, b.y))
        off = max(_between(a.facing, way), _between(b.facing, way + 180))
        if off <= _STRAIGHT_AT:
            found.append(metres((a.x, a.y), (b.x, b.y)))
    return min(found, default=None)


def _between(one: float, other: float) -> float:
    return abs((one - other + 180) % 360 - 180)
