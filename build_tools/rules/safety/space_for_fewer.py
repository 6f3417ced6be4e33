"""The unit says how much floor each pupil needs, and it is enough for a class to travel.

"A clear hall" tells a teacher nothing about a small one. With a figure, the teacher knows before
the lesson whether to dance the class in halves. A dance in seats says how far apart the chairs and
wheelchairs stand. The floor for which the plans are drawn has room for those who are drawn on it.

Bad:
    hall: A clear hall
Good:
    hall: A clear hall, about 3 square metres for each pupil
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.recommended_metres import has_room_for, recommended_least
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "note"
SOURCE = (
    "One Dance UK, as used in afPE's Safe Practice in Physical Education: at least 3 square metres "
    "for each primary pupil and 5 for each secondary pupil in dance"
)
NEEDS = ("year-unknown-in-nation",)
READS = "en"

_NUMBER = r"(\d+(?:\.\d+)?)"
_FIGURE = re.compile(
    rf"{_NUMBER}\s*(?:square\s+metres?|sq\.?\s*m|m2|m²)"
    r"(\W+(?:for\s+)?(?:each|a|per|every)\s+(?:pupil|child|dancer))?",
    re.IGNORECASE,
)
_EACH_HAS = re.compile(
    r"\b(?:each|every|per|a) (?:pupil|child|dancer)s?\b[^.;]{0,30}\Z|\beach\b[^.;]{0,20}\Z",
    re.IGNORECASE,
)
"""Before a figure: the pupils each have about 3 square metres."""
_SIDES = re.compile(rf"{_NUMBER}\s*(?:m|metres?)?\s*(?:by|x|×)\s*{_NUMBER}", re.IGNORECASE)


_SEATS = re.compile(r"\b(?:chairs?|seats?|seated|wheelchairs?|stools?|benches)\b", re.IGNORECASE)
_APART = re.compile(
    r"\bapart\b|\barms?['’]? ?s?['’]? (?:length|span)s?\b|\bmetres?\b|\bgaps?\b"
    r"|\b(?:room|space) (?:between|round|around|for)\b",
    re.IGNORECASE,
)
_SEATS_TOO_NEAR = (
    "`hall` names chairs or wheelchairs, and not how far apart they stand",
    "write the room between them, such as: an arm's length on each side, and a way through for a "
    "wheelchair",
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where `space` gives no figure for the hall, or too small a one."""
    least = recommended_least(unit.years)
    found = _fault(unit.space.hall, least)
    if found is not None:
        yield Finding(unit.file, ("space", "hall"), *found)
    drawn = unit.space.drawn_for
    if (
        drawn is not None
        and (room := has_room_for(drawn.width * drawn.depth, least)) < drawn.pupils
    ):
        yield Finding(
            unit.file,
            ("space", "drawn_for"),
            f"the plans are drawn for {how_many(drawn.pupils, 'pupil')} in {drawn.width} by "
            f"{drawn.depth} metres, which is room for {room} at {least} square metres each",
            f"write a floor of {least * drawn.pupils} square metres or more, or fewer pupils",
        )


def _fault(hall: str, least: int) -> tuple[str, str] | None:
    """What is wrong with the words for the hall, and how to mend it."""
    each = f"write how much each needs: about {least} square metres for each pupil"
    if _SEATS.search(hall):
        return None if _APART.search(hall) or _FIGURE.search(hall) else _SEATS_TOO_NEAR
    figure, sides = _FIGURE.search(hall), _SIDES.search(hall)
    if figure and (figure.group(2) or _EACH_HAS.search(hall[: figure.start()])):
        metres = float(figure.group(1))
        said = f"`hall` gives each pupil {_said(metres)}, and {least} is the least at this age"
        return (said, each) if metres < least else None
    if figure:
        return _too_small(float(figure.group(1)), least)
    if sides:
        return _too_small(float(sides.group(1)) * float(sides.group(2)), least)
    return "`hall` does not say how many square metres", each


def _too_small(metres: float, least: int) -> tuple[str, str] | None:
    room = has_room_for(metres, least)
    if room >= USUAL_CLASS:
        return None
    return (
        f"{_said(metres)} is room for {how_many(room, 'pupil')} at {least} each, and a class may "
        f"be {USUAL_CLASS}",
        f"write about {least * USUAL_CLASS} square metres, or let half the class dance at a time",
    )


def _said(metres: float) -> str:
    return f"{metres:g} square {'metre' if metres == 1 else 'metres'}"
