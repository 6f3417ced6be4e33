"""How long a lesson needs where the class dances in teams, for each to dance as much as is planned.

A part that does not take the whole class is made and danced by one team after another. What is
shown in two halves is shown by all anyway. `site_overrides/sums/minutes-in-teams.js` does the same
on the pages;
`tests/sums/test_minutes_in_teams.py` holds the two together. That a class cannot be asked to dance
a fourth as much without being told: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import ceil

from build_tools.views.dance.room_to_dance import Room
from build_tools.views.lesson.step_facts import StepFacts

_MOVING = ("warm-up", "cool-down")
_SEEN = ("show", "look and talk")
_HALVES = 2


def minutes_in_teams(steps: Sequence[StepFacts], room: Room) -> int:
    """The whole minutes that a lesson needs in the hall of `room`; those planned without teams."""
    return ceil(sum(_needs(one, room) for one in steps))


def _needs(one: StepFacts, room: Room) -> Fraction:
    teams = len(room.sharing.teams) if room.found else 0
    planned = Fraction(one.minutes)
    anywhere = one.phase in _MOVING or (one.phase == "explore" and not one.on_spots)
    if not teams or not room.tight_in(one.parts) or anywhere:
        return planned
    if one.showing is not None and one.showing.at_once:
        return planned
    if one.grouping == "half class" or one.showing is not None or one.phase in _SEEN:
        return planned * max(teams, _HALVES) / _HALVES
    return planned * teams
