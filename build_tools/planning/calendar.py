"""The lessons of a year plan as a calendar file: RFC 5545 (iCalendar), and RFC 7986 for its name.

Nobody is named in it. The same plan gives the same bytes, and a lesson's UID is made of the bank,
the year and its place in the year, so that a plan made anew takes the place of the old one.
"""

from __future__ import annotations

import uuid
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from build_tools.planning.asked import Slot
from build_tools.planning.year_plan import YearPlan, year_said

_NAMES = uuid.UUID("6b0b0c34-6d0f-5d0a-9d5f-0d8f7d1c2a11")
"""The space of names of this bank's lessons (RFC 9562, version 5)."""
_LONGEST = 75
"""How many octets a line has at most (RFC 5545, 3.1)."""


@dataclass(frozen=True, slots=True)
class LessonDay:
    """One lesson on its day."""

    slot: int
    number: int
    of: int
    title: str
    day: date


def lesson_days(plan: YearPlan) -> tuple[LessonDay, ...]:
    """Every lesson of a slot with a day to start on: one a week, later where a day is off."""
    return tuple(
        LessonDay(place, number, unit.lessons, unit.title, day)
        for place, (slot, at) in enumerate(zip(plan.asked.slots, plan.order, strict=True))
        if at is not None
        for unit in (plan.units[at],)
        for number, day in enumerate(_days(slot, unit.lessons, plan), start=1)
    )


def _days(slot: Slot, lessons: int, plan: YearPlan) -> Iterator[date]:
    if slot.starts is None:
        return
    day = slot.starts
    for _ in range(lessons):
        while day in plan.asked.days_off:
            day += timedelta(weeks=1)
        yield day
        day += timedelta(weeks=1)


def overrun(plan: YearPlan) -> tuple[LessonDay, ...]:
    """Lessons that come no sooner than the first one of a later slot."""
    starts = [slot.starts for slot in plan.asked.slots]
    return tuple(
        one
        for one in lesson_days(plan)
        if any(later is not None and one.day >= later for later in starts[one.slot + 1 :])
    )


def calendar(plan: YearPlan, bank: str, as_of: str) -> bytes:
    """The calendar file of all lessons that have a day; `as_of` is the bank's own day."""
    name = f"Dance, {year_said(plan.asked)}"
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//dance unit bank//year plan//EN",
        "CALSCALE:GREGORIAN",
        f"NAME:{_text(name)}",
    ]
    for one in lesson_days(plan):
        lines += _event(one, plan, bank, as_of)
    lines.append("END:VCALENDAR")
    return "".join(f"{_folded(line)}\r\n" for line in lines).encode()


def _event(one: LessonDay, plan: YearPlan, bank: str, as_of: str) -> list[str]:
    nation, year = plan.asked.year
    place = f"{bank}\n{nation}\n{year}\n{one.slot}\n{one.number}"
    return [
        "BEGIN:VEVENT",
        f"UID:{uuid.uuid5(_NAMES, place)}",
        f"DTSTAMP:{as_of.replace('-', '')}T000000Z",
        f"DTSTART;VALUE=DATE:{one.day:%Y%m%d}",
        f"DTEND;VALUE=DATE:{one.day + timedelta(days=1):%Y%m%d}",
        f"SUMMARY:{_text(f'Dance: {one.title}, lesson {one.number} of {one.of}')}",
        "TRANSP:TRANSPARENT",
        "END:VEVENT",
    ]


def _text(words: str) -> str:
    """Words as a value of the kind TEXT (RFC 5545, 3.3.11)."""
    for mark, written in (("\\", "\\\\"), (";", "\\;"), (",", "\\,"), ("\n", "\\n")):
        words = words.replace(mark, written)
    return words


def _folded(line: str) -> str:
    """The line in pieces of 75 octets at most, none cut within a letter (RFC 5545, 3.1)."""
    pieces, octets = [""], 0
    for letter in line:
        size = len(letter.encode())
        if octets + size > _LONGEST:
            pieces.append(" ")
            octets = 1
        pieces[-1] += letter
        octets += size
    return "\r\n".join(pieces)
