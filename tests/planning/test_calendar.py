"""The calendar file is read back by another library (icalendar) and held to RFC 5545."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import icalendar
from hypothesis import given, settings
from hypothesis import strategies as st

from build_tools.planning.asked import Asked, Slot, Wish
from build_tools.planning.calendar import calendar, lesson_days, overrun
from build_tools.planning.year_plan import YearPlan, year_plan
from tests.views.teaching.made_covers import bare

MONDAY = date(2026, 9, 7)


def plan(
    title: str = "Boats", *, off: frozenset[date] = frozenset(), later: date | None = None
) -> YearPlan:
    slots = (Slot("Autumn", 6, MONDAY), Slot("Spring", 6, later))
    units = [bare("boats", title=title, lessons=4), bare("zoo", lessons=3)]
    first = (Wish(0, unit="boats"),)
    found = year_plan(units, Asked(("England", "2"), slots, first, days_off=off))
    assert isinstance(found, YearPlan)
    return found


def read(found: YearPlan) -> list[Any]:
    return list(icalendar.Calendar.from_ical(calendar(found, "Bank", "2026-08-01")).events)


def test_each_lesson_is_an_event_of_a_whole_day_a_week_after_the_last() -> None:
    events = read(plan())
    assert [event.start for event in events] == [MONDAY + timedelta(weeks=n) for n in range(4)]
    assert [event.end - event.start for event in events] == [timedelta(days=1)] * 4
    assert str(events[1]["SUMMARY"]) == "Dance: Boats, lesson 2 of 4"
    assert len({event["UID"] for event in events}) == 4


def test_a_day_off_moves_the_lesson_and_all_after_it_a_week() -> None:
    off = frozenset({MONDAY + timedelta(weeks=1)})
    starts = [event.start for event in read(plan(off=off))]
    assert starts == [MONDAY + timedelta(weeks=n) for n in (0, 2, 3, 4)]


def test_a_lesson_that_runs_into_the_next_slot_is_known() -> None:
    late = plan(later=MONDAY + timedelta(weeks=3))
    assert [(one.slot, one.number) for one in overrun(late)] == [(0, 4)]
    assert overrun(plan(later=MONDAY + timedelta(weeks=4))) == ()


def test_the_same_plan_gives_the_same_bytes_and_a_new_plan_the_same_names_of_lessons() -> None:
    once, other = calendar(plan(), "Bank", "2026-08-01"), plan("Kites")
    assert once == calendar(plan(), "Bank", "2026-08-01")
    assert [one["UID"] for one in read(other)] == [one["UID"] for one in read(plan())]
    assert len(lesson_days(other)) == 4


@given(st.text(st.characters(exclude_categories=("C", "Z")), min_size=1, max_size=120))
@settings(max_examples=50)
def test_any_title_is_read_back_and_no_line_is_too_long(title: str) -> None:
    written = calendar(plan(title), "Bank", "2026-08-01")
    lines = written.split(b"\r\n")
    assert max(map(len, lines)) <= 75
    assert all(b"\n" not in line and line.decode() is not None for line in lines)
    assert str(read(plan(title))[0]["SUMMARY"]) == f"Dance: {title}, lesson 1 of 4"


def test_it_has_what_the_standard_asks_for() -> None:
    """RFC 5545, 3.6 and 3.6.1: what a calendar and an event must have; nobody is named."""
    found = icalendar.Calendar.from_ical(calendar(plan(), "Bank", "2026-08-01"))
    assert {"VERSION", "PRODID"} <= set(found)
    for event in found.events:
        assert {"UID", "DTSTAMP", "DTSTART"} <= set(event)
        assert not {"ATTENDEE", "ORGANIZER", "CONTACT", "LOCATION"} & set(event)
    assert not found.errors
