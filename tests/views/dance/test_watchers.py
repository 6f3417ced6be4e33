"""Where watchers sit, on the floor plan and in its text version. Common practice, no source."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from build_tools.checking.check_bank import check_unit
from build_tools.movement.watchers import watchers
from build_tools.views.diagrams.floor_plan import floor_plan
from tests.support.drawn import seen_in
from tests.support.sound_bank import real_unit

UNUSUAL = Path(__file__).parents[2] / "unusual_units"
THICK = "4"


@pytest.mark.parametrize(
    ("front", "where"),
    [
        ("One long wall, where watchers sit.", "at the front"),
        ("The middle of the long wall", "at the front"),
        ("The stage end, with the band at one side", "at the front"),
        ("No single front. Watchers sit on a ring of chairs, on all sides.", "all round"),
        ("In the round", "all round"),
        ("Watchers are all around", "all round"),
        ("There is no front: benches stand on all four sides", "all round"),
        ("Two sides: watchers face each other across the hall", "on two sides"),
        ("Watchers sit along both long walls", "on two sides"),
        ("One long wall, the foot. Watchers sit by the short walls.", "at the short walls"),
        ("A long wall; watchers sit at both ends of the hall", "at the short walls"),
        (
            "One long wall. Watchers sit by the short walls, never at the door's.",
            "at one short wall",
        ),
        ("A long wall; watchers sit at one end of the hall", "at one short wall"),
        ("One short wall, where watchers sit", "at the front"),
        ("The wall with the board. Watchers sit at the tables, along the walls", "at the tables"),
        ("The end with the tables, where watchers sit", "at the front"),
        ("The middle of the ring", "front in the middle"),
    ],
)
def test_the_front_line_says_where_watchers_sit(front: str, where: str) -> None:
    assert watchers(replace(real_unit().dance, front=front)) == where


@pytest.mark.parametrize(
    ("front", "sign", "sides", "said"),
    [
        ("One long wall", "front: watchers", 1, "Watchers sit at the front"),
        ("On all sides", "watchers all round", 4, "Watchers sit all round."),
        ("Both long walls", "watchers on two sides", 2, "Watchers sit on two sides"),
        (
            "A long wall. Watchers sit by the short walls",
            "front; watchers at both ends",
            2,
            "Watchers sit at both ends, the left and the right",
        ),
        ("The middle", "front: the middle", 0, "The front is the middle"),
        (
            "The board. Watchers sit at the tables",
            "front; watchers at the tables",
            0,
            "Watchers sit at the tables, round the cleared floor.",
        ),
    ],
)
def test_the_plan_and_the_text_version_say_it(front: str, sign: str, sides: int, said: str) -> None:
    dance = replace(real_unit().dance, front=front)
    figure = floor_plan(dance, dance.sections["A"])
    seen = seen_in(figure.svg)
    assert [w for w in seen.words if "watchers" in w or "front" in w] == [sign]
    assert seen.values("path", "stroke-width").count(THICK) == sides
    assert [one for one in figure.words if one.startswith(said)]


def test_a_dance_in_the_round_has_no_front_with_watchers() -> None:
    unit = check_unit(UNUSUAL, "round-live-drums", {}).unit
    assert unit is not None
    for section in unit.dance.sections.values():
        figure = floor_plan(unit.dance, section)
        assert "front: watchers" not in figure.svg
        assert "Watchers sit all round." in figure.words
