"""What a reader is told of a unit in a line: years, length, rights, whether it was tried."""

from __future__ import annotations

from build_tools.model.school_years import ages, in_words
from build_tools.model.unit import Ancestor, Unit
from build_tools.model.work import Work
from build_tools.views.words.days import day_in_words
from build_tools.views.words.licences import licence_in_words, may_be_changed
from build_tools.views.words.plain_words import minutes_in_words
from build_tools.views.words.punctuation import kept_together, sentence


def years_in_words(unit: Unit) -> str:
    """Years 3 and 4 (England), ages 7 to 9."""
    years = "; ".join(in_words(one) for one in unit.years)
    span = ages(unit.years)
    return f"{years}, ages {span[0]} to {span[1]}" if span else years


def lessons_in_words(unit: Unit) -> str:
    """6 lessons of 45 minutes; 6 lessons of 40 to 50 minutes; numbers stay with their nouns."""
    count = len(unit.lessons)
    lengths = sorted({lesson.minutes for lesson in unit.lessons})
    lessons = f"{count} {'lesson' if count == 1 else 'lessons'}"
    if len(lengths) > 1:
        lessons += f" of {lengths[0]} to {minutes_in_words(lengths[-1])}"
    elif lengths:
        lessons += f" of {minutes_in_words(lengths[0])}"
    return kept_together(lessons)


def tried_in_words(unit: Unit) -> str:
    """Honestly, whether it has been taught, with whom, where, and what was changed."""
    tried = unit.tried
    if not tried.taught:
        return "This unit has not been taught yet. Expect to adjust it as you go."
    with_whom = f" with {tried.with_whom}" if tried.with_whom else ""
    where = f", {tried.where}" if tried.where else ""
    changed = f" Changed afterwards: {sentence(tried.changed)}" if tried.changed else ""
    return f"This unit has been taught{with_whom}{where}.{changed}"


def rights_in_words(unit: Unit) -> tuple[str, ...]:
    """Who issued it, which edition, its licence, and from what it was adapted."""
    by = f" Written by {unit.credit}." if unit.credit else ""
    lines = [
        f"Edition {unit.edition}, issued by {unit.publisher} on {day_in_words(unit.issued)}.{by}",
        f"Free to share{' and change' if may_be_changed(unit.licence) else ', unchanged,'} under "
        f"{licence_in_words(unit.licence)}.",
    ]
    if unit.adapted_from:
        p = unit.adapted_from
        changed = f" Changed: {sentence(p.changes)}" if p.changes else ""
        lines.append(f"Adapted from {_ancestor(p)}.{changed}")
        lines += [f"Before that, from {_ancestor(one)}." for one in p.earlier]
    return tuple(lines)


def item_credit(item: Work) -> str:
    """Who made a thing of the stimulus, where it comes from, and its licence."""
    changes = f" Changed: {sentence(item.changes)}" if item.changes else ""
    credit = f"{item.title}, by {item.by}. {sentence(item.source)}{changes}"
    return f"{credit} {licence_in_words(item.licence)}."


def _ancestor(one: Ancestor) -> str:
    by = f", written by {one.credit}" if one.credit else ""
    licence = licence_in_words(one.licence)
    return f"{one.title}, edition {one.edition}, by {one.publisher}{by}, {licence}"
