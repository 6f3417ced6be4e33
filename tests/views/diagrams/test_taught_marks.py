"""The picture of what each year meets: a ring where nothing is met, else a square that grows."""

from __future__ import annotations

import math

from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.diagrams.taught_marks import side, taught_marks

YEARS = (("1", "Year 1"), ("2", "Year 2"))


@given(st.lists(st.tuples(st.integers(0, 9), st.integers(0, 9)), max_size=6))
def test_each_number_has_its_mark_and_the_words_say_what_is_missing(
    numbers: list[tuple[int, int]],
) -> None:
    rows = [(f"word {n}", pair) for n, pair in enumerate(numbers)]
    figure = taught_marks("Actions", YEARS, rows)
    flat = [number for pair in numbers for number in pair]
    assert figure.svg.count("<circle") == flat.count(0)
    assert figure.svg.count('z"') == len(flat) - flat.count(0)
    for place, (_, year) in enumerate(YEARS):
        missing = [word for word, pair in rows if not pair[place]]
        met = len(rows) - len(missing)
        assert figure.words[place].startswith(f"{year}: {met} of {len(rows)} met")
        assert figure.words[place].endswith(", ".join(missing) or "nothing is missing")


@given(st.integers(1, 1500), st.integers(1, 1500))
def test_areas_grow_with_numbers_but_for_the_smallest_that_can_be_seen(a: int, b: int) -> None:
    few, many = sorted((a, b))
    assert side(few, many) <= side(many, many)
    if side(few, many) > 5:
        assert math.isclose(side(few, many) ** 2 / side(many, many) ** 2, few / many)
