"""Where a hall is too small for a formation: who would stand closer than the dance asks."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.body.ages import AtAge
from build_tools.model.dance import Standing
from build_tools.paths.hall import fine
from build_tools.paths.model import Paths, Start
from build_tools.paths.places import FITS
from build_tools.paths.scatter import nearest_two


def squeezed(paths: Paths) -> tuple[str, ...]:
    """The letters of the sections whose places have to be drawn together to fit the hall.

    Either its distances are not there, or two stand nearer than an arm's length though the dance
    does not ask them to. Sections that start where dancers are, or in their first places, stand
    as close as what came before them, and are not told again.
    """
    return tuple(dict.fromkeys(_found(paths)))


def _found(paths: Paths) -> Iterator[str]:
    for one in paths.stretches:
        if one.section is None or one.start is None or one.start.spot != "new place":
            continue
        if fine(closer_than_asked(one.start, one.section.start, paths.body)) < FITS:
            yield one.section.letter


def closer_than_asked(start: Start, standing: Standing, body: AtAge) -> float:
    """1, or by how much nearer all stand than the dance asks, or than an arm's length."""
    said = (standing.apart, standing.groups_apart)
    asked = min([body.arm, *(float(one) * body.step for one in said if one is not None)])
    nearest = nearest_two(start.wanted)
    return min(start.drawn_closer, nearest / asked if nearest < asked else 1.0)
