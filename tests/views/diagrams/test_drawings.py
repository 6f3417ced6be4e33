"""What holds for every drawing: a title, words, its own ids, and nothing the policy refuses."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from build_tools.model.dance import Standing
from build_tools.movement.development import actions_of
from build_tools.schema_check.schemas import schema
from build_tools.views.diagrams.figure import Figure
from build_tools.views.diagrams.floor_plan import floor_plan
from build_tools.views.diagrams.formation_places import facing, places
from build_tools.views.diagrams.parts import parts_figure
from build_tools.views.diagrams.ruler import ruler, upright
from build_tools.views.diagrams.score import dance_score
from build_tools.views.diagrams.small_line import small_line
from build_tools.views.diagrams.strip import order_strip
from build_tools.views.words.plain_words import standing_in_words
from tests.support.drawn import seen_in
from tests.support.sound_bank import real_bank

LEAST_TEXT = 13
"""Units at 360 to the width: 9.5 points on paper at the 95 mm where the smallest is printed."""
FORMATIONS: list[str] = schema("shared")["$defs"]["formation"]["enum"]
FACINGS: list[str] = schema("shared")["$defs"]["facing"]["enum"]


def figures() -> Iterator[Figure]:
    for unit in real_bank().units:
        dance = unit.dance
        yield dance_score(dance, "score")
        yield small_line(dance, "line")
        for section in dance.sections.values():
            yield floor_plan(dance, section)
            if section.counts is not None and section.danced:
                yield parts_figure(dance, section)
        for name in (*dance.motifs, *dance.developments):
            yield order_strip(name, actions_of(dance, name), dance.phrase)


def test_every_drawing_has_a_title_and_words_and_keeps_the_policy() -> None:
    for figure in figures():
        seen = seen_in(figure.svg)
        name, attributes = seen.elements[0]
        assert (name, attributes["role"]) == ("svg", "img")
        assert seen.elements[1][0] == "title"
        assert figure.title
        assert figure.words
        assert all(figure.words)
        assert len(seen.ids()) == len(set(seen.ids()))
        for element, attributes in seen.elements:
            assert element not in ("style", "script", "foreignobject", "image")
            assert not [a for a in attributes if a == "style" or a.startswith("on")]


def test_nothing_in_a_drawing_is_too_small_to_read() -> None:
    sizes = {
        float(s) for figure in figures() for s in seen_in(figure.svg).values("text", "font-size")
    }
    assert sizes
    assert min(sizes) >= LEAST_TEXT


def test_every_hatch_that_is_used_is_there() -> None:
    for figure in figures():
        seen = seen_in(figure.svg)
        used = {
            a["fill"].removeprefix("url(#").removesuffix(")")
            for _, a in seen.elements
            if a.get("fill", "").startswith("url(")
        }
        assert used <= set(seen.ids())


def test_a_ruler_has_a_tick_a_unit_and_a_number_a_phrase() -> None:
    seen = seen_in(f"<svg>{ruler(0, 0, 32, 10, 8)}</svg>")
    ticks = sum(a["d"].count("v") for n, a in seen.elements if n == "path")
    assert ticks == 33
    assert seen.words == ["8", "16", "24", "32"]


def test_the_upright_ruler_is_silent_because_the_words_beside_it_speak() -> None:
    (svg, path) = seen_in(upright(12)).elements
    assert svg[1]["aria-hidden"] == "true"
    assert path[1]["d"].count("h3") == 9
    assert path[1]["d"].count("h6") == 2


@pytest.mark.parametrize("formation", FORMATIONS)
def test_every_formation_stands_inside_the_room_in_its_own_shape(formation: str) -> None:
    dots = places(formation)
    assert len(dots) >= 4
    assert len(set(dots)) == len(dots)
    assert all(abs(x) <= 1 and abs(y) <= 1 for x, y in dots)
    others = {places(other) for other in FORMATIONS if other != formation}
    assert dots not in others


@pytest.mark.parametrize("way", FACINGS)
def test_every_facing_can_be_drawn_and_said(way: str) -> None:
    for formation in FORMATIONS:
        standing = Standing(formation, way, "anywhere")
        angles = {facing(standing, n, place) for n, place in enumerate(places(formation))}
        assert all(0 <= angle < 360 for angle in angles)
        assert "facing" in standing_in_words(standing)


def test_a_circle_that_faces_the_middle_faces_away_from_itself() -> None:
    circle = places("circle")
    inwards = [facing(Standing("circle", "centre", ""), n, p) for n, p in enumerate(circle)]
    outwards = [facing(Standing("circle", "outwards", ""), n, p) for n, p in enumerate(circle)]
    assert [round((o - i) % 360) for i, o in zip(inwards, outwards, strict=True)] == [180] * 10
