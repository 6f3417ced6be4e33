"""What goes on from a unit, leads up to it, or is about the same."""

from __future__ import annotations

from dataclasses import replace

from build_tools.model.unit import Neighbours, SchoolYears, Unit
from build_tools.views.finding.findable import Findable, findable
from build_tools.views.finding.related import MOST, related
from tests.support.sound_bank import real_bank

UNITS = {unit.slug: unit for unit in real_bank().units}
THREE = ("rock-pool", "seeds-on-the-move", "weaving-shed")
FOUND = [findable(real_bank(), UNITS[slug]) for slug in THREE]
NOBODY = Neighbours("", ())


def alone(unit: Unit, slug: str, *years: str) -> Findable:
    """The unit under another name and for other years, which names no other unit."""
    of = (SchoolYears("England", years),)
    other = replace(unit, slug=slug, years=of, builds_on=NOBODY, leads_to=NOBODY)
    return findable(real_bank(), other)


def test_the_three_units_by_hand() -> None:
    near = related(FOUND)
    (after,) = near["rock-pool"].goes_on
    assert after.unit.slug == "weaving-shed"
    assert {"canon", "mirror"} <= set(after.again)
    assert {"retrograde", "accumulation"} <= set(after.new)
    assert [one.unit.slug for one in near["rock-pool"].comes_before] == ["seeds-on-the-move"]
    assert near["seeds-on-the-move"].comes_before == ()


def test_only_older_pupils_go_on_and_not_years_later() -> None:
    pool = alone(UNITS["rock-pool"], "pool", "3")
    others = [alone(UNITS["rock-pool"], f"year-{n}", str(n)) for n in (1, 2, 3, 4, 5, 6)]
    near = related([pool, *others])["pool"]
    assert {one.unit.slug for one in near.goes_on} == {"year-4", "year-5"}
    assert {one.unit.slug for one in near.comes_before} == {"year-1", "year-2"}
    assert {one.unit.slug for one in near.alike} == {"year-3"}
    assert set(near.alike[0].again) == set(pool.topics)


def test_what_an_author_names_comes_first_and_lists_stay_short() -> None:
    pool = alone(UNITS["rock-pool"], "pool", "3")
    many = [alone(UNITS["rock-pool"], f"pool-{n:02}", "4") for n in range(20)]
    named = replace(alone(UNITS["weaving-shed"], "zebra", "4"), builds_on=Neighbours("", ("pool",)))
    goes_on = related([pool, *many, named])["pool"].goes_on
    assert len(goes_on) == MOST
    assert goes_on[0].unit.slug == "zebra"


def test_the_two_directions_agree() -> None:
    near = related(FOUND)
    for slug, one in near.items():
        for after in one.goes_on:
            assert slug in {back.unit.slug for back in near[after.unit.slug].comes_before}
