"""What a page repeats stands in it once, and looks the same."""

from __future__ import annotations

import re

import resvg_py

from build_tools.building.finishing.once import once
from build_tools.views.diagrams.standing_plan import standing_plan
from build_tools.views.diagrams.svg import drawing, line, path, text
from tests.support.sound_bank import real_unit

ONE = drawing(
    "A wave",
    100,
    40,
    line(0, 20, 100, 20, 2, "rule"),
    text("up", 50, 30, 13, kind="quiet"),
    kind="strip",
)
OTHER = drawing("A rest", 100, 40, path("M1 1h90v30h-90z", 1.6), text("down", 50, 30), kind="strip")
WAY = "M1 2h3" * 12
PAGE = f"<body><p>First.</p>{ONE}<p>Again:</p>{ONE}{OTHER}<p>and {ONE} last</p></body>"


def test_a_picture_that_comes_again_shows_the_first() -> None:
    shorter = once(PAGE)
    assert len(shorter) < len(PAGE)
    assert shorter.count("<title>A wave</title>") == 3
    assert shorter.count('<use href="#d1"/>') == 2
    assert shorter.count(' id="d1"') == shorter.count("M0 20L100 20") == 1
    assert re.sub(r"<svg.*?</svg>", "", shorter) == re.sub(r"<svg.*?</svg>", "", PAGE)
    assert once(shorter) == shorter


def test_what_comes_once_keeps_its_shapes_where_they_are() -> None:
    page = f"<body>{OTHER}</body>"
    assert "<use" not in once(page)
    assert "M1 1h90v30h-90z" in once(page)
    assert once("<body><p>No picture</p></body>") == "<body><p>No picture</p></body>"


def test_a_picture_in_a_picture_goes_with_it() -> None:
    inner = path("M1 2h3", 2) + path("M1 5h3", 2)
    nested = f'<svg viewBox="0 0 9 9"><svg x="1" y="1">{inner}</svg></svg>'
    shorter = once(nested * 3)
    assert shorter.count("M1 5h3") == 1
    assert shorter.count("<use ") == 2
    assert shorter.count("<svg") == shorter.count("</svg>") == 4


def test_a_way_that_a_picture_draws_in_two_looks_stands_once() -> None:
    """The plan of a floor, whose dancers are a rim and paper inside, as resvg draws it."""
    unit = real_unit()
    svg = standing_plan(unit, next(iter(unit.dance.sections))).svg
    shorter = once(svg)
    assert len(shorter) < len(svg)
    assert shorter.count('<use href="#w1"') >= 1
    assert shorter.count(' id="w1"') == 1
    assert once(shorter) == shorter
    before, after = (drawn(one) for one in (svg, shorter))
    assert before == after


def test_ways_of_two_pictures_are_two() -> None:
    """A script may draw either of them anew."""
    both = "".join(
        f'<svg class="{name}"><path d="{WAY}" stroke-width="20"/>'
        f'<path d="{WAY}" class="hollow"/></svg>'
        for name in ("one", "other")
    )
    assert re.findall(r' id="(w\d)"', once(both)) == ["w1", "w2"]
    assert once(both).count(WAY) == 2


def drawn(svg: str) -> bytes:
    named = svg.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" color="#123" ', 1)
    return bytes(resvg_py.svg_to_bytes(svg_string=named))
