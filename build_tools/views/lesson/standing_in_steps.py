"""In which step of a lesson pupils first stand as a section asks, so that the floor is shown."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.words.sections_called import called

ON_PAPER = 2
"""Plans that stand side by side before the steps on paper."""
MOST_PLANS = 3
"""Plans of a lesson; more are no help at a glance, and the dance from above has them all."""
_AROUND, _AGAIN = ("warm-up", "cool-down"), "recall"
_NO_PLAN = "scattered"
"""Where everybody has a place of their own, no plan tells more than the words."""


def stands_anew(dance: Dance, lesson: Lesson) -> tuple[tuple[str, ...], ...]:
    """For every step the sections whose floor is new in this lesson, by their letters.

    The same floor is shown once, whatever is danced on it and whichever way it is faced.
    """
    seen: set[tuple[object, ...]] = set()
    found: list[tuple[str, ...]] = []
    for step in lesson.steps:
        new: list[str] = []
        if step.phase not in _AROUND:
            named = (*step.joins, *step.makes, *step.dances, *step.shows)
            for letter in letters_in(dance, named):
                section = dance.sections[letter]
                floor = _floor(section)
                if is_told(section) and floor not in seen and len(seen) < MOST_PLANS:
                    seen.add(floor)
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
    """The plans that paper has room for side by side, by their steps.

    What is only danced again gives way to what is new: the class has stood so before.
    """
    found = [
        (step.phase == _AGAIN, PlanPrinted(number, letter, f"Step {number}. {plan_title(section)}"))
        for number, (step, letters) in enumerate(
            zip(lesson.steps, stands_anew(unit.dance, lesson), strict=True), start=1
        )
        for letter in letters
        if (section := unit.dance.sections[letter])
    ]
    new = [plan for again, plan in found if not again]
    return tuple((new or [plan for _, plan in found])[:ON_PAPER])


def plan_title(section: Section) -> str:
    """What a plan shows: where they stand, and in which section."""
    return f"Where they stand: {called(section)}"


def is_told(section: Section) -> bool:
    """Whether the unit itself says how they stand, and it is more than a place for each."""
    return section.start.apart is not None and section.start.formation != _NO_PLAN


def _floor(section: Section) -> tuple[object, ...]:
    at = section.start
    size = section.groups.size if section.groups else 1
    return (at.formation, at.within, at.apart, at.groups_apart, at.columns, size)
