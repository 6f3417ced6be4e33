"""Which units come before which, as their authors name them at either end, and chains of them."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise

from build_tools.views.teaching.covers import Covers

Pair = tuple[str, str]
"""The earlier unit and the later one, by their folders."""


def named_pairs(units: Sequence[Covers]) -> frozenset[Pair]:
    """Each pair of `units` of which one says that the other comes before or after it."""
    known = {unit.slug for unit in units}
    after = {(unit.slug, later) for unit in units for later in unit.leads_to}
    before = {(earlier, unit.slug) for unit in units for earlier in unit.builds_on}
    return frozenset(
        (first, then)
        for first, then in after | before
        if first != then and first in known and then in known
    )


def without_circles(pairs: Iterable[Pair]) -> frozenset[Pair]:
    """The same without those pairs of which each can be reached from the other.

    A bank that is checked has no circle (rule builds-on-circle); where one stands, none of its
    units is the first, so it puts them in no order.
    """
    after = _after(pairs)
    reached = {slug: _reached(slug, after) for slug in after}
    return frozenset(
        (first, then)
        for first, all_then in after.items()
        for then in all_then
        if first not in reached.get(then, ())
    )


def chains(pairs: Iterable[Pair], most: int) -> tuple[tuple[str, ...], ...]:
    """The longest chain, then the longest that shows a pair not yet shown, and so on up to `most`.

    Of chains of one length the first in the order of the alphabet.
    """
    left = set(without_circles(pairs))
    found: list[tuple[str, ...]] = []
    while left and len(found) < most:
        chain = _longest(left)
        found.append(chain)
        left -= set(pairwise(chain))
    return tuple(found)


def _after(pairs: Iterable[Pair]) -> Mapping[str, list[str]]:
    found: dict[str, list[str]] = defaultdict(list)
    for first, then in sorted(pairs):
        found[first].append(then)
    return dict(found)


def _reached(start: str, after: Mapping[str, Sequence[str]]) -> frozenset[str]:
    """All that comes after `start`, itself only where it is in a circle."""
    seen: set[str] = set()
    waiting = list(after.get(start, ()))
    while waiting:
        one = waiting.pop()
        if one not in seen:
            seen.add(one)
            waiting += after.get(one, ())
    return frozenset(seen)


def _longest(pairs: Iterable[Pair]) -> tuple[str, ...]:
    """The longest way along `pairs`, which have no circle."""
    after = _after(pairs)
    best: dict[str, tuple[int, str]] = {}
    for slug in _last_first(after):
        ways = [(-best[then][0], then) for then in after.get(slug, ())]
        length, then = min(ways, default=(0, ""))
        best[slug] = (1 - length, then)
    start = min(best, key=lambda slug: (-best[slug][0], slug))
    chain = [start]
    while then := best[chain[-1]][1]:
        chain.append(then)
    return tuple(chain)


def _last_first(after: Mapping[str, Sequence[str]]) -> list[str]:
    """Every unit once, each after all that come after it."""
    done: dict[str, None] = {}
    for start in after:
        waiting = [(start, iter(after[start]))]
        while waiting:
            slug, rest = waiting[-1]
            then = next((one for one in rest if one not in done), None)
            if then is None:
                done.setdefault(slug)
                waiting.pop()
            else:
                waiting.append((then, iter(after.get(then, ()))))
    return list(done)
