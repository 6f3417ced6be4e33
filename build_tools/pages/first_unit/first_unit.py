"""Your first unit: one page, ten minutes, from an empty folder to a lesson in print."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.pages.first_unit.worked_example import ANSWERS, LESSON, MOVES, REST, SLUG
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.views.words.open_places import MARK
from build_tools.views.words.plain_words import how_many

PATH = "first-unit.html"
START = f"python3 build_tools new {SLUG}"
WATCH = "python3 build_tools watch"
CHECK = f"python3 build_tools check content/units/{SLUG}"
EXPLAIN = "python3 build_tools explain one-formation-one-facing"
SITE = "python3 build_tools site"
TAKE_OUT = "draft: true"
LEFT_AT_LAST = "1 note"


@dataclass(frozen=True, slots=True)
class Typed:
    """What is asked, or stands there, and what the author writes."""

    asked: str
    """The question of the command, or the hint behind the mark."""
    words: str
    """What is typed there."""


@dataclass(frozen=True, slots=True)
class FirstUnitView:
    """The page for who writes a first unit."""

    frame: Frame
    """What stands around the content."""
    heading: str
    """What the page is called."""
    mark: str
    """The sign before every place that is still to write."""
    start: str
    """The command that starts a unit."""
    answers: tuple[Typed, ...]
    """What it asks, and what is typed."""
    places: str
    """How many places it leaves to write, in words."""
    watch: str
    """The command that shows the pages beside you."""
    in_lesson: str
    """How many of the places are in the lesson's file: what the bar says first."""
    lesson: tuple[Typed, ...]
    """The places in the lesson's file."""
    moves: tuple[Typed, ...]
    """The places in the unit's file that the lesson shows."""
    rest: tuple[Typed, ...]
    """The other places in the unit's file."""
    check: str
    """The command that says what needs mending."""
    left: str
    """What it says when nothing is left that has to be mended."""
    explain: str
    """The command that says what a rule wants."""
    take_out: str
    """The line that makes a unit a draft."""
    site: str
    """The command that publishes the bank."""
    slug: str
    """The folder of the unit."""
    writing: Link
    """The way to every field."""
    rules: Link
    """The way to the rules."""


def first_unit_page(bank: Bank) -> Page:
    """The page first-unit.html."""
    heading = "Your first unit"
    about = "Ten minutes from an empty folder to a lesson in print, word for word."
    view = FirstUnitView(
        frame=frame(bank, PATH, heading, about, "print.js"),
        heading=heading,
        mark=MARK,
        start=START,
        answers=_typed(ANSWERS),
        places=how_many(len((*LESSON, *MOVES, *REST)), "place"),
        watch=WATCH,
        in_lesson=f"{len(LESSON)} to think about in this lesson",
        lesson=_typed(LESSON),
        moves=_typed(MOVES),
        rest=_typed(REST),
        check=CHECK,
        left=LEFT_AT_LAST,
        explain=EXPLAIN,
        take_out=TAKE_OUT,
        site=SITE,
        slug=SLUG,
        writing=Link("How to write a unit", "writing.html"),
        rules=Link("The rules", "rules.html"),
    )
    return Page(PATH, "first_unit/first_unit.html", view.frame.title, view)


def _typed(pairs: tuple[tuple[str, str], ...]) -> tuple[Typed, ...]:
    return tuple(Typed(asked, words) for asked, words in pairs)
