"""Which units come before which: the standard library's own sorter says whether an order holds."""

from __future__ import annotations

from graphlib import TopologicalSorter
from itertools import pairwise

from hypothesis import given

from build_tools.views.teaching.chains import Pair, chains, named_pairs, without_circles
from build_tools.views.teaching.covers import Covers
from tests.views.teaching.made_covers import banks, bare


def reached(pairs: frozenset[Pair]) -> set[Pair]:
    """Every pair that is joined by one step or more, by joining until nothing is new."""
    found: set[Pair] = set(pairs)
    while more := {(a, d) for a, b in found for c, d in found if b == c} - found:
        found |= more
    return found


@given(banks())
def test_only_pairs_of_the_bank_count_and_either_may_name_the_other(
    units: tuple[Covers, ...],
) -> None:
    by_slug = {unit.slug: unit for unit in units}
    assert named_pairs(units) == {
        (a, b)
        for a in by_slug
        for b in by_slug
        if a != b and (b in by_slug[a].leads_to or a in by_slug[b].builds_on)
    }


@given(banks())
def test_pairs_in_a_circle_are_left_out_and_no_others(units: tuple[Covers, ...]) -> None:
    pairs = named_pairs(units)
    found = without_circles(pairs)
    joined = reached(pairs)
    assert found == {(a, b) for a, b in pairs if (b, a) not in joined}
    sorter: TopologicalSorter[str] = TopologicalSorter()
    for first, then in found:
        sorter.add(then, first)
    assert set(sorter.static_order()) == {slug for pair in found for slug in pair}


@given(banks())
def test_chains_follow_pairs_show_them_all_and_begin_with_the_longest(
    units: tuple[Covers, ...],
) -> None:
    pairs = without_circles(named_pairs(units))
    found = chains(pairs, 100)
    assert {pair for chain in found for pair in pairwise(chain)} == pairs
    lengths = [len(chain) for chain in found]
    assert lengths == sorted(lengths, reverse=True)
    assert max(lengths, default=0) == longest(pairs)


def longest(pairs: frozenset[Pair]) -> int:
    """How many units the longest chain has, by trying every one."""

    def from_(slug: str) -> int:
        return 1 + max((from_(then) for first, then in pairs if first == slug), default=0)

    return max((from_(first) for first, _ in pairs), default=0)


def test_no_more_chains_than_wanted() -> None:
    units = [bare(name, leads_to=("hub",)) for name in "abcde"]
    assert len(chains(named_pairs([*units, bare("hub")]), 3)) == 3
