"""Laws of putting a class into groups, and how they are said."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.lesson.class_groups import group_size, groups
from build_tools.views.lesson.groups_in_words import (
    groups_in_words,
    groups_sentence,
    number_in_words,
    odd_group,
)

PUPILS = st.integers(1, 120)
SIZES = st.integers(1, 6)


def every_way(pupils: int, fewest: int, most: int | None = None) -> Iterator[tuple[int, ...]]:
    """Every way to put pupils into groups of `fewest` at least, larger groups first."""
    if pupils == 0:
        yield ()
    for size in range(min(pupils, most or pupils), fewest - 1, -1):
        for rest in every_way(pupils - size, fewest, size):
            yield (size, *rest)


@given(PUPILS, SIZES)
def test_every_pupil_is_in_one_group_and_sizes_differ_by_one_at_most(
    pupils: int, size: int
) -> None:
    found = groups(pupils, size)
    assert sum(found) == pupils
    assert max(found) - min(found) <= 1
    assert list(found) == sorted(found, reverse=True)


@given(PUPILS, st.integers(2, 6))
def test_nobody_is_alone_in_a_class_of_two_or_more(pupils: int, size: int) -> None:
    assert min(groups(pupils, size)) > 1 or pupils == 1


@pytest.mark.parametrize("size", [2, 3, 4, 5])
@pytest.mark.parametrize("pupils", range(2, 25))
def test_no_other_way_is_nearer_to_the_size(pupils: int, size: int) -> None:
    def off(sizes: tuple[int, ...]) -> int:
        return sum(abs(one - size) for one in sizes)

    found = groups(pupils, size)
    ways = list(every_way(pupils, 2))
    assert off(found) == min(off(way) for way in ways)
    as_near = [way for way in ways if off(way) == off(found) and way[0] - way[-1] <= 1]
    assert len(found) == max(len(way) for way in as_near), "a tie goes to the smaller groups"


@pytest.mark.parametrize(
    ("pupils", "size", "words"),
    [
        (27, 4, "six fours and one three"),
        (25, 2, "eleven pairs and one three"),
        (26, 4, "five fours and two threes"),
        (25, 4, "five fours and one five"),
        (30, 3, "ten threes"),
        (1, 2, "one pupil alone"),
        (28, 1, "twenty-eight pupils alone"),
        (27, 14, "one group of 14 and one group of 13"),
        (0, 4, "nobody"),
    ],
)
def test_groups_in_words(pupils: int, size: int, words: str) -> None:
    assert groups_in_words(groups(pupils, size)) == words


@given(PUPILS, SIZES)
def test_numbering_off_gives_these_very_sizes(pupils: int, size: int) -> None:
    found = groups(pupils, size)
    numbers = [n % len(found) for n in range(pupils)]
    assert sorted((numbers.count(n) for n in range(len(found))), reverse=True) == list(found)


@pytest.mark.parametrize(
    ("sizes", "before", "words"),
    [
        ((1, 1, 1), None, "Find a space of your own."),
        ((9,), None, "All together."),
        ((3, 2, 2), "alone", "Turn to the nearest person. One over makes a three."),
        ((2, 2), None, "Turn to the nearest person."),
        ((4, 4, 3), "pairs", "Join the nearest pair to make a four. The three stays a three."),
        ((14, 13), None, "Make two groups, one on each side of the hall: fourteen here and "
         "thirteen there."),
        ((4, 4, 3), "alone", "Number off from one to three, and start again at one. Stand with "
         "everyone who has your number."),
    ],
)  # fmt: skip
def test_the_sentence_that_makes_them(sizes: tuple[int, ...], before: str, words: str) -> None:
    assert groups_sentence(sizes, before) == words


@given(st.integers(4, 120).filter(lambda pupils: pupils % 4 != 2))
def test_pairs_that_join_make_the_fours_that_are_meant(pupils: int) -> None:
    pairs = list(groups(pupils, 2))
    three = [pairs.pop(0)] if pairs[0] == 3 else []
    fours = [4] * (len(pairs) // 2)
    if len(pairs) % 2:
        three = [three[0] + 2]
    assert sorted(fours + three, reverse=True) == list(groups(pupils, 4))


def test_what_an_odd_group_changes() -> None:
    line = "In a three, two ask together."
    assert odd_group((3, 2, 2), 2, line) == line
    assert odd_group((2, 2), 2, line) == ""
    beside = "Stand beside someone who counts."
    assert odd_group((3, 2), 2, beside) == "In a three, two pupils dance the same part together."
    assert odd_group((4, 4, 3), 4, None) == "In a three, the last part is left out."
    assert odd_group((14, 13), 14, line) == ""


@pytest.mark.parametrize(
    ("number", "words"),
    [(0, "no"), (1, "one"), (19, "nineteen"), (20, "twenty"), (47, "forty-seven"), (100, "100")],
)
def test_numbers_in_words(number: int, words: str) -> None:
    assert number_in_words(number) == words


def test_how_many_a_grouping_puts_together() -> None:
    found = [group_size(one, 27) for one in ("alone", "sixes", "half class", "whole class")]
    assert found == [1, 6, 14, 27]
