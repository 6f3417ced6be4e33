"""How long a lesson needs where the class dances in teams, for each to dance as much as is planned.

A part that does not take the whole class is danced once for each team. What is shown in two halves
is shown by all anyway; what is made is learned by all at once on the spot, and each further team
has a minute to dance it. `site_overrides/sums/minutes-in-teams.js` does the same on the pages;
`tests/sums/test_minutes_in_teams.py` holds the two together. That a class cannot be asked to dance
a fourth as much without being told: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import ceil

from build_tools.views.dance.room_to_dance import Room
from build_tools.views.lesson.step_facts import StepFacts

DANCED_ONCE = 1
"""Minutes in which a team dances once what all have made. Common practice, no source."""
_MOVING = ("warm-up", "cool-down", "explore")
_MAKING = ("make", "develop")
_SEEN = ("show", "look and talk")
_HALVES = 2


def minutes_in_teams(steps: Sequence[StepFacts], room: Room) -> int:
    """The whole minutes that a lesson needs in the hall of `room`; those planned without teams."""
    return ceil(sum(_needs(one, room) for one in steps))


def _needs(one: StepFacts, room: Room) -> Fraction:
    teams = len(room.sharing.teams) if room.found else 0
    planned = Fraction(one.minutes)
    if not teams or not room.tight_in(one.parts) or one.phase in _MOVING:
        return planned
    if one.showing is not None and one.showing.at_once:
        return planned
    if one.grouping == "half class" or one.showing is not None or one.phase in _SEEN:
        return planned * max(teams, _HALVES) / _HALVES
    if one.phase in _MAKING:
        return planned + DANCED_ONCE * (teams - 1)
    return planned * teams
