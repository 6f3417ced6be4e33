"""How long the whole dance is over every order that pupils may choose, tried order by order."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Choice, Dance, Seconds, Transition
from build_tools.movement.whole import counts_in_order, seconds_in_order
from build_tools.movement.whole_length import CountsRange, whole_counts, whole_seconds
from tests.movement.strategies import dance, section

ANY = "Any other order"


def ordered(whole: Dance, *options: str) -> Dance:
    """The same with its order chosen by pupils from these options."""
    choice = Choice("order", "The order", options, "class", "As it is written.")
    return replace(whole, order_choice="order", choices={"order": choice})


@st.composite
def dances(draw: st.DrawFn) -> Dance:
    """Up to five sections, one of them uncounted, with joins of their own between some."""
    letters = "ABCDE"[: draw(st.integers(1, 5))]
    sections = [section(letter, draw(st.integers(8, 40))) for letter in letters]
    if draw(st.booleans()):
        uncounted = Seconds(Fraction(20), Fraction(draw(st.integers(20, 45))))
        sections[-1] = replace(section(letters[-1], None), seconds=uncounted)
    ends = st.sampled_from([*letters, "any"])
    kinds = st.sampled_from(("move", "hold", "overlap", "cut", "straight on"))
    counted = st.integers(0, 24).map(Fraction)
    joins = st.builds(Transition, ends, ends, kinds, counted, st.just("walk"), st.just("the drum"))
    form = "".join(letters + draw(st.sampled_from(("", letters[0]))))
    made = draw(st.lists(joins, max_size=6))
    return dance(form, sections, transitions=tuple(made), tempo=draw(st.sampled_from((96, 112))))


@given(dances())
def test_the_form_is_the_order_where_pupils_do_not_choose_it(whole: Dance) -> None:
    counts = counts_in_order(whole)
    assert whole_counts(whole) == CountsRange(counts, counts)
    assert whole_seconds(whole) == seconds_in_order(whole)


@given(dances())
def test_no_order_is_shorter_or_longer_than_is_said_and_the_ends_are_danced(whole: Dance) -> None:
    orders = set(permutations(whole.form))
    counts = [counts_in_order(whole, order) for order in orders]
    lasting = [one for order in orders if (one := seconds_in_order(whole, order))]
    assert len(lasting) == len(orders)
    chosen = ordered(whole, ANY)
    assert whole_counts(chosen) == CountsRange(min(counts), max(counts))
    least, most = min(one.least for one in lasting), max(one.most for one in lasting)
    assert whole_seconds(chosen) == Seconds(least, most)


def breaks_off() -> Dance:
    """Three counted sections and one that the drum's stopping cuts into; else joins of eight."""
    sections = [section(letter, counts) for letter, counts in zip("ABC", (40, 48, 48), strict=True)]
    free = replace(section("D", None), seconds=Seconds(Fraction(20), Fraction(35)))
    joins = (
        Transition("any", "D", "cut", None, "freeze", "the drum stops"),
        Transition("any", "any", "move", Fraction(8), "walk", "the drum"),
    )
    return dance("ABCD", [*sections, free], transitions=joins, tempo=112)


@pytest.mark.parametrize(
    ("options", "least", "most"),
    [
        # two joins of eight and a cut where D is not first; three joins of eight where it is
        ((ANY,), 152, 160),
        (("A, B, C, D: it ends mended", "D, A, B, C: it begins with the break", ANY), 152, 160),
        (("A, B, C, D: it ends mended", "A, B, D, C: before the pattern"), 152, 152),
        (("A, B, C, D", "D, then A, B and C"), 152, 160),
        (("A first: the rest as you like",), 152, 160),
    ],
)
def test_only_orders_that_may_be_chosen_count(
    options: tuple[str, ...], least: int, most: int
) -> None:
    found = whole_counts(ordered(breaks_off(), *options))
    assert found == CountsRange(Fraction(least), Fraction(most))


def test_the_seconds_go_from_the_shortest_order_to_the_longest() -> None:
    found = whole_seconds(ordered(breaks_off(), ANY))
    assert found == Seconds(Fraction(152 * 60, 112) + 20, Fraction(160 * 60, 112) + 35)
    assert whole_seconds(replace(ordered(breaks_off(), ANY), tempo=None)) is None


def test_an_order_that_brings_a_section_back_is_longer_by_it() -> None:
    whole = ordered(breaks_off(), "A, B, C, D", "A, B, C, D, A")
    assert whole_counts(whole) == CountsRange(Fraction(152), Fraction(152 + 8 + 40))
