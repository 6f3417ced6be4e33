"""Groups in plain sentences: what one left over does, and who watches whom."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from build_tools.model.dance import Dance, Groups, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.roles import places_danced
from build_tools.views.dance.on_the_floor import CLASSES
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.lesson.class_groups import (
    GROUP_SIZES,
    class_groups,
    groupings_known,
    splits_standing_groups,
)
from build_tools.views.lesson.notes_in_steps import danced_in
from build_tools.views.lesson.odd_ones import (
    NAMES,
    last_dances_alone,
    of_its_size,
    said_by_the_author,
    tells_of_a_pair_left,
    told_in_the_step,
)
from build_tools.views.words.plain_words import listed

_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth")
_WATCH = {
    "yourself": "Nobody watches: each pupil thinks back over their own dance.",
    "partner": "One partner dances while the other watches; then they change. In a three, two "
    "watch one, and all three have a turn.",
    "another pair": "Two pairs sit together: one dances while the other watches, then they "
    "change. If a pair is left, make it three pairs: two watch one, and all three have a turn.",
    "another group": "Two groups sit together: one dances while the other watches, then they "
    "change. If a group is left, make it three: two watch one, and all three have a turn.",
    "half the class": "Half the class sits and watches the other half dance; then they change.",
    "whole class": "",
}

_WHO_WATCHES = re.compile(
    r"\b(?:sits|(?<!to )sit (?:down|along|by|at|beside|on|in|three|two|one)|(?:half|rest) sits?"
    r"|watchers,? (?:sit|stand)|watches|stay\b[^.]*\bwatch|looks on|one dances"
    r"|you\b[^.]*, watch)\b",
    re.IGNORECASE,
)
"""Words by which a step says itself where watchers are, or who dances while others watch."""


def left_over_in_words(unit: Unit, lesson: Lesson, index: int) -> str | None:
    """What a teacher does with who is left, and each one's job; said where a size first comes.

    The author's own words come first, and what the step itself says is not said again. It is of
    the groups that classes of 24 to 36 make in this lesson: whole pairs that join leave a pair.
    """
    step = lesson.steps[index]
    size = GROUP_SIZES.get(step.grouping, 1)
    before = {one.grouping for one in lesson.steps[:index]}
    dancing = step.makes or step.develops or step.joins or step.dances or step.shows
    if size < 2 or step.grouping in before or not dancing:
        return None
    sections = _sections(unit.dance, lesson, step.grouping, size)
    known = groupings_known(unit, lesson)
    made = {one for pupils in CLASSES for one in class_groups(known, step.grouping, pupils)}
    over = size + 1 in made and not splits_standing_groups(unit, lesson, index)
    said = [
        *(_one_more(unit, lesson, step, size, sections) if over else ()),
        *(_pair_more(step, size, sections) if size + 2 in made else ()),
        *(_one_fewer(unit, lesson, step, size, sections) if size - 1 in made else ()),
    ]
    return " ".join(dict.fromkeys(said)) or None


def _one_more(
    unit: Unit, lesson: Lesson, step: Step, size: int, sections: Sequence[Section]
) -> Iterator[str]:
    if told_in_the_step(step, size + 1):
        return
    more = NAMES[size + 1]
    # what is said of a three may be said of a four that lacks one
    of_others = any(of_its_size(one.groups, size + 2) for one in unit.dance.sections.values())
    said = None if of_others else said_by_the_author(unit, lesson, size + 1)
    if said:
        yield f"If one pupil is left, make a {more}. {said}"
    elif sections and all(one.kind == "improvised" for one in sections):
        yield f"If one pupil is left, make a {more}."
    else:
        groups = next((one.groups for one in sections), None)
        yield f"If one pupil is left, make a {more}: {_joins(groups, size, size + 1, size + 1)}."


def _pair_more(step: Step, size: int, sections: Sequence[Section]) -> Iterator[str]:
    """Where pairs join whole, one may be left; groups that nobody has to number need no words."""
    told = told_in_the_step(step, size + 2) or tells_of_a_pair_left(step)
    if told or any(one.kind == "improvised" for one in sections):
        return
    groups = next((one.groups for one in sections), None)
    doing = listed([_joins(groups, size, place, size + 2) for place in (size + 1, size + 2)])
    yield f"If a pair is left, it joins a {NAMES[size]}: {doing}."


def _one_fewer(
    unit: Unit, lesson: Lesson, step: Step, size: int, sections: Sequence[Section]
) -> Iterator[str]:
    if told_in_the_step(step, size - 1):
        return
    said = said_by_the_author(unit, lesson, size - 1)
    alone = [one for one in sections if last_dances_alone(one, size)]
    if said:
        yield said
    elif alone:
        yield (
            f"If you have to make a {NAMES[size - 1]}, dance {_left_empty(alone[0].groups, size)} "
            "yourself, or count its counts aloud while everyone waits."
        )


def watching_in_words(lesson: Lesson, step: Step) -> str | None:
    """Who watches whom, in a step that shows for looking and talking; not what it says itself."""
    if lesson.look_and_talk is None or step.phase != "look and talk" or not step.shows:
        return None
    if any(_WHO_WATCHES.search(text) for text in (step.into, step.task, step.you) if text):
        return None
    return _WATCH[lesson.look_and_talk.who] or None


def _sections(dance: Dance, lesson: Lesson, grouping: str, size: int) -> tuple[Section, ...]:
    """What the lesson's steps of that grouping make or dance in groups of that size."""
    letters = dict.fromkeys(
        letter
        for step in lesson.steps
        if step.grouping == grouping
        for letter in letters_in(dance, (*step.makes, *danced_in(step)))
    )
    return tuple(s for s in map(dance.sections.__getitem__, letters) if of_its_size(s.groups, size))


def _joins(groups: Groups | None, size: int, over: int, many: int) -> str:
    """What one who is over does, as the one who comes `over`th to the group, of `many` in all."""
    if groups is None:
        return f"the {_ordinal(over)} pupil copies the {_ordinal(over - size)}"
    danced = places_danced(groups, many)
    joined = [place for n, place in enumerate(danced) if place in danced[:n]]
    place = joined[over - size - 1]
    roles = _roles_of(groups, place)
    doing = f"dances with the {listed(roles)}" if roles else f"copies number {place}"
    return f"the {_ordinal(over)} pupil {doing}"


def _left_empty(groups: Groups | None, size: int) -> str:
    if groups is None:
        return f"the part of number {size}"
    own = [role for role, places in groups.roles.items() if places == (size,)]
    return f"the part of {listed(own)}" if own else f"the part of number {size}"


def _roles_of(groups: Groups, place: int) -> list[str]:
    """The roles of several places that the place is in; a role of its own is its number."""
    return [role for role, places in groups.roles.items() if place in places and _many(role)]


def _many(role: str) -> bool:
    return role.endswith("s") and not any(letter.isdigit() for letter in role)


def _ordinal(number: int) -> str:
    return _ORDINALS[number - 1]
