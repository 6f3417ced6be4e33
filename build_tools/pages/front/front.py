"""The front page: a finder in one line, a few units with their pictures, and doors to all of them.

Nothing on it grows with the bank: what the finder knows is loaded when somebody types.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.shelved import Shelved
from build_tools.pages.pieces.unit_card import UnitCard
from build_tools.views.words.plain_words import how_many

PATH = "index.html"
FEW = 3
"""How many units the front page shows."""


@dataclass(frozen=True, slots=True)
class FrontView:
    """The front page."""

    frame: Frame
    """What stands around the content."""
    heading: str
    """What the page asks its reader to do."""
    lead: str
    """What this is, in two sentences."""
    start: Link
    """The way for who has never taught dance."""
    finding: str
    """The script that the finder fetches when somebody comes near it."""
    find_at: str
    """The folder of what that script loads."""
    chosen_few: tuple[UnitCard, ...]
    """A few units, for the youngest, the middle and the oldest."""
    doors: tuple[Link, ...]
    """Ways to look through all units."""
    how_many: str
    """How many units there are, in words."""


def front_page(bank: Bank, units: Sequence[Shelved]) -> Page:
    """The page index.html over the published `units`."""
    around = frame(bank, PATH, bank.name, bank.about, "finder.js")
    view = FrontView(
        frame=around,
        heading="Find a dance for your class",
        lead="Your class makes the dance, from a picture, a poem or a true story. You read out "
        "the words in bold. You need no training, and you never demonstrate.",
        start=Link("Never taught dance? Start here", "start.html"),
        finding="assets/js/finding.js",
        find_at="assets/find/",
        chosen_few=tuple(unit.card for unit in chosen_few(units)),
        doors=(
            Link("By topic", "browse/topics.html"),
            Link("By school year", "browse/years.html"),
            Link("By subject", "browse/subjects.html"),
        ),
        how_many=how_many(len(units), "unit"),
    )
    return Page(PATH, "front/front.html", around.title, view)


def chosen_few(units: Sequence[Shelved]) -> tuple[Shelved, ...]:
    """Of each third of the ages the unit whose picture loads soonest; one with a picture first."""
    by_age = sorted(units, key=lambda one: (one.found.ages, one.found.slug))
    if len(by_age) <= FEW:
        return tuple(by_age)
    size = len(by_age) / FEW
    thirds = [by_age[round(n * size) : round((n + 1) * size)] for n in range(FEW)]
    return tuple(
        min(third, key=lambda one: (one.picture_size == 0, one.picture_size)) for third in thirds
    )
