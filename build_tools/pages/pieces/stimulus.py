"""What a dance starts from, as pages show it: pictures, and words with their lines as written."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.unit import Unit
from build_tools.model.work import Work
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Link
from build_tools.pages.pieces.unit_card import is_picture, is_recording
from build_tools.pages.pieces.verse import verse, verse_of
from build_tools.views.words.unit_in_words import item_credit


@dataclass(frozen=True, slots=True)
class ItemView:
    """One picture, sound, poem or object of the stimulus."""

    anchor: str
    """Its place on a page."""
    title: str
    """What the thing is called by whoever made it."""
    src: str | None
    """The file of a picture or recording, relative to the page; None where there is none."""
    recorded: bool
    """Whether the file is a recording."""
    text_version: str | None
    """What it shows or says, in words."""
    stanzas: tuple[tuple[str, ...], ...]
    """The lines of a poem; for other words, one paragraph of one line."""
    credit: str
    """Who made it, where it comes from, and its licence."""


def shown_items(unit: Unit) -> tuple[ItemView, ...]:
    """Everything of the unit's stimulus, in order."""
    return tuple(_item(unit, number, item) for number, item in enumerate(unit.stimulus.items))


def ways_to_show(unit: Unit) -> tuple[Link, ...]:
    """To the first picture full screen, and to the first thing that is in words alone."""
    found: dict[bool, Link] = {}
    for number, item in enumerate(unit.stimulus.items):
        if is_recording(item):
            continue
        says = _("Show the picture") if is_picture(item) else _("Read “{title}”", title=item.title)
        found.setdefault(is_picture(item), Link(says, f"show.html#{_anchor(number)}"))
    return tuple(found.values())


def _anchor(number: int) -> str:
    return f"item-{number + 1}"


def _item(unit: Unit, number: int, item: Work) -> ItemView:
    text = " ".join(item.text_version.split()) if item.text_version else None
    lines = () if item.file else verse(unit.notes, item.title) or verse_of(item)
    return ItemView(
        anchor=_anchor(number),
        title=item.title,
        src=item.file,
        recorded=is_recording(item),
        text_version=text,
        stanzas=lines or (((text,),) if text and not item.file else ()),
        credit=item_credit(item),
    )
