"""The safety page, from safety.md."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.notes import notes_html

PATH = "safety.html"


@dataclass(frozen=True, slots=True)
class SafetyView:
    """The safety page."""

    frame: Frame
    """What stands around the content."""
    title: str
    """As the bank’s safety.md says it."""
    notes: Markup
    """The notes on safety."""


def safety_page(bank: Bank) -> Page:
    """The page safety.html."""
    description = "What to check before and while a class dances, under your school's own policy."
    view = SafetyView(
        frame=frame(bank, PATH, bank.safety_title, description),
        title=bank.safety_title,
        notes=notes_html(bank.safety_notes, 2),
    )
    return Page(PATH, "safety/safety.html", view.frame.title, view)
