"""What a row of the score does, in words, and what a group of another size does."""

from __future__ import annotations

from build_tools.model.dance import Groups, Section
from build_tools.model.unit import Unit
from build_tools.movement.roles import places_danced
from build_tools.page_words.words import _, pgettext
from build_tools.views.dance.parts_over_counts import JOBS, RowSpan
from build_tools.views.lesson.odd_ones import holds_in, last_dances_alone, said_of
from build_tools.views.words.plain_words import listed, name_in_words


def doing_in_words(span: RowSpan) -> str:
    """What is danced, or the job of who is not dancing; what pupils decide says so."""
    if span.job:
        return _(JOBS[span.what])
    name = name_in_words(span.what)
    return _("{what}, as pupils choose", what=name) if span.is_open else name


def job_in_a_word(span: RowSpan) -> str:
    """The job of who is not dancing, as it has room in a drawing."""
    said = {
        "hold": pgettext("job of who waits", "hold"),
        "watch": pgettext("job of who waits", "watch"),
        "echo": pgettext("job of who waits", "echo"),
        "frame": pgettext("job of who waits", "frame"),
    }
    return said[span.what]


def odd_group_in_words(unit: Unit, section: Section) -> tuple[str, ...]:
    """What a group does that has one dancer more, or one fewer, than the section is written for.

    The author's own words where the unit's notes say it; nothing where nothing is to be said.
    """
    groups = section.groups
    if groups is None or groups.size < 2:
        return ()
    size = groups.size
    lines = []
    more = said_of(size + 1, (unit.notes,))
    if more and holds_in(unit.dance, section, more):
        lines.append(more)
    elif section.kind != "improvised":
        danced = places_danced(groups, size + 1)
        one = next(n for n, place in enumerate(danced, start=1) if place in danced[: n - 1])
        same = danced.index(danced[one - 1]) + 1
        lines.append(
            _(
                "A group of {size}: dancer {one} does what dancer {other} does.",
                size=size + 1,
                one=one,
                other=same,
            )
        )
    fewer = said_of(size - 1, (unit.notes,)) if size > 2 else None
    if fewer and holds_in(unit.dance, section, fewer):
        lines.append(fewer)
    elif size > 2 and last_dances_alone(section, size):
        lines.append(
            _(
                "A group of {size}: {part} is counted aloud; whoever answers it or comes after it "
                "watches the next group.",
                size=size - 1,
                part=_called(groups, size),
            )
        )
    return tuple(dict.fromkeys(lines))


def _called(groups: Groups, place: int) -> str:
    """The part of a place, by its role where it is the only one in it."""
    roles = [role for role, places in groups.roles.items() if places == (place,)]
    if roles:
        return _("the part of {roles}", roles=listed(roles))
    return _("the part of dancer {number}", number=place)
