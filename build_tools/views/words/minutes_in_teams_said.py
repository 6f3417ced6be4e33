"""What teams do to the minutes of a unit's lessons, in a sentence."""

from __future__ import annotations

from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.views.dance.room_to_dance import Room
from build_tools.views.lesson.minutes_in_teams import minutes_in_teams
from build_tools.views.lesson.step_facts import step_facts


def minutes_in_teams_said(unit: Unit, room: Room) -> str:
    """How long its lessons need in teams; empty where they need no more than is planned."""
    planned = [lesson.minutes for lesson in unit.lessons]
    needs = [minutes_in_teams(step_facts(unit, lesson), room) for lesson in unit.lessons]
    if needs == planned:
        return ""
    long = _("about {minutes}", minutes=_from_to(needs))
    if min(needs) in planned:
        long = _("up to {minutes}", minutes=max(needs))
    return _(
        "For each team to dance as often as planned, a lesson of {planned} minutes needs {long}. "
        "In {planned}, each team dances as often as its minutes allow, once at least.",
        planned=_from_to(planned),
        long=long,
    )


def _from_to(minutes: list[int]) -> str:
    least, most = min(minutes), max(minutes)
    return str(most) if least == most else _("{least} to {most}", least=least, most=most)
