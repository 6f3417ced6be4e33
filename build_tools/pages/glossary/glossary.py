"""The words page: the words of dance in plain words, under the part of dance they belong to."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank, Word
from build_tools.movement.effort import EFFORT_ACTIONS, SOURCE
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.page import Page
from build_tools.views.words.plain_words import listed

PATH = "words.html"
_PARTS = {
    "actions": "What the body does",
    "space": "Where it goes",
    "dynamics": "How it is done",
    "relationships": "With whom",
    "making": "Making a dance",
    "time": "Counts and time",
    "performing": "How well it is danced",
    "lesson": "In a lesson",
}


@dataclass(frozen=True, slots=True)
class WordView:
    """One word."""

    word: str
    """A word of the trade, as teachers say it."""
    plain: str
    """What it means in plain words."""
    in_class: str | None
    """What you might say to pupils."""


@dataclass(frozen=True, slots=True)
class WordGroup:
    """The words of one part of dance."""

    heading: str
    """The part of dance."""
    anchor: str
    """Its name in links."""
    words: tuple[WordView, ...]
    """Its words, in the order of the alphabet."""
    credit: str | None
    """Whose words some of them are: which, and where they were published."""


@dataclass(frozen=True, slots=True)
class WordsView:
    """The words page."""

    frame: Frame
    """What stands around the content."""
    groups: tuple[WordGroup, ...]
    """The words under their parts of dance."""


def words_page(bank: Bank) -> Page:
    """The page words.html."""
    groups = [
        _group(bank, part, heading) for part, heading in (*_PARTS.items(), (None, "Other words"))
    ]
    view = WordsView(
        frame=frame(bank, PATH, "Words of dance", "The words of dance, each in plain words."),
        groups=tuple(group for group in groups if group.words),
    )
    return Page(PATH, "glossary/glossary.html", view.frame.title, view)


def _group(bank: Bank, part: str | None, heading: str) -> WordGroup:
    words = _words(bank, part)
    of_effort = [one.word for one in words if one.word in EFFORT_ACTIONS]
    credit = f"Source of {listed(of_effort)}: {SOURCE}" if of_effort else None
    return WordGroup(heading, f"words-{part}", words, credit)


def _words(bank: Bank, part: str | None) -> tuple[WordView, ...]:
    found: list[Word] = [word for word in bank.words.values() if word.under == part]
    found.sort(key=lambda word: (word.word.casefold(), word.word))
    return tuple(WordView(word.word, word.plain, word.in_class) for word in found)
