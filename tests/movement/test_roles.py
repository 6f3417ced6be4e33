"""Which places of a group dance which part, and in which rows that is written."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Groups, Passage
from build_tools.movement.canon_and_unison import part_spans, passage_counts
from build_tools.movement.roles import part_places, place_danced, places_danced, rows_of
from tests.movement.strategies import section

ROW = Groups(4, {"odds": (1, 3), "evens": (2, 4), "number one": (1,)})
EIGHTS = {"a": Fraction(8), "b": Fraction(8)}


def both(fit: str, *, swap: bool = False, roles: tuple[str, ...] = ()) -> Passage:
    return Passage(what=("a", "b"), fit=fit, roles=roles, swap=swap)


def test_roles_are_the_places_that_the_unit_gives_them() -> None:
    assert part_places(ROW, both("side by side", roles=("evens", "odds"))) == ((2, 4), (1, 3))


def test_parts_without_roles_take_places_in_turn() -> None:
    assert part_places(ROW, both("side by side")) == ((1, 3), (2, 4))
    assert part_places(ROW, Passage(("a",), "canon", parts=4, after=Fraction(2))) == (
        (1,), (2,), (3,), (4,),
    )  # fmt: skip
    assert part_places(ROW, Passage(("a",), "canon", parts=6, after=Fraction(2))) is None


@given(st.integers(1, 8), st.integers(1, 8), st.integers(1, 8))
def test_nobody_dances_two_places_and_one_over_copies_the_first(
    size: int, dancers: int, place: int
) -> None:
    danced = place_danced(place, Groups(size, {}), dancers)
    assert len(danced) == (1 if place <= dancers else 0)
    assert all(1 <= at <= size for at in danced)
    assert place_danced(size + 1, Groups(size, {}), size + 1) == (1,)


PAIRS = {"first pair": (1, 2), "second pair": (3, 4)}


def test_a_pair_over_joins_two_pairs_one_to_each() -> None:
    """Three and three, not four and two, as the unit on leaving says of its sixes."""
    assert places_danced(Groups(4, PAIRS), 6) == (1, 2, 3, 4, 1, 3)
    assert places_danced(Groups(4, PAIRS), 5) == (1, 2, 3, 4, 1)
    assert places_danced(ROW, 6) == (1, 2, 3, 4, 1, 2)


def test_what_the_unit_says_of_a_group_of_another_size_is_so() -> None:
    """The middle one of three is track, as the unit on marbles says."""
    run = Groups(4, {"tracks": (1, 3), "marbles": (2, 4)}, ((2, 1, 4), (1, 2, 3, 4, 4)))
    assert places_danced(run, 3) == (2, 1, 4)
    assert places_danced(run, 5) == (1, 2, 3, 4, 4)
    assert places_danced(run, 6) == (1, 2, 3, 4, 1, 2)


@given(st.integers(1, 8), st.integers(1, 17), st.integers(0, 8))
def test_roles_that_share_out_a_group_differ_by_one_more_at_most(
    size: int, dancers: int, half: int
) -> None:
    first = tuple(range(1, min(half, size) + 1))
    rest = tuple(range(len(first) + 1, size + 1))
    roles = {name: at for name, at in (("first", first), ("rest", rest)) if at}
    danced = places_danced(Groups(size, roles), dancers)
    assert len(danced) == dancers
    assert set(danced) == set(range(1, min(size, dancers) + 1))
    if dancers <= size + 2 and len(first) == len(rest):
        more = [sum(one in at for one in danced) for at in roles.values()]
        assert max(more) - min(more) <= max(1, size - dancers)


def test_rows_are_roles_where_none_share_a_place_and_places_where_they_do() -> None:
    pairs = replace(
        section("A", 16, both("question and answer", roles=("ones", "twos"))),
        groups=Groups(2, {"ones": (1,), "twos": (2,)}),
    )
    assert rows_of(pairs) == (("ones", (1,)), ("twos", (2,)))
    rows = replace(section("A", 16, both("side by side", roles=("odds", "number one"))), groups=ROW)
    assert [name for name, _ in rows_of(rows)] == [
        "number one", "dancer 2", "dancer 3", "dancer 4",
    ]  # fmt: skip
    assert rows_of(section("A", 16, both("side by side"))) == ()


def test_roles_keep_their_rows_where_the_others_begin() -> None:
    groups = Groups(2, {"ones": (1,), "twos": (2,)})
    first, second = (
        replace(section("A", 16, both("side by side", roles=roles)), groups=groups)
        for roles in (("ones", "twos"), ("twos", "ones"))
    )
    assert rows_of(first) == rows_of(second) == (("ones", (1,)), ("twos", (2,)))


@given(st.sampled_from(("question and answer", "side by side")), st.integers(2, 4))
def test_after_a_swap_each_part_has_danced_each_thing_once(fit: str, parts: int) -> None:
    names = tuple("abcd"[:parts])
    lengths = {name: Fraction(4) for name in names}
    passage = Passage(names, fit, swap=True)
    spans = part_spans(passage, lengths)
    for part in range(1, parts + 1):
        mine = sorted((s for s in spans if s.part == part), key=lambda s: s.start)
        assert {s.what for s in mine} == set(names)
        assert all(one.end <= two.start for one, two in pairwise(mine))
    once = passage_counts(replace(passage, swap=False), lengths)
    assert passage_counts(passage, lengths) == once * parts
    assert part_spans(replace(passage, swap=False), lengths) == tuple(
        s for s in spans if s.end <= once
    )
