"""Whether the steps of a dance are a distance: to somebody, or to a place that must be reached.

Children told to halve their steps still dance such a wave or such a round. They do not meet whom
they were to meet, nor come to the place that they were to change to.
"""

from __future__ import annotations

from itertools import combinations

from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.paths.hall import Hall, Point, metres
from build_tools.paths.model import Paths, StretchPaths

ROOMY = Hall(30.0, 20.0)
"""A hall in which nobody has to stand closer; as many metres as a sports hall, no source."""
ASKED_OF = (USUAL_CLASS, ROOMY)
"""For how many, and where, it is asked: neither the class nor the hall of the day changes it."""
_THERE = 0.25
"""Metres from a place at which a dancer has come to it: less than half of a step."""


def steps_reach(paths: Paths) -> bool:
    """Whether some steps of the dance would not get there if they were half as long.

    They would not where two of a group come within reach of each other's hands who were not when
    the section began, where one comes to another's place, or where the section says that its steps
    bring neighbours nearer or farther. Who steps into the place of one that went the same way has
    come to nobody. `paths` are those of `ASKED_OF`.
    """
    counted = [one for one in paths.stretches if one.section is not None and one.counted]
    return any(_reshaped(one) or _comes_to_somebody(paths, one) for one in counted)


def _reshaped(one: StretchPaths) -> bool:
    """Whether neighbours end at another distance, or in another shape, than they began."""
    assert one.section is not None
    start, end = one.section.start, one.section.end
    return any(
        before is not None and after is not None and before != after
        for before, after in ((start.apart, end.apart), (start.within, end.within))
    )


def _comes_to_somebody(paths: Paths, one: StretchPaths) -> bool:
    """Whether a step ends within reach of a mate out of reach before, or in a mate's place."""
    hands = 2 * paths.body.arm
    began = _places(paths, one.begins)
    ends = {leg.end for legs in paths.legs for leg in legs if one.begins <= leg.start < one.ends}
    moments = [_places(paths, moment) for moment in sorted(ends)]
    for group in one.together:
        for a, b in combinations(group, 2):
            apart = metres(began[a], began[b])
            for now in moments:
                if apart > hands >= metres(now[a], now[b]):
                    return True
                came = metres(now[a], began[b]) < _THERE or metres(now[b], began[a]) < _THERE
                if came and metres(_way(began[a], now[a]), _way(began[b], now[b])) >= _THERE:
                    return True
    return False


def _way(start: Point, end: Point) -> Point:
    return (end[0] - start[0], end[1] - start[1])


def _places(paths: Paths, moment: float) -> list[Point]:
    return [(one.x, one.y) for one in paths.everybody(moment)]
