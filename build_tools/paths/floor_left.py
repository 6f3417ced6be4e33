"""How much of a floor is left free round those who stand on it."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.paths.hall import Area, Point, fine


def slack(points: Sequence[Point], area: Area) -> float:
    """How much of the hall is left free on the fuller side: for a choice between equals."""
    wide, deep = _across(points)
    return fine(-max(wide / area.width, deep / area.depth))


def margin(points: Sequence[Point], area: Area) -> float:
    """Metres that are left free both ways: for steps, which are as long in any hall."""
    wide, deep = _across(points)
    return fine(min(area.width - wide, area.depth - deep))


def _across(points: Sequence[Point]) -> tuple[float, float]:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return max(xs) - min(xs), max(ys) - min(ys)
