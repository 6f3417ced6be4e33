"""How long ago a day was, counted to another day; never to the clock."""

from __future__ import annotations

import re
from datetime import date

_YEAR = re.compile(r"\b(?:19|20)[0-9]{2}\b")
_MONTHS_FROM = 60
"""From how many days an age is said in months."""
_YEARS_FROM = 24
"""From how many months an age is said in years."""


def time_since(day: str, as_of: str) -> str:
    """The time from `day` to `as_of`, both year-month-day, in words: 12 days, 5 months, 3 years.

    Months and years are whole ones that have passed. A day that the calendar does not have is
    said to be none.
    """
    try:
        then, now = date.fromisoformat(day), date.fromisoformat(as_of)
    except ValueError:
        return "not a day of the calendar"
    days = (now - then).days
    if days < 0:
        return f"{_counted(-days, 'day')} after the bank's own day"
    if days < _MONTHS_FROM:
        return _counted(days, "day")
    months = whole_months(then, now)
    if months < _YEARS_FROM:
        return _counted(months, "month")
    return _counted(months // 12, "year")


def whole_months(then: date, now: date) -> int:
    """How many whole months have passed from `then` to `now`, which is no earlier."""
    return (now.year - then.year) * 12 + now.month - then.month - (now.day < then.day)


def years_since(text: str, as_of: str) -> str:
    """How old what `text` names is, from the last year it names: 2013, 13 years."""
    years = [int(year) for year in _YEAR.findall(text)]
    if not years:
        return "no year is given"
    passed = int(as_of[:4]) - years[-1]
    if passed < 0:
        return f"{years[-1]}, {_counted(-passed, 'year')} after the bank's own day"
    return f"{years[-1]}, {_counted(passed, 'year')}" if passed else f"{years[-1]}, this year"


def _counted(number: int, thing: str) -> str:
    return f"{number} {thing}{'' if number == 1 else 's'}"
