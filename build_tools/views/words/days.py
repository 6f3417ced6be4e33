"""A day in words, the same on every computer."""

from __future__ import annotations

from build_tools.page_words.forms import day as day_said


def day_in_words(day: str) -> str:
    """2026-11-25 as 25 November 2026, the same on every computer."""
    year, month, number = map(int, day.split("-"))
    return day_said(year, month, number)
