"""What the bank teaches, for advisers: what is met by year, what is missing, what comes back.

The page grows with the bank's words and not with its units: of units it names the first few.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from build_tools.model.bank import Bank
from build_tools.model.school_years import in_words
from build_tools.model.unit import SchoolYears
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.picture import picture
from build_tools.pages.what_is_taught.taught_views import (
    BandRow,
    ChainView,
    CountRow,
    CountTable,
    LicenceRow,
    MissingYear,
    NationView,
    RepeatRow,
    RepeatTable,
    SomeUnits,
)
from build_tools.views.diagrams.taught_marks import taught_marks
from build_tools.views.teaching.by_year import Counted, NationCovers, by_year
from build_tools.views.teaching.chains import chains, named_pairs, without_circles
from build_tools.views.teaching.covers import Covers, YearOf
from build_tools.views.teaching.editions import bands
from build_tools.views.teaching.repeats import repeats
from build_tools.views.teaching.words_said import HEADINGS_SAID, word_said
from build_tools.views.words.days import day_in_words
from build_tools.views.words.licences import licence_in_words
from build_tools.views.words.plain_words import how_many, listed
from build_tools.views.words.punctuation import capital
from build_tools.views.words.topics import topics_in_words

PATH = "what-is-taught.html"
FEW = 4
"""How many units are named where more are counted."""
ROWS = 12
"""How many rows a list of what comes back has, and how many chains are shown."""
LONG = 10
"""How many units of one chain are named."""
TOPICS = 20
"""How many topics that nobody takes up are named."""


@dataclass(frozen=True, slots=True)
class TaughtView:
    """The page on what the bank teaches."""

    frame: Frame
    """What stands around the content."""
    style: str
    """The page's own style sheet."""
    number: str
    """How many units are published, in words."""
    as_of: str
    """The day to which ages are counted."""
    nations: tuple[NationView, ...]
    """What is met, a nation at a time."""
    topics_left: str
    """Which topics no unit takes up: how many, and the first few."""
    most: str
    """How many rows a table of what comes back has at most."""
    repeats: tuple[RepeatTable, ...]
    """What comes back in several units."""
    chains: tuple[ChainView, ...]
    """Units that follow one another."""
    chains_said: str
    """How many units are in no chain, and what is not shown."""
    bands: tuple[BandRow, ...]
    """Units by the age of their editions."""
    licences: tuple[LicenceRow, ...]
    """Units and their parts by licence."""


def taught_page(bank: Bank, units: Iterable[Covers]) -> Page:
    """The page what-is-taught.html over the published `units`."""
    known = sorted(units, key=lambda one: (one.title.lower(), one.slug))
    about = "What each school year meets, what is missing, what comes back."
    around = frame(bank, PATH, "What the bank teaches", about)
    shown, left = _chains(known)
    view = TaughtView(
        frame=around,
        style=f"{around.to_root}assets/css/what_is_taught.css",
        number=how_many(len(known), "published unit"),
        as_of=day_in_words(bank.as_of),
        nations=tuple(_nation(one) for one in by_year(known)),
        topics_left=_topics_left(bank, known),
        most=str(ROWS),
        repeats=_repeats(bank, known),
        chains=shown,
        chains_said=left,
        bands=tuple(BandRow(one.name, _some(one.units)) for one in bands(known, bank.as_of)),
        licences=_licences(known),
    )
    return Page(PATH, "what_is_taught/what_is_taught.html", view.frame.title, view)


def _nation(found: NationCovers) -> NationView:
    name = found.nation.lower().replace(" ", "-")
    years = tuple(_year(year) for year in found.years)
    short = tuple(year for _, year in found.years)
    tables = [_table(found, heading, rows, name, years) for heading, rows in found.headings.items()]
    links = CountTable(
        heading="Curriculum links",
        anchor=f"at-{name}-links",
        about="How many units say that they meet each published text. The texts are quoted as the "
        "units quote them.",
        years=short,
        rows=tuple(
            CountRow(f"{capital(one.link.stage)}: {one.link.says}", _numbers(one.units))
            for one in found.links
        ),
        picture=None,
    )
    return NationView(
        heading=found.nation,
        anchor=f"at-{name}",
        tables=(*tables, *((links,) if links.rows else ())),
        missing=tuple(_missing(found, place, year) for place, year in enumerate(years)),
    )


def _table(
    found: NationCovers, heading: str, rows: Sequence[Counted], name: str, years: tuple[str, ...]
) -> CountTable:
    said, about = HEADINGS_SAID[heading]
    marks = [(word_said(heading, row.word), row.units) for row in rows]
    named = [(short, year) for (_, short), year in zip(found.years, years, strict=True)]
    return CountTable(
        heading=said,
        anchor=f"at-{name}-{heading}",
        about=about,
        years=tuple(short for short, _ in named),
        rows=tuple(CountRow(word, _numbers(units)) for word, units in marks),
        picture=picture(taught_marks(f"{said}, {found.nation}", named, marks)),
    )


def _numbers(units: Iterable[int]) -> tuple[str, ...]:
    return tuple(map(str, units))


def _missing(found: NationCovers, place: int, year: str) -> MissingYear:
    missing = found.missing(place)
    lines = tuple(
        f"{HEADINGS_SAID[heading][0]}: {listed([word_said(heading, w) for w in words])}"
        for heading, words in missing.items()
        if words
    )
    if not found.units[place]:
        lines = ("Everything: no unit is for this year",)
    return MissingYear(f"{year}: {how_many(found.units[place], 'unit')}", lines)


def _year(year: YearOf) -> str:
    """A school year without its nation, which stands above."""
    words = in_words(SchoolYears(year[0], (year[1],)))
    return capital(words.removesuffix(f" ({year[0]})"))


def _topics_left(bank: Bank, units: Sequence[Covers]) -> str:
    taken = {topic for unit in units for topic in unit.topics}
    left = [topic for topic in sorted(bank.topics) if topic not in taken]
    if not left:
        return "Every topic of the bank’s list is taken up by a unit."
    named = topics_in_words(bank, left[:TOPICS])
    more = f", and {len(left) - TOPICS} more" if len(left) > TOPICS else ""
    return f"No unit takes up {len(left)} of the bank’s {len(bank.topics)} topics: {named}{more}."


def _repeats(bank: Bank, units: Sequence[Covers]) -> tuple[RepeatTable, ...]:
    kinds = (
        ("Topics", lambda one: [topics_in_words(bank, [topic]) for topic in one.topics]),
        ("Devices", lambda one: one.words["devices"]),
        ("Forms", lambda one: [word_said("forms", word) for word in one.words["forms"]]),
    )
    return tuple(
        RepeatTable(
            heading,
            f"at-again-{heading.lower()}",
            tuple(RepeatRow(one.what, _some(one.units)) for one in repeats(units, has, ROWS)),
        )
        for heading, has in kinds
    )


def _chains(units: Sequence[Covers]) -> tuple[tuple[ChainView, ...], str]:
    by_slug = {unit.slug: unit for unit in units}
    pairs = without_circles(named_pairs(units))
    found = chains(pairs, ROWS)
    shown = {pair for chain in found for pair in pairwise(chain)}
    alone = [unit for unit in units if all(unit.slug not in pair for pair in pairs)]
    said = [f"Units in no chain: {len(alone)} of {len(units)}."]
    if left := len(pairs) - len(shown):
        said.append(f"Steps from one unit to another in no chain shown here: {left}.")
    views = tuple(
        ChainView(
            tuple(_link(by_slug[slug]) for slug in chain[:LONG]),
            f"{how_many(len(chain) - LONG, 'more unit')}" if len(chain) > LONG else "",
        )
        for chain in found
    )
    return views, " ".join(said)


def _licences(units: Sequence[Covers]) -> tuple[LicenceRow, ...]:
    under: Mapping[str, list[Covers]] = {unit.licence: [] for unit in units}
    for unit in units:
        under[unit.licence].append(unit)
    parts = Counter(licence for unit in units for licence in unit.parts)
    return tuple(
        LicenceRow(
            licence_in_words(licence),
            _some(under.get(licence, [])),
            str(parts[licence]) if parts[licence] else "none",
        )
        for licence in sorted({*under, *parts})
    )


def _some(units: Sequence[Covers]) -> SomeUnits:
    more = len(units) - FEW
    return SomeUnits(
        str(len(units)) if units else "none",
        tuple(_link(unit) for unit in units[:FEW]),
        f"and {more} more" if more > 0 else "",
    )


def _link(unit: Covers) -> Link:
    return Link(unit.title, f"units/{unit.slug}/index.html")
