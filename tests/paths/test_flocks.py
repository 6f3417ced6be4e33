"""Loose clusters, groups that face one way each, and which way a made-up section ends."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.model.dance import Standing
from build_tools.paths.facings import facings_of
from build_tools.paths.hall import Hall, ahead, dancing_area, metres
from build_tools.paths.places import slots
from build_tools.paths.starting import centres_of
from build_tools.views.dance.on_the_floor import in_a_hall
from tests.paths.test_places import BODY, everybody
from tests.support.sound_bank import unit_named


@pytest.mark.parametrize(("pupils", "clusters"), [(24, 3), (30, 4), (31, 2), (36, 5)])
def test_loose_clusters_lie_apart_and_are_nearly_of_a_size(pupils: int, clusters: int) -> None:
    """An adviser saw a gathering in three or four flocks drawn evenly all over the hall."""
    area = dancing_area(Hall(), "at the front")
    one = Standing("scattered", "mixed", "x", apart=Fraction(2), clusters=clusters)
    found = slots(one, (1,) * pupils, area, BODY)
    places, near = everybody(found), 2 * BODY.step * found.drawn_closer
    flocks: list[set[int]] = []
    for n, place in enumerate(places):
        mine = {k for k, other in enumerate(places) if metres(place, other) < 1.5 * near} | {n}
        joined = [flock for flock in flocks if flock & mine]
        flocks = [flock for flock in flocks if not flock & mine]
        flocks.append(mine.union(*joined))
    assert len(flocks) == clusters
    sizes = sorted(map(len, flocks))
    assert sizes[-1] - sizes[0] <= 1
    assert all(area.holds(place, 1e-6) for place in places)


def test_each_flock_faces_one_way_towards_open_floor_and_not_all_the_same() -> None:
    area = dancing_area(Hall(), "at the front")
    one = Standing("small groups", "mixed", "x", "diamond", groups_apart=Fraction(2))
    one = replace(one, each_group_one_way=True)
    together = tuple(tuple(range(n, n + 6)) for n in range(0, 30, 6))
    places = everybody(slots(one, (6,) * 5, area, BODY))
    ways = facings_of(one, places, together, places, area)
    by_group = [{ways[n] for n in group} for group in together]
    assert all(len(one) == 1 for one in by_group)
    assert len(set().union(*by_group)) > 1
    middles = centres_of(places, together, area)
    for group in together:
        here = middles[group[0]]
        step = ahead(ways[group[0]])
        beside = [here[0] + 2 * step[0], here[1] + 2 * step[1]]
        others = {middles[other[0]] for other in together if other != group}
        assert all(metres((beside[0], beside[1]), other) > 1.2 for other in others)


def test_a_made_up_section_ends_facing_as_it_says() -> None:
    """The falcon scatters its flocks, and each bird looks a way of its own."""
    paths = in_a_hall(unit_named("starlings"))
    scattered = next(one for one in paths.stretches if one.section and one.section.letter == "B")
    ends = paths.everybody(scattered.ends - 1e-6)
    assert len({round(one.facing) % 360 for one in ends}) > 4
