"""A day in words, the same on every computer."""

from __future__ import annotations

_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip


def day_in_words(day: str) -> str:
    """2026-11-25 as 25 November 2026, the same on every computer."""
    year, month, number = day.split("-")
    return f"{int(number)} {_MONTHS[int(month) - 1]} {year}"
