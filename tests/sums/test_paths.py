"""Where a page's own script puts everybody is where the model has them, at every moment."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Dance, Standing
from build_tools.model.unit import Unit
from build_tools.paths.for_pages import paths_for_page, roles_in
from build_tools.paths.hall import Hall
from build_tools.paths.model import Paths
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import in_a_hall, middle_age
from build_tools.views.lesson.class_groups import joined_in_lessons
from tests.paths.strategies import dances, halls, pupils
from tests.support.page_script import ask
from tests.support.sound_bank import every_unit, unit_named

SOME = [
    pytest.param(unit, marks=() if number % 3 == 0 else pytest.mark.thorough)
    for number, unit in enumerate(every_unit())
]
NEAR, TURNED, LEVEL = 0.001, 0.01, 0.001
"""Metres, degrees, and parts of the way from one level to the next."""


def assert_alike(written: str, paths: Paths, moments: list[float], spots: int = 0) -> None:
    """What the script makes of the page's data is what the model has for this class and hall.

    `spots` is for how many pupils the places are laid; 0 for those who dance.
    """
    hall = [paths.hall.width, paths.hall.depth]
    found = ask("sums.floor.paths", json.loads(written), paths.dancers, hall, spots)
    for part, stretch in zip(found["parts"], paths.stretches, strict=True):
        assert (part["begins"], part["lasts"]) == (stretch.begins, stretch.lasts)
        if part.get("who"):
            assert tuple(part["who"]) == roles_in(stretch)
    everywhere = ask("paths.atEach", found, moments)
    for moment, shown in zip(moments, everywhere, strict=True):
        for (x, y, facing, level), one in zip(shown, paths.everybody(moment), strict=True):
            assert x == pytest.approx(one.x, abs=NEAR)
            assert y == pytest.approx(one.y, abs=NEAR)
            assert (facing - one.facing + 180) % 360 - 180 == pytest.approx(0, abs=TURNED)
            assert level == pytest.approx(one.level, abs=LEVEL)


@given(dances(), pupils, halls, st.floats(0, 1))
def test_a_made_dance_is_where_the_model_has_it(
    dance: Dance, many: int, hall: Hall, part: float
) -> None:
    """Written for the usual class and hall, worked out for another."""
    paths = paths_of(dance, many, hall)
    moments = [0.0, paths.lasts * part, paths.lasts]
    assert_alike(paths_for_page(paths_of(dance)), paths, moments)


@given(dances(), pupils, halls, st.integers(2, 8), st.sampled_from(("scattered", "small groups")))
def test_flocks_are_where_the_model_has_them(
    dance: Dance, many: int, hall: Hall, clusters: int, formation: str
) -> None:
    """Loose clusters, and groups that each face a way of their own, at start and end."""

    def in_flocks(one: Standing) -> Standing:
        mixed = replace(one, formation=formation, facing="mixed", clusters=clusters)
        return replace(mixed, each_group_one_way=clusters % 2 == 0)

    sections = {
        letter: replace(one, start=in_flocks(one.start), end=in_flocks(one.end))
        for letter, one in dance.sections.items()
    }
    flocks = replace(dance, sections=sections)
    paths = paths_of(flocks, many, hall)
    assert_alike(paths_for_page(paths_of(flocks)), paths, [0.0, paths.lasts])


CLASSES = (*range(8, 37, 4), 27, 30, 31, 33)


@pytest.mark.parametrize(
    ("number", "unit"), [*enumerate(every_unit())], ids=[unit.slug for unit in every_unit()]
)
def test_a_unit_is_where_the_model_has_it_for_every_class(
    number: int, unit: Unit, thorough: bool
) -> None:
    """In the usual run for every third class, in turns."""
    written = paths_for_page(in_a_hall(unit))
    for many in CLASSES if thorough else CLASSES[number % 3 :: 3]:
        paths = in_a_hall(unit, many, Hall(9.0 + many % 5 * 2.5, 6.0 + many % 3 * 3.5))
        assert_alike(written, paths, [count / 2 for count in range(0, int(paths.lasts) * 2, 29)])


@pytest.mark.parametrize("unit", SOME, ids=lambda unit: str(unit.slug))
def test_a_unit_is_where_the_model_has_it_at_every_count(unit: Unit) -> None:
    paths = in_a_hall(unit)
    counts = [float(count) for count in range(int(paths.lasts) + 1)]
    assert_alike(paths_for_page(paths), paths, counts)


@pytest.mark.parametrize(("many", "spots"), [(28, 0), (31, 0), (14, 16), (12, 16)])
def test_who_waits_in_a_join_waits_as_long_in_the_browser(many: int, spots: int) -> None:
    unit = unit_named("magnets")
    age, joined = middle_age(unit), joined_in_lessons(unit)
    paths = paths_of(unit.dance, many, Hall(), age, joined=joined, spots=spots)
    joins = [one for one in paths.stretches if one.section is None]
    moments = [one.begins + one.lasts * part for one in joins for part in (0.25, 0.5, 0.75)]
    assert_alike(paths_for_page(in_a_hall(unit)), paths, moments, spots)
