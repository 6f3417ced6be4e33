"""The school year of a day: all that a page keeps goes when it ends."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.support.page_script import ask

DAYS = st.dates(date(2020, 1, 1), date(2099, 12, 31))


def ends(day: object) -> object:
    return ask("sums.schoolYearEnds", day)


@pytest.mark.parametrize(
    ("day", "year"),
    [
        ("2026-08-31", 2026),
        ("2026-09-01", 2027),
        ("2026-12-31", 2027),
        ("2027-01-01", 2027),
        ("2027-08-31", 2027),
        ("2028-02-29", 2028),
    ],
)
def test_it_ends_on_the_last_day_of_august(day: str, year: int) -> None:
    assert ends(day) == year


@given(DAYS)
def test_only_the_first_of_september_begins_another(day: date) -> None:
    following = day + timedelta(days=1)
    begins = (following.month, following.day) == (9, 1)
    assert ends(following.isoformat()) == ends(day.isoformat()) + begins  # type: ignore[operator]


@pytest.mark.parametrize(
    "day",
    ["", "2026", "2026-13-01", "2026-00-10", "26-01-01", "2026-01-32", " 2026-01-01", 7, None],
)
def test_what_is_no_day_is_in_none(day: object) -> None:
    assert ends(day) is None
