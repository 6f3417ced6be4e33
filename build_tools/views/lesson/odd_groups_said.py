"""What a group of another size does: the author's words where there are any.

Fit my lesson says it beside the groups that it makes of the class of the day; `groups_told.py` says
the same on every page of whoever is left over.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from build_tools.model.dance import Section
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.groups_told import (
    a_group,
    joins_in_words,
    left_empty_in_words,
    sections_danced,
)
from build_tools.views.lesson.odd_ones import (
    NAMES,
    last_dances_alone,
    of_its_size,
    said_by_the_author,
    said_of,
)
from build_tools.views.words.plain_words import listed

_FAR = 2
"""How many more a group may have than its size, where pairs join whole."""


def odd_groups_said(unit: Unit, lesson: Lesson) -> Mapping[str, Mapping[str, str]]:
    """For each grouping of the lesson, by the size of an odd group, what it does."""
    found: dict[str, dict[str, str]] = {}
    for grouping in dict.fromkeys(step.grouping for step in lesson.steps):
        said = dict(_said(unit, lesson, grouping)) if GROUP_SIZES.get(grouping, 1) > 1 else {}
        if said:
            found[grouping] = said
    return found


def _said(unit: Unit, lesson: Lesson, grouping: str) -> Iterator[tuple[str, str]]:
    size = GROUP_SIZES[grouping]
    sections = sections_danced(unit.dance, lesson, grouping, size)
    for odd in range(max(2, size - 1), size + _FAR + 1):
        if odd == size or odd not in NAMES:
            continue
        words = _by_the_author(unit, lesson, grouping, odd) or _worked_out(sections, size, odd)
        if words:
            yield str(odd), words


def _by_the_author(unit: Unit, lesson: Lesson, grouping: str, odd: int) -> str | None:
    """The words of a step of that grouping; else of the lesson or the unit, if they are of it.

    What is said of a three may be of pairs and of fours: it is of the smaller, where both are.
    """
    steps = [step for step in lesson.steps if step.grouping == grouping]
    texts = [text for s in steps for text in (s.into, s.task, s.say, s.you) if text]
    if told := said_of(odd, texts):
        return told
    size = GROUP_SIZES[grouping]
    if odd < size:
        smaller = {GROUP_SIZES.get(step.grouping, 1) for step in lesson.steps}
        return None if odd - 1 in smaller - {1} else said_by_the_author(unit, lesson, odd)
    of_others = any(of_its_size(one.groups, odd + 1) for one in unit.dance.sections.values())
    partners = said_of(odd, filter(None, (lesson.change.get("partners"),)))
    return partners or (None if of_others else said_by_the_author(unit, lesson, odd))


def _worked_out(sections: tuple[Section, ...], size: int, odd: int) -> str | None:
    if all(one.kind == "improvised" for one in sections):
        return None
    groups = next((one.groups for one in sections), None)
    if odd > size:
        joining = [joins_in_words(groups, size, place, odd) for place in range(size + 1, odd + 1)]
        return _("In {group}, {what}.", group=a_group(odd), what=listed(joining))
    alone = [one for one in sections if last_dances_alone(one, size)]
    if not alone:
        return None
    return _(
        "In {group}, count the counts of {part} aloud while everyone waits.",
        group=a_group(odd),
        part=left_empty_in_words(alone[0].groups, size),
    )
