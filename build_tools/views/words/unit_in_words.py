"""What a reader is told of a unit in a line: years, length, rights, whether it was tried."""

from __future__ import annotations

from build_tools.model.school_years import ages, in_words
from build_tools.model.unit import Ancestor, Unit
from build_tools.model.work import Work
from build_tools.page_words.words import N_, _, ngettext
from build_tools.views.words.days import day_in_words
from build_tools.views.words.licences import licence_in_words, may_be_changed
from build_tools.views.words.plain_words import minutes_in_words
from build_tools.views.words.punctuation import kept_together, sentence


def years_in_words(unit: Unit) -> str:
    """Years 3 and 4 (England), ages 7 to 9."""
    years = "; ".join(in_words(one) for one in unit.years)
    span = ages(unit.years)
    return (
        _("{years}, ages {first} to {last}", years=years, first=span[0], last=span[1])
        if span
        else years
    )


def lessons_in_words(unit: Unit) -> str:
    """6 lessons of 45 minutes; 6 lessons of 40 to 50 minutes; numbers stay with their nouns."""
    count = len(unit.lessons)
    lengths = sorted({lesson.minutes for lesson in unit.lessons})
    lessons = ngettext("{number} lesson", "{number} lessons", count)
    if lengths:
        last = minutes_in_words(lengths[-1])
        long = _("{least} to {most}", least=lengths[0], most=last) if len(lengths) > 1 else last
        lessons = _("{lessons} of {minutes}", lessons=lessons, minutes=long)
    return kept_together(lessons)


def tried_in_words(unit: Unit) -> str:
    """Honestly, whether it has been taught, with whom, where, and what was changed."""
    tried = unit.tried
    if not tried.taught:
        return _("This unit has not been taught yet. Expect to adjust it as you go.")
    where = f", {tried.where}" if tried.where else ""
    if tried.with_whom:
        taught = _(
            "This unit has been taught with {whom}{where}.", whom=tried.with_whom, where=where
        )
    else:
        taught = _("This unit has been taught{where}.", where=where)
    if not tried.changed:
        return taught
    return taught + " " + _("Changed afterwards: {what}", what=sentence(tried.changed))


def rights_in_words(unit: Unit) -> tuple[str, ...]:
    """Who issued it, which edition, its licence, and from what it was adapted."""
    issued = _(
        "Edition {edition}, issued by {publisher} on {day}.",
        edition=unit.edition,
        publisher=unit.publisher,
        day=day_in_words(unit.issued),
    )
    by = " " + _("Written by {name}.", name=unit.credit) if unit.credit else ""
    free = (
        N_("Free to share and change under {licence}.")
        if may_be_changed(unit.licence)
        else N_("Free to share, unchanged, under {licence}.")
    )
    lines = [f"{issued}{by}", _(free, licence=licence_in_words(unit.licence))]
    if unit.adapted_from:
        p = unit.adapted_from
        adapted = _("Adapted from {unit}.", unit=_ancestor(p))
        lines.append(f"{adapted}{_changed(p.changes)}")
        lines += [_("Before that, from {unit}.", unit=_ancestor(one)) for one in p.earlier]
    return tuple(lines)


def item_credit(item: Work) -> str:
    """Who made a thing of the stimulus, where it comes from, and its licence."""
    made = _("{title}, by {maker}.", title=item.title, maker=item.by)
    credit = f"{made} {sentence(item.source)}{_changed(item.changes)}"
    return f"{credit} {licence_in_words(item.licence)}."


def _ancestor(one: Ancestor) -> str:
    by = _(", written by {name}", name=one.credit) if one.credit else ""
    return _(
        "{title}, edition {edition}, by {publisher}{writer}, {licence}",
        title=one.title,
        edition=one.edition,
        publisher=one.publisher,
        writer=by,
        licence=licence_in_words(one.licence),
    )


def _changed(changes: str | None) -> str:
    return " " + _("Changed: {what}", what=sentence(changes)) if changes else ""
