"""In the hall that a unit names for its class, everybody can dance at once.

Who has such a hall lets all dance, and finds them against the walls, or closer than the dance asks.
The sum is that of Get ready, of the fitted lesson and of the dance from above: where everybody
goes, half a metre from every wall, arms held wide where they start, and the floor that `free` asks
for. Where no part says how far apart all stand, nothing is asked.
A lesson that says in which halls teams take turns names the same width as the unit.

Bad:
    hall: A clear hall. Needs about 8 by 6 metres for 30.
Good:
    hall: A clear hall. Needs about 20 by 12 metres for 30.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.paths.hall import BORDER, Hall
from build_tools.paths.leaving import too_near_a_wall
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.on_the_floor import in_a_hall, on_the_floor
from build_tools.views.dance.room_to_dance import Room, dances_as_drawn, unit_room
from build_tools.views.words.room_said import why_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
READS = "en"

_FOR = re.compile(r"\b(\d{1,2}) by (\d{1,2}) metres for (\d{1,2})\b")
_UNDER = re.compile(r"\b[Hh]alls? (?:of )?under (\d{1,2}) metres\b")
_LARGER = 8
"""Metres more, each way, in which a hall that is large enough is looked for."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where all cannot dance in the hall said, and where a lesson says another."""
    said = _FOR.search(unit.space.hall)
    if said is None:
        return
    width, depth, pupils = (int(number) for number in said.groups())
    hall = Hall(float(width), float(depth))
    if on_the_floor(unit) is not None and not dances_as_drawn(unit, pupils, hall):
        room = unit_room(unit, pupils, hall)
        yield Finding(
            unit.file,
            ("space", "hall"),
            f"{pupils} pupils cannot all dance at once in {width} by {depth} metres: "
            f"{_why(unit, room)}",
            _mend(unit, pupils, width, depth),
        )
    for lesson in unit.lessons:
        under = _UNDER.search(lesson.change.get("room", ""))
        if under is not None and int(under[1]) != width:
            yield Finding(
                lesson.file,
                ("change", "room"),
                f"the lesson lets teams take turns in a hall under {under[1]} metres, and the unit "
                f"needs {width} by {depth} metres for {pupils} at once",
                f"write the unit's width, {width} metres, or leave the hall out: the fitted lesson "
                "says who dances at once",
            )


def _why(unit: Unit, room: Room) -> str:
    """What is wrong there, and by how many metres."""
    words = why_in_words(room).removesuffix(".")
    if not words:
        return "they have fewer square metres each than is recommended"
    told = words[:1].lower() + words[1:]
    near = too_near_a_wall(in_a_hall(unit, room.pupils, room.hall), watched=False)
    if not near:
        return told
    left = BORDER - max(one.metres for one in near)
    at_wall = f"{left:.1f} metres from it" if left > 0.05 else "at the wall itself"
    return f"{told}; the nearest is {at_wall}, and {BORDER:g} metres stay free"


def _mend(unit: Unit, pupils: int, width: int, depth: int) -> str:
    """The smallest larger hall in which all can, of those with whole metres."""
    larger = sorted(
        ((width + w) * (depth + d), width + w, depth + d)
        for w in range(_LARGER + 1)
        for d in range(_LARGER + 1)
    )
    for _, wide, deep in larger:
        if dances_as_drawn(unit, pupils, Hall(float(wide), float(deep))):
            return f"{wide} by {deep} metres are enough: write that, or let fewer dance at once"
    return "let fewer dance at once, or say who dances nearer, with shorter steps"
