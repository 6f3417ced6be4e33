"""A year plan as a page: to read and print, and by its script to change by hand."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.planning.calendar import lesson_days
from build_tools.planning.problem import LINKS, Word
from build_tools.planning.year_plan import YearPlan, year_said
from build_tools.views.teaching.words_said import HEADINGS_SAID, word_said
from build_tools.views.words.days import day_in_words
from build_tools.views.words.plain_words import how_many
from build_tools.views.words.punctuation import capital

PATH = "plan.html"


@dataclass(frozen=True, slots=True)
class DayView:
    """One lesson on its day."""

    lesson: str
    """Which lesson it is."""
    day: str
    """Its day in words."""


@dataclass(frozen=True, slots=True)
class SlotView:
    """One slot of the year."""

    number: str
    """Its number in the year, from 1."""
    term: str
    """The term it lies in."""
    room: str
    """How many lessons it has."""
    unit: Link | None
    """The unit in it; None where it stays empty."""
    lessons: str
    """How many lessons the unit takes; empty where there is none."""
    days: tuple[DayView, ...]
    """Each lesson on its day; none where no day is given."""


@dataclass(frozen=True, slots=True)
class HasRow:
    """What the year has under one heading."""

    heading: str
    """Actions, space, dynamics and so on."""
    name: str
    """By what the script finds it."""
    once: str
    """What comes in one slot."""
    again: str
    """What comes in several slots, with how many."""
    missing: str
    """What other units for the year teach and this plan does not."""


@dataclass(frozen=True, slots=True)
class YearPlanView:
    """A year plan."""

    frame: Frame
    """What stands around the content."""
    heading: str
    """The year group."""
    said: str
    """How much is covered and comes back, in a sentence."""
    slots: tuple[SlotView, ...]
    """The slots in their order."""
    has: tuple[HasRow, ...]
    """What the year has, a row a heading."""
    notes: tuple[str, ...]
    """What an adviser has to see to."""
    command: str
    """The command that makes this plan again."""
    data: str
    """What the page's script works with, as JSON."""


def year_plan_page(
    bank: Bank, plan: YearPlan, notes: Sequence[str], command: str, units_at: str | None
) -> Page:
    """The page plan.html.

    `units_at` is the way from it to the folder of published units; None where there is none.
    """
    said = year_said(plan.asked)
    heading = f"A year of dance: {said}"
    about = "Which units, in which order, and what the year then covers."
    days = lesson_days(plan)
    slots = []
    for place, (slot, at) in enumerate(zip(plan.asked.slots, plan.order, strict=True)):
        unit = None if at is None else plan.units[at]
        href = f"{units_at}/{unit.slug}/index.html" if units_at and unit else ""
        slots.append(
            SlotView(
                str(place + 1),
                slot.term,
                how_many(slot.lessons, "lesson"),
                Link(unit.title, href) if unit else None,
                how_many(unit.lessons, "lesson") if unit else "",
                tuple(
                    DayView(f"Lesson {one.number}", day_in_words(one.day.isoformat()))
                    for one in days
                    if one.slot == place
                ),
            )
        )  # fmt: skip
    view = YearPlanView(
        frame=frame(bank, PATH, heading, about, script="year_plan.js"),
        heading=heading,
        said=covered_said(plan.met),
        slots=tuple(slots),
        has=tuple(_row(heading, plan.met) for heading in (*HEADINGS_SAID, LINKS)),
        notes=tuple(notes),
        command=command,
        data=_data(plan, command),
    )
    return Page(PATH, "year_plan/year_plan.html", view.frame.title, view)


def covered_said(met: Mapping[Word, int]) -> str:
    """How much is covered and comes back: the script says the same."""
    has = sum(number > 0 for number in met.values())
    again = sum(number - 1 for number in met.values() if number > 1)
    return (
        f"It covers {has} of the {len(met)} things that units for this year teach, each counted "
        f"alike. What comes again does so {again} times in all."
    )


def _row(heading: str, met: Mapping[Word, int]) -> HasRow:
    here = {said_of(word): number for word, number in met.items() if word[0] == heading}
    return HasRow(
        heading_said(heading),
        heading,
        "; ".join(said for said, number in here.items() if number == 1) or "nothing",
        "; ".join(f"{said} ({n} times)" for said, n in here.items() if n > 1) or "nothing",
        "; ".join(said for said, number in here.items() if not number) or "nothing",
    )


def heading_said(heading: str) -> str:
    """What a heading is called."""
    return "Curriculum links" if heading == LINKS else HEADINGS_SAID[heading][0]


def said_of(word: Word) -> str:
    """A word as it is read."""
    return capital(word[1]) if word[0] == LINKS else word_said(*word)


def _data(plan: YearPlan, command: str) -> str:
    words = list(plan.met)
    place = {word: n for n, word in enumerate(words)}
    before, needs = plan.problem.before, plan.problem.needs
    earlier: dict[int, list[int]] = {}
    for first, then in sorted(before):
        earlier.setdefault(then, []).append(first)
    units = [
        {
            "title": unit.title,
            "slug": unit.slug,
            "lessons": unit.lessons,
            "words": sorted(place[word] for word in plan.problem.words[n]),
            "after": earlier.get(n, []),
            "needs": [first for first in earlier.get(n, []) if (first, n) in needs],
        }
        for n, unit in enumerate(plan.units)
    ]
    found = {
        "units": units,
        "words": [[word[0], said_of(word)] for word in words],
        "slots": [slot.lessons for slot in plan.asked.slots],
        "chosen": list(plan.order),
        "wishes": [
            [str(wish), slot, sorted(some)]
            for wish, (slot, some) in zip(plan.asked.wishes, plan.problem.pins, strict=True)
        ],
        "command": command,
    }
    return json.dumps(found, ensure_ascii=False, separators=(",", ":"))
