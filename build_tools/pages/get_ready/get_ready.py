"""Get ready: what to show, what to collect, what pupils need first, and how the unit works."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.page_words.words import _, ngettext
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import READY, Door, doors, said, to_unit
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.stimulus import ItemView, shown_items
from build_tools.paths.hall import KNOWN_HALLS, Hall
from build_tools.views.dance.room_to_dance import unit_room
from build_tools.views.lesson.collecting import things_to_collect
from build_tools.views.words.halls_worked_out import halls_from_in_words
from build_tools.views.words.minutes_in_teams_said import minutes_in_teams_said
from build_tools.views.words.plain_words import listed, minutes_in_words
from build_tools.views.words.punctuation import kept_together, sentence
from build_tools.views.words.room_said import room_in_words


@dataclass(frozen=True, slots=True)
class ReadyView:
    """The page Get ready."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    heading: str
    """What the page is called."""
    stimulus: tuple[Labelled, ...]
    """What to show, where, how long, what to look for."""
    content_note: str | None
    """Anything in it that could upset some pupils."""
    items: tuple[ItemView, ...]
    """The pictures and other things of the stimulus, with credits."""
    collect: tuple[Labelled, ...]
    """What to collect; the words say which lessons use it."""
    wear: str
    """Clothes and feet, in the author’s words."""
    without_props: str
    """How to do without."""
    skills: tuple[Labelled, ...]
    """What pupils need first, each with two minutes that bring it in."""
    spaces: tuple[Labelled, ...]
    """The hall, half a hall, and a classroom."""
    halls_from: str
    """What the halls are worked out from, and of which parts that cannot be known."""
    notes: Markup
    """The notes on how the unit works."""
    doors: tuple[Door, ...]
    """The unit's other pages."""


def ready_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/ready.html."""
    path = f"units/{unit.slug}/{READY.href}"
    s, here = unit.stimulus, said(READY)
    view = ReadyView(
        frame=frame(bank, path, f"{here.words}: {unit.title}", here.about),
        language=unit.language,
        unit=to_unit(unit),
        heading=here.words,
        stimulus=(
            Labelled(_("What it is"), s.what),
            Labelled(_("Show"), s.show),
            Labelled(_("Where"), s.where),
            Labelled(_("How long"), kept_together(minutes_in_words(s.minutes))),
            Labelled(_("Pupils look for"), s.look_for),
        ),
        content_note=s.content_note,
        items=shown_items(unit),
        collect=tuple(
            Labelled(thing.what, _lessons(thing.lessons, len(unit.lessons)))
            for thing in things_to_collect(unit)
        ),
        wear=unit.kit.wear,
        without_props=unit.kit.without_props,
        skills=tuple(Labelled(skill.skill, skill.catch_up) for skill in unit.skills),
        spaces=(
            Labelled(_("In a hall"), unit.space.hall),
            *_halls(unit),
            Labelled(_("In a classroom"), unit.space.classroom),
        ),
        halls_from=halls_from_in_words(unit.dance),
        notes=notes_html(unit.notes, 2),
        doors=doors(unit, READY),
    )
    return Page(path, "get_ready/get_ready.html", view.frame.title, view)


_HALLS = (Hall(18.0, 10.0), Hall(15.0, 10.0), Hall(12.0, 9.0), KNOWN_HALLS["half"])
"""Halls that primary schools have, metres along the front first; common practice, no source."""


def _halls(unit: Unit) -> Iterator[Labelled]:
    """What the usual class does in each hall, halls with the same answer together."""
    sizes: dict[str, list[str]] = {}
    for hall in _HALLS:
        sizes.setdefault(_in_hall(unit, hall), []).append(
            _("{width} by {depth}", width=f"{hall.width:g}", depth=f"{hall.depth:g}")
        )
    for words, halls in sizes.items():
        where = _(
            "{pupils} pupils in {halls} metres", pupils=USUAL_CLASS, halls=listed(halls, "or")
        )
        yield Labelled(where, words)
    if unit_room(unit, USUAL_CLASS, KNOWN_HALLS["half"]).found:
        # the sum knows the floor; who does what meanwhile only the author knows
        yield Labelled(_("In half a hall, as the unit has it"), sentence(unit.space.half_hall))


def _in_hall(unit: Unit, hall: Hall) -> str:
    """Who dances at once, and what that does to the minutes; the author's own way where none is
    worked out in half a hall, with it: two answers one below the other read as two ways.
    """
    room = unit_room(unit, USUAL_CLASS, hall)
    own_way = not room.found and hall == KNOWN_HALLS["half"]
    words = room_in_words(room, own_way=own_way)
    besides = sentence(unit.space.half_hall) if own_way else minutes_in_teams_said(unit, room)
    return f"{words} {besides}".rstrip()


def _lessons(numbers: tuple[int, ...], of: int) -> str:
    if not numbers:
        return ""
    if len(numbers) == of > 1:
        return _("for every lesson")
    which = listed([str(n) for n in numbers])
    return ngettext("for lesson {which}", "for lessons {which}", len(numbers), which=which)
