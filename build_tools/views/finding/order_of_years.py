"""School years in the order in which pupils go through them."""

from __future__ import annotations


def order_of_year(value: str) -> tuple[str, int, str]:
    """By what to sort a year's value, such as england-3: nation, then Reception, 1, 2 …, S1."""
    nation, _, year = value.rpartition("-")
    digits = "".join(c for c in year if c.isdigit())
    return (nation, int(digits or 0) + (20 if year.startswith("s") else 0), year)
