"""What a dance starts from, each thing as large as the screen, to look at or read together."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import to_unit
from build_tools.pages.pieces.stimulus import ItemView, shown_items


@dataclass(frozen=True, slots=True)
class ShowView:
    """The page that shows."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    heading: str
    """What is shown."""
    look_for: str
    """What pupils look for."""
    items: tuple[ItemView, ...]
    """Everything there is to show, in order."""


def show_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/show.html."""
    path = f"units/{unit.slug}/show.html"
    title = _("What “{unit}” starts from", unit=unit.title)
    view = ShowView(
        frame=frame(bank, path, title, unit.stimulus.what, "stimulus_on_screen.js"),
        language=unit.language,
        unit=to_unit(unit),
        heading=title,
        look_for=unit.stimulus.look_for,
        items=shown_items(unit),
    )
    return Page(path, "stimulus_on_screen/stimulus_on_screen.html", view.frame.title, view)
