"""The front page: the finder over a complete list of units."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.school_years import in_words
from build_tools.model.unit import SchoolYears, Unit
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.diagrams.small_line import small_line
from build_tools.views.words.plain_words import listed, name_in_words
from build_tools.views.words.topics import topics_in_words
from build_tools.views.words.unit_in_words import lessons_in_words, years_in_words

PATH = "index.html"


@dataclass(frozen=True, slots=True)
class Option:
    """One choice in a list of the finder."""

    value: str
    """What the finder compares."""
    words: str
    """What the reader sees."""


@dataclass(frozen=True, slots=True)
class UnitEntry:
    """One unit in the list."""

    title: str
    """The words of the link to it."""
    href: str
    """Where its page is."""
    summary: str
    """What the dance will be."""
    years: str
    """Its school years and ages, in words."""
    length: str
    """How many lessons of how many minutes."""
    topics: str
    """Its topics, in words."""
    subjects: str
    """The subjects it links to, in words."""
    publisher: str
    """Who issued it, where that is somebody else than who keeps the bank; else empty."""
    line: Picture
    """The dance on one line."""
    search: str
    """Every word it may be found by, near words of its topics among them."""
    year_values: str
    """The values of its years, as in the finder's list, with spaces between."""
    longest: int
    """The minutes of its longest lesson."""
    spaces: tuple[Labelled, ...]
    """How it is danced in each space; the label is the finder's value."""


@dataclass(frozen=True, slots=True)
class FrontView:
    """The front page."""

    frame: Frame
    """What stands around the content."""
    heading: str
    """What the page asks its reader to do."""
    lead: str
    """One sentence of what this is."""
    years: tuple[Option, ...]
    """The school years that units are written for."""
    spaces: tuple[Option, ...]
    """The spaces that every unit is written for."""
    units: tuple[UnitEntry, ...]
    """All published units, in the order of their titles."""


_SPACES = (
    Option("hall", "A hall"),
    Option("half-hall", "Half a hall"),
    Option("classroom", "A classroom"),
)


@dataclass(frozen=True, slots=True)
class FrontUnit:
    """What the front page says of one unit: it can be kept without the unit."""

    order: tuple[str, str]
    """What the list is sorted by."""
    entry: UnitEntry
    """Its place in the list."""
    years: tuple[Option, ...]
    """The school years it is written for."""


def front_unit(bank: Bank, unit: Unit) -> FrontUnit:
    """What the front page says of `unit`."""
    return FrontUnit((unit.title.lower(), unit.slug), _entry(bank, unit), _years(unit))


def front_page(bank: Bank, units: Iterable[FrontUnit]) -> Page:
    """The page index.html over the published `units`."""
    units = sorted(units, key=lambda one: one.order)
    found = {option.value: option for one in units for option in one.years}
    lead = "Dance your class makes itself, over a few lessons, from something worth dancing about."
    view = FrontView(
        frame=frame(bank, PATH, bank.name, bank.about, "finder.js"),
        heading="Find a dance unit",
        lead=f"{lead} You need no dance training, and you never have to demonstrate.",
        years=tuple(found[value] for value in sorted(found, key=_order)),
        spaces=_SPACES,
        units=tuple(one.entry for one in units),
    )
    return Page(PATH, "front/front.html", view.frame.title, view)


def _entry(bank: Bank, unit: Unit) -> UnitEntry:
    return UnitEntry(
        title=unit.title,
        href=f"units/{unit.slug}/index.html",
        summary=unit.summary,
        years=years_in_words(unit),
        length=lessons_in_words(unit),
        topics=topics_in_words(bank, unit.topics),
        subjects=listed(unit.subjects),
        publisher="" if unit.publisher == bank.name else unit.publisher,
        line=picture(small_line(unit.dance, f"line-{unit.slug}")),
        search=" ".join(_search_words(bank, unit)),
        year_values=" ".join(_value(y.nation, one) for y in unit.years for one in y.years),
        longest=max((lesson.minutes for lesson in unit.lessons), default=0),
        spaces=(
            Labelled("hall", unit.space.hall),
            Labelled("half-hall", unit.space.half_hall),
            Labelled("classroom", unit.space.classroom),
        ),
    )


def _search_words(bank: Bank, unit: Unit) -> tuple[str, ...]:
    words = [unit.title, *(name_in_words(t) for t in unit.topics)]
    for topic in unit.topics:
        if topic in bank.topics:
            words += bank.topics[topic].also
    words += [*unit.subjects, unit.summary]
    return tuple(dict.fromkeys(words))


def _years(unit: Unit) -> tuple[Option, ...]:
    return tuple(
        Option(_value(y.nation, one), in_words(SchoolYears(y.nation, (one,))))
        for y in unit.years
        for one in y.years
    )


def _value(nation: str, year: str) -> str:
    return f"{nation.lower().replace(' ', '-')}-{year.lower()}"


def _order(value: str) -> tuple[str, int, str]:
    nation, _, year = value.rpartition("-")
    digits = "".join(c for c in year if c.isdigit())
    return (nation, int(digits or 0) + (20 if year.startswith("s") else 0), year)
