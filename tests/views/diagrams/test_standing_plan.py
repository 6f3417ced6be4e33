"""The small plan of the floor: everybody once, in their place, with their number."""

from __future__ import annotations

import re

import pytest

from build_tools.model.unit import Unit
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.diagrams.floor_plan import unit_floor_plan
from build_tools.views.diagrams.standing_plan import WIDTH, plan_height, standing_plan
from tests.support.drawn import seen_in
from tests.support.sound_bank import every_unit, whole_bank

_DOTS = re.compile(r"M[-\d.]+ [-\d.]+h0")
_NUMBERS = re.compile(
    r'<text x="([^"]+)" y="([^"]+)" font-size="\d+" font-weight="700"[^>]*>(\d+)<'
)
_BOX = re.compile(r'viewBox="0 0 ([\d.]+) ([\d.]+)"')


def unit_named(slug: str) -> Unit:
    return next(unit for unit in whole_bank().units if unit.slug == slug)


def told() -> list[tuple[Unit, str]]:
    return [
        (unit, letter)
        for unit in every_unit()
        for letter, section in unit.dance.sections.items()
        if section.start.apart is not None
    ]


def test_every_dancer_has_a_number_of_the_group() -> None:
    """Fours, numbered 1 to 4; of 30 there are six fours and two threes."""
    svg = standing_plan(unit_named("magnets"), "C").svg
    digits = "".join(found[3] for found in _NUMBERS.finditer(svg))
    assert sorted(digits) == sorted("1234" * 6 + "123" * 2)
    for found in _NUMBERS.finditer(svg):
        assert len(found[1].split()) == len(found[2].split()) == len(found[3])


def test_number_one_of_the_chain_is_nearest_to_the_front() -> None:
    """The unit: number 1 at the north end, which is the front, the top of the plan."""
    height = {
        digit: float(y)
        for found in _NUMBERS.finditer(standing_plan(unit_named("magnets"), "C").svg)
        for digit, y in zip(found[3], found[2].split(), strict=True)
    }
    assert height["1"] < height["2"] < height["3"] < height["4"]


def test_the_places_are_those_of_the_dance_from_above() -> None:
    for unit, letter in told()[:12]:
        paths = in_a_hall(unit)
        stretch = next(s for s in paths.stretches if s.section and s.section.letter == letter)
        scale = (WIDTH - 40) / paths.hall.width
        want = sorted(
            (round(WIDTH / 2 + one.x * scale), round(22 + (one.y + paths.hall.depth / 2) * scale))
            for one in paths.everybody(stretch.begins)
        )
        dots = {
            (round(float(x)), round(float(y)))
            for x, y in re.findall(r"M([-\d.]+) ([-\d.]+)h0", standing_plan(unit, letter).svg)
        }
        missing = [
            place
            for place in want
            if not any(abs(place[0] - x) < 2 and abs(place[1] - y) < 2 for x, y in dots)
        ]
        assert not missing, (unit.slug, letter)


@pytest.mark.parametrize("place", range(3))
def test_its_height_is_known_before_it_is_drawn(place: int) -> None:
    unit, letter = told()[place]
    box = _BOX.search(standing_plan(unit, letter).svg)
    assert box is not None
    assert float(box[2]) / float(box[1]) == pytest.approx(plan_height(unit, letter), abs=0.01)


def test_it_tells_the_same_in_words_and_says_where_the_front_is() -> None:
    for unit, letter in told():
        figure = standing_plan(unit, letter)
        place = unit.dance.sections[letter].start.place.rstrip(".")
        assert place[1:] in figure.words[0]
        assert figure.words[-1].endswith("the front at the top.")
        assert "front" in figure.svg
        assert len(figure.svg) < 6000


def test_a_plan_of_pairs_that_stand_anywhere_says_that_it_is_an_example() -> None:
    """Sheep and lambs in pairs, anywhere on the hill, were drawn as straight rows without a word;
    pairs in rows and columns have spots, and pairs who stay where they are have theirs. "One way."
    over a game of following a leader was read as a rule: all go one way."""
    said = "An example. Pairs may stand anywhere."
    gap = unit_named("through-the-gap")
    for figure in (
        standing_plan(gap, "B"),
        unit_floor_plan(gap, gap.dance.sections["B"]),
    ):
        assert said in seen_in(figure.svg).words
        assert said in figure.words
    for slug, letter in (("kite-and-string", "A"), ("seeds-on-the-move", "B")):
        unit = unit_named(slug)
        assert said not in unit_floor_plan(unit, unit.dance.sections[letter]).words
    box = _BOX.search(standing_plan(gap, "B").svg)
    assert box is not None
    assert float(box[2]) / float(box[1]) == pytest.approx(plan_height(gap, "B"), abs=0.01)
