"""The chosen units laid into the slots: of all orders that hold, the first."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache

from build_tools.planning.problem import Problem

Order = tuple[int | None, ...]
"""The unit in each slot; None where it is empty."""


def in_order(problem: Problem, chosen: Iterable[int]) -> Order | None:
    """Each of `chosen` in a slot that it fits, nothing before what it builds on, pins kept.

    Of all such orders the one that has the earliest units soonest and empty slots last; None
    where there is none.
    """
    units = tuple(sorted(chosen))
    allowed = _allowed(problem)
    anywhere = [some for slot, some in problem.pins if slot is None]
    if any(not some.intersection(units) for some in anywhere):
        return None
    if any(a not in units for a, b in problem.needs if b in units):
        return None
    earlier = {
        b: frozenset(a for a, later in problem.before if later == b and a in units) for b in units
    }
    pinned = {slot for slot, _ in problem.pins if slot is not None}

    @cache
    def rest(left: frozenset[int], slot: int) -> Order | None:
        if slot == problem.slots:
            return None if left else ()
        if len(left) > problem.slots - slot:
            return None
        for unit in sorted(left):
            if unit in allowed[slot] and not earlier[unit] & left:
                after = rest(left - {unit}, slot + 1)
                if after is not None:
                    return (unit, *after)
        after = None if slot in pinned else rest(left, slot + 1)
        return None if after is None else (None, *after)

    return rest(frozenset(units), 0)


def _allowed(problem: Problem) -> list[frozenset[int]]:
    """For each slot the units that fit it and that its pins let in."""
    found = []
    for slot in range(problem.slots):
        units = {unit for unit, fits in enumerate(problem.fits) if slot in fits}
        for pinned, some in problem.pins:
            if pinned == slot:
                units &= some
        found.append(frozenset(units))
    return found
