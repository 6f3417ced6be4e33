"""Never taught dance? What you do, what you don't, the first five minutes: one side of paper."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page

PATH = "start.html"


@dataclass(frozen=True, slots=True)
class StartView:
    """The page for who has never taught dance."""

    frame: Frame
    """What stands around the content."""
    heading: str
    """What the page is called."""
    learned: tuple[Link, ...]
    """The units whose dance is learned as it is: all of its moves are given."""
    find: Link
    """The way to the finder."""
    safety: Link
    """The way to the notes on safety."""


def start_page(bank: Bank) -> Page:
    """The page start.html."""
    heading = "Never taught dance? Start here"
    about = "What you do, what you don’t, the first five minutes, and what to do when it gets loud."
    learned = tuple(
        Link(unit.title, f"units/{unit.slug}/index.html")
        for unit in bank.units
        if unit.dance.motifs
        and all(motif.made_by == "teacher" for motif in unit.dance.motifs.values())
    )
    view = StartView(
        frame=frame(bank, PATH, heading, about, "print.js"),
        heading=heading,
        learned=learned,
        find=Link("Find a dance for your class", "index.html"),
        safety=Link("Keeping everyone safe", "safety.html"),
    )
    return Page(PATH, "start_here/start_here.html", view.frame.title, view)
