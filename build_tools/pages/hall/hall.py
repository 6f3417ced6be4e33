"""What the two views for the hall have in common: their frame, groups in words, ways between."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Link
from build_tools.views.lesson.grouping_in_words import grouping_in_words
from build_tools.views.words.punctuation import capital


@dataclass(frozen=True, slots=True)
class Ways:
    """The ways from a view for the hall to the others of the same lesson."""

    lesson: Link
    """To the page that is read in the morning."""
    card: Link
    """The card for the hand."""
    wall: Link
    """To what pupils see, large."""


def ways(lesson: Lesson) -> Ways:
    """The ways between the views of one lesson."""
    page = f"lesson-{lesson.number}"
    return Ways(
        Link(
            _("Lesson {number}: {title}", number=lesson.number, title=lesson.title), f"{page}.html"
        ),
        Link(_("Card"), f"{page}-card.html"),
        Link(_("On the wall"), f"{page}-wall.html"),
    )


def groups_words(grouping: str) -> str:
    """A step's grouping as pupils and a teacher in a hurry read it: In pairs."""
    return capital(grouping_in_words(grouping))
