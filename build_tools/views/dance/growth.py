"""How the dance grows from lesson to lesson: what is there, what is new, what is joined."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from build_tools.model.unit import Unit
from build_tools.views.dance.when_made import progress


@dataclass(frozen=True, slots=True)
class Growth:
    """The dance at the end of one lesson; letters of sections in the order of the form."""

    before: tuple[str, ...]
    """Parts made in an earlier lesson."""
    today: tuple[str, ...]
    """Parts made in this one."""
    joined: tuple[tuple[str, str], ...]
    """Neighbours joined up to now."""


def growth(unit: Unit) -> tuple[Growth, ...]:
    """The dance at the end of each lesson, in order."""
    form = tuple(unit.dance.form)
    known = progress(unit)
    made = {letter: known[letter].made[0].lesson for letter in form if known[letter].made}
    pairs: dict[tuple[str, str], int] = {}
    for lesson in unit.lessons:
        for step in lesson.steps:
            for pair in pairwise(step.joins):
                pairs.setdefault(pair, lesson.number)
            if "whole" in (*step.dances, *step.shows):
                for pair in pairwise(form):
                    pairs.setdefault(pair, lesson.number)
    return tuple(
        Growth(
            before=tuple(one for one in form if made.get(one, number + 1) < number),
            today=tuple(one for one in form if made.get(one) == number),
            joined=tuple(pair for pair, first in pairs.items() if first <= number),
        )
        for number in (lesson.number for lesson in unit.lessons)
    )
