"""For advisers: the door to writing, checking and sharing units."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import Door

PATH = "advisers.html"
_DOORS = (
    Door(
        "What the bank teaches",
        "what-is-taught.html",
        "What each year meets, what is missing and what comes back; ages and licences.",
    ),
    Door("Your first unit", "first-unit.html", "Ten minutes to a lesson in print, word for word."),
    Door("How to write a unit", "writing.html", "Every field of every file, with examples."),
    Door("The rules", "rules.html", "What is checked in a unit, why, and whose advice it is."),
)


@dataclass(frozen=True, slots=True)
class AdvisersView:
    """The advisers' door."""

    frame: Frame
    """What stands around the content."""
    heading: str
    """What the page is called."""
    doors: tuple[Door, ...]
    """The advisers' pages."""


def advisers_page(bank: Bank) -> Page:
    """The page advisers.html."""
    about = "Writing, checking and sharing units."
    view = AdvisersView(frame(bank, PATH, "For advisers", about), "For advisers", _DOORS)
    return Page(PATH, "advisers/advisers.html", view.frame.title, view)
