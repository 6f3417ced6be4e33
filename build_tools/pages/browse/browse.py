"""Looking through units by topic, school year and subject: static pages that need no script.

A list of units is cut into pages of a few dozen, so that no page grows with the bank.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.shelved import Shelved
from build_tools.pages.pieces.unit_card import UnitCard, moved
from build_tools.views.finding.order_of_years import order_of_year
from build_tools.views.words.plain_words import how_many
from build_tools.views.words.topics import topics_in_words

A_PAGE = 24
"""How many units a page lists."""


@dataclass(frozen=True, slots=True)
class Shelf:
    """One way to look through units."""

    name: str
    """What the address of one of its choices begins with, such as topic."""
    plural: str
    """The address of all its choices."""
    heading: str
    """What it is called."""


TOPICS = Shelf("topic", "topics", "By topic")
YEARS = Shelf("year", "years", "By school year")
SUBJECTS = Shelf("subject", "subjects", "By subject")
SHELVES = (TOPICS, YEARS, SUBJECTS)


@dataclass(frozen=True, slots=True)
class ChoiceView:
    """One topic, year or subject."""

    words: str
    """What it is called."""
    href: str
    """Where its units are."""
    units: str
    """How many there are, in words."""


@dataclass(frozen=True, slots=True)
class BrowseView:
    """A page of choices, or of units."""

    frame: Frame
    """What stands around the content."""
    heading: str
    """What is listed."""
    up: tuple[Link, ...]
    """The ways to look through units, and back to all choices."""
    choices: tuple[ChoiceView, ...]
    """Topics, years or subjects; empty on a page of units."""
    units: tuple[UnitCard, ...]
    """The units of this page; empty on a page of choices."""
    place: str | None
    """Which page of how many; None where there is one."""
    turn: tuple[Link, ...]
    """To the page before and the one after."""


def browse_pages(bank: Bank, units: Sequence[Shelved]) -> list[Page]:
    """Every page below browse/."""
    in_order = sorted(
        units, key=lambda one: (one.found.ages, one.found.title.lower(), one.found.slug)
    )
    found: list[Page] = []
    for shelf, labels, sets in _shelves(bank, in_order):
        found.append(_choices_page(bank, shelf, labels, sets))
        for name in labels:
            found += _unit_pages(bank, shelf, name, labels[name], sets[name])
    return found


def _shelves(
    bank: Bank, units: Sequence[Shelved]
) -> Iterator[tuple[Shelf, Mapping[str, str], Mapping[str, list[Shelved]]]]:
    topics: dict[str, list[Shelved]] = defaultdict(list)
    for unit in units:
        for topic in unit.found.topics:
            topics[topic].append(unit)
    words = {topic: topics_in_words(bank, [topic]) for topic in sorted(topics)}
    yield TOPICS, words, topics
    for shelf in (YEARS, SUBJECTS):
        labels: dict[str, str] = {}
        sets: dict[str, list[Shelved]] = defaultdict(list)
        for unit in units:
            for value in unit.found.values[shelf.name]:
                labels[value.name] = value.words
                sets[value.name].append(unit)
        ordered = sorted(labels, key=order_of_year if shelf is YEARS else str)
        yield shelf, {name: labels[name] for name in ordered}, sets


def _up(here: Shelf | None) -> tuple[Link, ...]:
    return tuple(
        Link(shelf.heading, f"{shelf.plural}.html") for shelf in SHELVES if shelf is not here
    )


def _choices_page(
    bank: Bank, shelf: Shelf, labels: Mapping[str, str], sets: Mapping[str, Sequence[Shelved]]
) -> Page:
    path = f"browse/{shelf.plural}.html"
    view = BrowseView(
        frame=frame(bank, path, f"All units {shelf.heading.lower()}", bank.about),
        heading=f"All units {shelf.heading.lower()}",
        up=_up(shelf),
        choices=tuple(
            ChoiceView(words, f"{shelf.name}-{name}.html", how_many(len(sets[name]), "unit"))
            for name, words in labels.items()
        ),
        units=(),
        place=None,
        turn=(),
    )
    return Page(path, "browse/browse.html", view.frame.title, view)


def _unit_pages(
    bank: Bank, shelf: Shelf, name: str, words: str, units: Sequence[Shelved]
) -> Iterator[Page]:
    cut = [units[n : n + A_PAGE] for n in range(0, len(units), A_PAGE)]
    for number, some in enumerate(cut, start=1):
        path = f"browse/{_file(shelf, name, number)}"
        turn = [
            Link(said, _file(shelf, name, other))
            for said, other in (("The page before", number - 1), ("The next page", number + 1))
            if 1 <= other <= len(cut)
        ]
        title = words if number == 1 else f"{words}, page {number}"
        view = BrowseView(
            frame=frame(bank, path, f"Units: {title}", f"Units of class dance: {words}."),
            heading=words,
            up=_up(None),
            choices=(),
            units=tuple(moved(unit.card, "../") for unit in some),
            place=f"Page {number} of {len(cut)}" if len(cut) > 1 else None,
            turn=tuple(turn),
        )
        yield Page(path, "browse/browse.html", view.frame.title, view)


def _file(shelf: Shelf, name: str, number: int) -> str:
    return f"{shelf.name}-{name}{'' if number == 1 else f'-{number}'}.html"
