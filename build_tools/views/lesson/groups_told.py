"""Groups in plain sentences: what one left over does, and who watches whom."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from build_tools.model.dance import Dance, Groups, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.roles import places_danced
from build_tools.page_words.forms import counts_in_figures
from build_tools.page_words.words import N_, _
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
    last_dances_alone,
    of_its_size,
    said_by_the_author,
    tells_of_a_pair_left,
    told_in_the_step,
)
from build_tools.views.words.plain_words import listed

_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth")
_GROUPS = {
    2: N_("a pair"),
    3: N_("a three"),
    4: N_("a four"),
    5: N_("a five"),
    6: N_("a six"),
    7: N_("a seven"),
    8: N_("an eight"),
}
_WATCH = {
    "yourself": N_("Nobody watches: each pupil thinks back over their own dance."),
    "partner": N_(
        "One partner dances while the other watches; then they change. In a three, two watch one, "
        "and all three have a turn."
    ),
    "another pair": N_(
        "Two pairs sit together: one dances while the other watches, then they change. If a pair "
        "is left, make it three pairs: two watch one, and all three have a turn."
    ),
    "another group": N_(
        "Two groups sit together: one dances while the other watches, then they change. If a group "
        "is left, make it three: two watch one, and all three have a turn."
    ),
    "half the class": N_("Half the class sits and watches the other half dance; then they change."),
}

_CALLED = {
    "pairs": re.compile(r"\b(?:partner|pairs?)\b", re.IGNORECASE),
    **{
        name: re.compile(rf"\b(?:your|each|in) {number}s?\b(?! (?:\w+ )?steps?\b)", re.IGNORECASE)
        for name, number in (("threes", "three"), ("fours", "four"), ("fives", "five"))
    },
    "sixes": re.compile(r"\b(?:your six|each six|in sixes)\b(?! (?:\w+ )?steps?\b)", re.IGNORECASE),
}
"""What a place calls the groups by which pupils stand there; numbers of steps are none."""

_WHO_WATCHES = re.compile(
    r"\b(?:sits|(?<!to )sit (?:down|along|by|at|beside|on|in|three|two|one)|(?:half|rest) sits?"
    r"|watchers,? (?:sit|stand)|watches|stay\b[^.]*\bwatch|looks on|one dances"
    r"|you\b[^.]*, watch)\b",
    re.IGNORECASE,
)
"""Words by which a step says itself where watchers are, or who dances while others watch."""


def left_over_in_words(unit: Unit, lesson: Lesson, index: int) -> str | None:
    """What a teacher does with who is left, and each one's job; said where a size first comes.

    That is where pupils first stand by their groups, though each may dance alone there.
    """
    told = (
        _left_over(unit, lesson, n)
        for n in range(index, len(lesson.steps))
        if _stood_first(lesson, n) == index
    )
    return next(filter(None, told), None)


def _stood_first(lesson: Lesson, index: int) -> int:
    """The step in which the groups of a step first take their places: beside your partner."""
    name = _CALLED.get(lesson.steps[index].grouping)
    if name is None:
        return index
    for n, step in enumerate(lesson.steps[:index]):
        if step.grouping in ("alone", "whole class") and name.search(_placed(step)):
            return n
    return index


def stood_in(step: Step) -> str | None:
    """The groups whose places pupils take in a step where each dances alone: pairs."""
    if step.grouping not in ("alone", "whole class"):
        return None
    return next((name for name, called in _CALLED.items() if called.search(_placed(step))), None)


def _placed(step: Step) -> str:
    return " ".join(filter(None, (step.into, step.place)))


def _left_over(unit: Unit, lesson: Lesson, index: int) -> str | None:
    """What is told of who is left by the groups of a step, the first of their size.

    The author's own words come first, and what the step itself says is not said again. It is of
    the groups that classes of 24 to 36 make in this lesson: whole pairs that join leave a pair.
    """
    step = lesson.steps[index]
    size = GROUP_SIZES.get(step.grouping, 1)
    before = {one.grouping for one in lesson.steps[:index]}
    dancing = step.makes or step.develops or step.joins or step.dances or step.shows
    if size < 2 or step.grouping in before or not dancing:
        return None
    sections = sections_danced(unit.dance, lesson, step.grouping, size)
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
    more = a_group(size + 1)
    # what is said of a three may be said of a four that lacks one
    of_others = any(of_its_size(one.groups, size + 2) for one in unit.dance.sections.values())
    said = None if of_others else said_by_the_author(unit, lesson, size + 1)
    if said:
        yield _("If one pupil is left, make {group}.", group=more) + f" {said}"
    elif sections and all(one.kind == "improvised" for one in sections):
        yield _("If one pupil is left, make {group}.", group=more)
    else:
        groups = next((one.groups for one in sections), None)
        doing = joins_in_words(groups, size, size + 1, size + 1)
        yield _("If one pupil is left, make {group}: {what}.", group=more, what=doing)


def _pair_more(step: Step, size: int, sections: Sequence[Section]) -> Iterator[str]:
    """Where pairs join whole, one may be left; groups that nobody has to number need no words."""
    told = told_in_the_step(step, size + 2) or tells_of_a_pair_left(step)
    if told or any(one.kind == "improvised" for one in sections):
        return
    groups = next((one.groups for one in sections), None)
    doing = listed(
        [joins_in_words(groups, size, place, size + 2) for place in (size + 1, size + 2)]
    )
    yield _("If a pair is left, it joins {group}: {what}.", group=a_group(size), what=doing)


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
        part = left_empty_in_words(alone[0].groups, size)
        yield _(
            "If you have to make {group}, {part} is counted aloud, and everyone waits.",
            group=a_group(size - 1),
            part=part,
        )


def tells_who_sits(step: Step) -> bool:
    """Whether the words that get a step into its groups say who watches while others dance."""
    return bool(step.into and _WHO_WATCHES.search(step.into))


def watching_in_words(lesson: Lesson, step: Step) -> str | None:
    """Who watches whom, in a step that shows for looking and talking; not what it says itself."""
    if lesson.look_and_talk is None or step.phase != "look and talk" or not step.shows:
        return None
    if any(_WHO_WATCHES.search(text) for text in (step.into, step.task, step.you) if text):
        return None
    said = _WATCH.get(lesson.look_and_talk.who)
    return _(said) if said else None


def sections_danced(dance: Dance, lesson: Lesson, grouping: str, size: int) -> tuple[Section, ...]:
    """What the lesson's steps of that grouping make or dance in groups of that size."""
    letters = dict.fromkeys(
        letter
        for step in lesson.steps
        if step.grouping == grouping
        for letter in letters_in(dance, (*step.makes, *danced_in(step)))
    )
    return tuple(s for s in map(dance.sections.__getitem__, letters) if of_its_size(s.groups, size))


def joins_in_words(groups: Groups | None, size: int, over: int, many: int) -> str:
    """What one who is over does, as the one who comes `over`th to the group, of `many` in all."""
    if groups is None:
        return _("the {nth} pupil copies the {other}", nth=_nth(over), other=_nth(over - size))
    danced = places_danced(groups, many)
    joined = [place for n, place in enumerate(danced) if place in danced[:n]]
    place = joined[over - size - 1]
    roles = _roles_of(groups, place)
    if roles:
        return _("the {nth} pupil dances with the {roles}", nth=_nth(over), roles=listed(roles))
    return _("the {nth} pupil copies number {place}", nth=_nth(over), place=place)


def left_empty_in_words(groups: Groups | None, size: int) -> str:
    """Whose part nobody dances in a group of one fewer."""
    roles = groups.roles.items() if groups else ()
    if own := [role for role, places in roles if places == (size,)]:
        return _("the part of {roles}", roles=listed(own))
    return _("the part of number {number}", number=size)


def _roles_of(groups: Groups, place: int) -> list[str]:
    """The roles of several places that the place is in; a role of its own is its number."""
    return [role for role, places in groups.roles.items() if place in places and _many(role)]


def _many(role: str) -> bool:
    return role.endswith("s") and not any(letter.isdigit() for letter in role)


def a_group(size: int) -> str:
    """A group of so many, as a class calls it: a pair, a three."""
    return _(_GROUPS[size])


def _nth(number: int) -> str:
    return str(number) if counts_in_figures() else _ORDINALS[number - 1]
