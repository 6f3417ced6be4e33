"""The dance as a strip with names: every name is there, widths add up, and outlines say it too."""

from __future__ import annotations

import re

import pytest

from build_tools.model.unit import Unit
from build_tools.views.dance.growth import growth
from build_tools.views.diagrams.named_strip import Grown, StripLook, named_strip
from tests.support.drawn import seen_in
from tests.support.sound_bank import every_unit, real_unit

UNITS = every_unit()


def outlines(svg: str) -> list[str]:
    return [a["d"] for n, a in seen_in(svg).elements if n == "path" and a["d"].endswith("z")]


@pytest.mark.parametrize("unit", UNITS, ids=[unit.slug for unit in UNITS])
@pytest.mark.parametrize("look", [StripLook(), StripLook(960, 64, 19)])
def test_every_part_has_an_outline_inside_the_strip(unit: Unit, look: StripLook) -> None:
    shapes = outlines(named_strip(unit.dance, look).svg)
    assert len(shapes) == len(unit.dance.form)
    left = [float(found.group(1)) for d in shapes if (found := re.match(r"M([\d.]+)", d))]
    assert left == sorted(left)
    assert left[0] >= 0
    assert left[-1] < look.width


def test_the_rock_pools_parts_are_named() -> None:
    words = seen_in(named_strip(real_unit().dance).svg).text()
    for name in ("anemones", "crabs", "storm"):
        assert words.count(name) == 2  # in the title and in its block


def test_what_is_not_counted_has_an_edge_of_its_own() -> None:
    scalloped = [d for d in outlines(named_strip(real_unit().dance).svg) if "q" in d]
    free = [s for s in real_unit().dance.sections.values() if s.counts is None]
    assert len(scalloped) == len(free) == 1


def test_what_comes_later_is_dashed_and_what_is_new_is_heavy() -> None:
    for number, one in enumerate(growth(real_unit()), start=1):
        figure = named_strip(real_unit().dance, grown=Grown(one.before, one.today, one.joined))
        elements = [a for n, a in seen_in(figure.svg).elements if n == "path"]
        made = {*one.before, *one.today}
        later = [letter for letter in real_unit().dance.form if letter not in made]
        assert sum("stroke-dasharray" in a for a in elements) == len(later), number
        assert sum(a.get("stroke-width") == "3.5" for a in elements) == len(one.today)
        assert ("still to come" in figure.title) == bool(later)
