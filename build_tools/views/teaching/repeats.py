"""What comes back in more than one unit, the most often first."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from build_tools.views.teaching.covers import Covers


@dataclass(frozen=True, slots=True)
class Repeat:
    """Something that several units have, and those units in their order."""

    what: str
    units: tuple[Covers, ...]


def repeats(
    units: Sequence[Covers], has: Callable[[Covers], Iterable[str]], most: int
) -> tuple[Repeat, ...]:
    """What `has` names of more than one unit; of many, the `most` that come most often."""
    found: dict[str, list[Covers]] = defaultdict(list)
    for unit in units:
        for what in has(unit):
            found[what].append(unit)
    again = sorted(
        (Repeat(what, tuple(some)) for what, some in found.items() if len(some) > 1),
        key=lambda one: (-len(one.units), one.what),
    )
    return tuple(again[:most])
