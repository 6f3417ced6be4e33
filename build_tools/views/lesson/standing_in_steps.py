"""In which step of a lesson pupils first stand as a section asks, so that the floor is shown."""

from __future__ import annotations

import re
from dataclasses import dataclass

from build_tools.model.dance import Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.words.sections_called import called

MOST_PLANS = 2
"""Plans of a lesson: two stand side by side on paper, and the dance from above has them all."""
MOST_KNOWN = 3
"""Plans on the page of a lesson in which no floor is new: it begins where it begins, and the ones
that it comes to stand in their steps too. On paper there are the first two."""
_AROUND, _AGAIN = ("warm-up", "cool-down"), "recall"
_NO_GROUPS = frozenset({"alone", "half class", "whole class"})
_IN_GROUPS = frozenset({"pairs", "small groups"})
_BESIDE = re.compile(r"\b(?:beside|facing|with) (?:a|your) partner\b", re.IGNORECASE)
_NO_PLAN = "scattered"
"""Where everybody has a place of their own, no plan tells more than the words."""


def stands_anew(unit: Unit, lesson: Lesson) -> tuple[tuple[str, ...], ...]:
    """For every step the sections whose floor is new in this lesson, by their letters.

    The same floor is shown once, whatever is danced on it and whichever way it is faced. What is
    only danced again gives way to what is new: the class has stood so before. How pairs and fours
    stand waits for the step in which there are any: a unit may learn its first moves alone.
    """
    found = _shown(unit, lesson, _AGAIN, MOST_PLANS)
    floors = {_floor(unit.dance.sections[letter]) for letters in found for letter in letters}
    if floors and not floors <= _stood_before(unit, lesson):
        return found
    return _shown(unit, lesson, None, MOST_KNOWN)


def _stood_before(unit: Unit, lesson: Lesson) -> set[tuple[object, ...]]:
    """The floors of all sections that earlier lessons danced."""
    steps = (s for one in unit.lessons if one.number < lesson.number for s in one.steps)
    named = (name for s in steps for name in (*s.joins, *s.makes, *s.dances, *s.shows))
    letters = letters_in(unit.dance, tuple(named))
    return {_floor(unit.dance.sections[letter]) for letter in letters}


def _shown(unit: Unit, lesson: Lesson, quiet: str | None, most: int) -> tuple[tuple[str, ...], ...]:
    """The same, `most` at most; floors of steps of the phase `quiet` are known and not shown."""
    seen: set[tuple[object, ...]] = set()
    found: list[tuple[str, ...]] = []
    shown, dance, grouped = 0, unit.dance, _grouped_before(unit, lesson)
    for step in lesson.steps:
        new: list[str] = []
        grouped = grouped or _puts_in_groups(step)
        named = (*step.joins, *step.makes, *step.dances, *step.shows)
        for letter in letters_in(dance, named) if step.phase not in _AROUND else ():
            section = dance.sections[letter]
            if not is_told(section) or _floor(section) in seen:
                continue
            if not grouped and _is_in_groups(section):
                continue
            seen.add(_floor(section))
            if step.phase != quiet and shown < most:
                shown += 1
                new.append(letter)
        found.append(tuple(new))
    return tuple(found)


@dataclass(frozen=True, slots=True)
class PlanPrinted:
    """A plan of the floor as it is printed: in which step, of which section, and its title."""

    step: int
    letter: str
    title: str


def plans_of(unit: Unit, lesson: Lesson) -> tuple[PlanPrinted, ...]:
    """The plans as they stand side by side on paper, by their steps."""
    every = tuple(
        PlanPrinted(
            number,
            letter,
            _(
                "Step {number}. {title}",
                number=number,
                title=plan_title(unit.dance.sections[letter]),
            ),
        )
        for number, letters in enumerate(stands_anew(unit, lesson), start=1)
        for letter in letters
    )
    return every[:MOST_PLANS]


def plan_title(section: Section) -> str:
    """What a plan shows: where they stand, and in which section."""
    return _("Where they stand: {section}", section=called(section))


def is_told(section: Section) -> bool:
    """Whether the unit itself says how they stand, and it is more than a place for each."""
    return section.start.apart is not None and section.start.formation != _NO_PLAN


def _is_in_groups(section: Section) -> bool:
    """Whether the plan says who stands by whom, which says nothing to pupils who are each alone."""
    return section.start.formation in _IN_GROUPS


def _grouped_before(unit: Unit, lesson: Lesson) -> bool:
    """Whether an earlier lesson has put pupils in pairs or larger groups."""
    earlier = (one for one in unit.lessons if one.number < lesson.number)
    return any(_puts_in_groups(step) for one in earlier for step in one.steps)


def _puts_in_groups(step: Step) -> bool:
    """Whether pupils are in groups, or are sent beside somebody: stand beside a partner."""
    sent = f"{step.into or ''} {step.place or ''} {step.say or ''}"
    return step.grouping not in _NO_GROUPS or bool(_BESIDE.search(sent))


def _floor(section: Section) -> tuple[object, ...]:
    at = section.start
    size = section.groups.size if section.groups else 1
    return (at.formation, at.within, at.apart, at.groups_apart, at.columns, size)
