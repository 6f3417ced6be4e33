"""A path in fewer letters is drawn the same, point for point.

Outside reference: resvg, which reads both (SVG 2, chapter 9, "Paths", says what they mean).
"""

from __future__ import annotations

import re

import pytest
import resvg_py
from hypothesis import given
from hypothesis import strategies as st

from build_tools.building.finishing.short_paths import short_path, with_short_paths
from build_tools.views.diagrams.standing_plan import standing_plan
from tests.support.sound_bank import real_unit

# quarters, which a drawing program adds up without a rest
NUMBERS = st.integers(-160, 160).map(lambda n: f"{n / 4:g}")
FLAGS = st.sampled_from("01")
TAKES = {"L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2, "Z": 0, "M": 2}


@st.composite
def commands(draw: st.DrawFn) -> str:
    """One command, told in any of the ways that SVG allows."""
    name = draw(st.sampled_from([*TAKES, "A"]))
    if name == "A":
        radii = [f"{abs(float(draw(NUMBERS))) + 1:g}" for _ in range(2)]
        # an arc that goes nowhere is none, which programs hold in their own ways
        across = str(draw(st.integers(1, 40)))
        return " ".join(("a", *radii, draw(NUMBERS), draw(FLAGS), draw(FLAGS), across, "2.5"))
    told = [draw(NUMBERS) for _ in range(TAKES[name])]
    letter = draw(st.sampled_from([name, name.lower()]))
    return letter + draw(st.sampled_from([" ", ","])).join(told)


PATHS = st.lists(commands(), min_size=1, max_size=8).map(lambda all_: "M50 50" + " ".join(all_))


def drawn(d: str) -> bytes:
    picture = (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="-99 -99 300 300" width="90" height="90">'
        f'<path d="{d}" fill="none" stroke="black" stroke-width="3" stroke-linecap="round"/></svg>'
    )
    return bytes(resvg_py.svg_to_bytes(svg_string=picture))


@given(PATHS)
def test_the_shorter_path_is_drawn_the_same(d: str) -> None:
    shorter = short_path(d)
    assert len(shorter) <= len(d)
    assert drawn(shorter) == drawn(d), shorter
    assert short_path(shorter) == shorter


@pytest.mark.parametrize(
    ("written", "shorter"),
    [
        ("M20 22L340 22", "m20 22h320"),
        ("M69 60h0M160 60h0M223 60h0", "m69 60h0m91 0h0m63 0h0"),
        ("M34-61l1 12.5-0.5 9.5 0.5 8-10 0", "m34-61 1 12.5-.5 9.5.5 8H25"),
        ("M5 5a2 2 0 1 0 0 4", "m5 5a2 2 0 1 0 0 4"),
        ("M0 0L1 2.3456", "M0 0L1 2.3456"),
        ("no path", "no path"),
        ("M1 2 3", "M1 2 3"),
    ],
)
def test_by_hand(written: str, shorter: str) -> None:
    assert short_path(written) == shorter


def test_a_plan_of_the_floor_is_told_in_half_the_letters() -> None:
    unit = real_unit()
    svg = standing_plan(unit, next(iter(unit.dance.sections))).svg
    ways = re.compile(r' d="[^"]*"')
    before, after = (sum(map(len, ways.findall(one))) for one in (svg, with_short_paths(svg)))
    assert after < 0.8 * before
    assert ways.sub("", with_short_paths(svg)) == ways.sub("", svg)
