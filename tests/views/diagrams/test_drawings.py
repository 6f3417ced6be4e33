"""What holds for every drawing: a title, words, its own ids, and nothing the policy refuses."""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.movement.development import actions_of
from build_tools.pages.pieces.motif_drawn import motif_drawn
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.floor_plan import floor_plan
from build_tools.views.diagrams.parts import parts_figure
from build_tools.views.diagrams.ruler import ruler
from build_tools.views.diagrams.score import dance_score
from build_tools.views.diagrams.small_line import small_line
from build_tools.views.diagrams.strip import order_strip
from tests.support.drawn import seen_in
from tests.support.sound_bank import real_bank

LEAST_TEXT = 13
"""Units at 360 to the width: 9.5 points on paper at the 95 mm where the smallest is printed."""
NUMBER = re.compile(r'<text [^>]*font-size="([\d.]+)"')


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


def test_no_number_on_the_way_of_a_body_is_too_small_to_read_in_its_strip() -> None:
    sizes = set()
    for unit in real_bank().units:
        for name in (*unit.dance.motifs, *unit.dance.developments):
            drawn = motif_drawn(unit.dance, name)
            scale = re.search(r"scale\(([\d.]+)\)", drawn.picture.svg)
            for body in drawn.bodies:
                written = [float(size) for size in NUMBER.findall(body.pieces)]
                assert not written or scale
                sizes |= {size * float(scale[1]) for size in written if scale}
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
