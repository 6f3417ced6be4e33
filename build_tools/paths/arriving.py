"""Whether everybody is in place when a section starts: metres to go against seconds to go in.

After a section that is made up nobody knows where anybody is; then how far off somebody may be is
reckoned as well: straight away from where they began, all the time, inside the hall.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from build_tools.paths.hall import floor, metres
from build_tools.paths.model import Paths, Start, StretchPaths

_IN_PLACE = 0.5
"""Metres within which a dancer is in place: less than a step; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Arrival:
    """How the dancers come to the start of a section, each by number."""

    stretch: int
    """The number of the section in the paths, from 0."""
    letter: str
    by: str
    """move, hold, overlap, cut or straight on."""
    seconds: float | None
    """Seconds to get there; None where there is no tempo."""
    far: tuple[float, ...]
    """Metres from where each is to where the section starts."""
    at_worst: tuple[float, ...]
    """The same, as far off as each may be after a section that is made up."""

    def late(self, speed: float, *, worst: bool = False) -> tuple[int, ...]:
        """Who is not there in time at `speed` metres a second; nobody where seconds are unknown."""
        if self.seconds is None:
            return ()
        reach = self.seconds * speed + _IN_PLACE
        far = self.at_worst if worst else self.far
        return tuple(n for n, one in enumerate(far) if one > reach)

    def short_by(self, speed: float, *, worst: bool = False) -> float:
        """How many seconds the latest is late at `speed`; 0 where nobody is."""
        if self.seconds is None:
            return 0.0
        far = max(self.at_worst if worst else self.far, default=0.0)
        return max(0.0, far / speed - self.seconds)


@lru_cache(maxsize=16)
def arrivals(paths: Paths) -> tuple[Arrival, ...]:
    """How dancers come to each section but the first, in order."""
    found = []
    before: StretchPaths | None = None
    for n, one in enumerate(paths.stretches):
        if one.section is None or one.start is None:
            continue
        if before is not None:
            far = tuple(
                metres(a, b) for a, b in zip(one.start.come_from, one.start.wanted, strict=True)
            )
            found.append(
                Arrival(
                    stretch=n,
                    letter=one.section.letter,
                    by=one.start.by or "straight on",
                    seconds=one.start.seconds,
                    far=far,
                    at_worst=far if before.counted else _at_worst(paths, before, one.start, far),
                )
            )
        before = one
    return tuple(found)


def _at_worst(
    paths: Paths, before: StretchPaths, start: Start, far: tuple[float, ...]
) -> tuple[float, ...]:
    """The farthest each may be from their place after `before`, which is not counted."""
    if start.spot == "where they are":
        return far
    began = [paths.at(dancer, before.begins) for dancer in range(paths.dancers)]
    reach = paths.body.walking * float(before.most_seconds or 0)
    whole = floor(paths.hall)
    return tuple(
        min(metres((one.x, one.y), wanted) + reach, whole.farthest(wanted))
        for one, wanted in zip(began, start.wanted, strict=True)
    )
