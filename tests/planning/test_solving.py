"""The best units are those that trying every plan finds; nothing comes before what it builds on.

The other side of each comparison is brute force: every way to put units into slots, held to the
words of the task, and the standard library's own sorter for orders.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from hypothesis import given, settings
from hypothesis import strategies as st

from build_tools.planning.ordering import Order, in_order
from build_tools.planning.problem import Problem
from build_tools.planning.solving import best_units, score

WORDS = tuple(("actions", letter) for letter in "abcdefgh")


@st.composite
def problems(draw: st.DrawFn) -> Problem:
    """A few units and slots; what comes before what has no circle."""
    units, slots = draw(st.integers(1, 6)), draw(st.integers(1, 3))
    pairs = [(a, b) for a in range(units) for b in range(units) if a != b]
    order = draw(st.permutations(range(units)))
    upwards = [(a, b) for a, b in pairs if order[a] < order[b]]
    before = draw(st.lists(st.sampled_from(upwards), max_size=4)) if upwards else []
    needs = draw(st.lists(st.sampled_from(before), max_size=2)) if before else []
    lengths = draw(st.lists(st.integers(1, 3), min_size=units, max_size=units))
    room = draw(st.lists(st.integers(1, 3), min_size=slots, max_size=slots))
    some = st.frozensets(st.integers(0, units - 1), min_size=1)
    place = st.one_of(st.none(), st.integers(0, slots - 1))
    return Problem(
        slots,
        tuple(draw(st.frozensets(st.sampled_from(WORDS))) for _ in range(units)),
        tuple(frozenset(s for s in range(slots) if room[s] >= long) for long in lengths),
        frozenset(before),
        frozenset(needs),
        tuple(draw(st.lists(st.tuples(place, some), max_size=2))),
    )


def holds(problem: Problem, order: Order) -> bool:
    """Whether a plan keeps to everything, said as the task says it."""
    at = {unit: slot for slot, unit in enumerate(order) if unit is not None}
    if len(at) < sum(unit is not None for unit in order):
        return False
    return (
        all(slot in problem.fits[unit] for unit, slot in at.items())
        and all(at[a] < at[b] for a, b in problem.before if a in at and b in at)
        and all(a in at for a, b in problem.needs if b in at)
        and all(
            any(unit in at and slot in (None, at[unit]) for unit in some)
            for slot, some in problem.pins
        )
    )


def every_plan(problem: Problem) -> Iterator[Order]:
    choices = [None, *range(len(problem.words))]
    return (order for order in product(choices, repeat=problem.slots) if holds(problem, order))


def chosen(order: Order) -> frozenset[int]:
    return frozenset(unit for unit in order if unit is not None)


@given(problems())
@settings(max_examples=60)
def test_the_best_plan_is_the_one_that_trying_all_finds(problem: Problem) -> None:
    found = best_units(problem)
    plans = list(every_plan(problem))
    if found is None:
        assert plans == []
        return
    assert score(problem, found) == min(score(problem, chosen(order)) for order in plans)
    order = in_order(problem, found)
    assert order is not None
    assert holds(problem, order)
    assert chosen(order) == found


@given(problems(), st.data())
@settings(max_examples=60)
def test_of_all_orders_that_hold_the_first_is_taken(problem: Problem, data: st.DataObject) -> None:
    units = data.draw(st.frozensets(st.integers(0, len(problem.words) - 1), max_size=3))
    same = [order for order in every_plan(problem) if chosen(order) == units]
    last = len(problem.words)
    first = min(same, key=lambda o: [last if u is None else u for u in o], default=None)
    assert in_order(problem, units) == first


def test_an_empty_bank_has_an_empty_plan() -> None:
    nothing = Problem(2, (), (), frozenset(), frozenset())
    assert best_units(nothing) == frozenset()
    assert in_order(nothing, ()) == (None, None)
