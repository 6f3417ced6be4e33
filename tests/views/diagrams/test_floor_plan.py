"""The floor from above: everybody of a class, once or twice, with roles told apart, and small."""

from __future__ import annotations

import re

import pytest

from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.roles import rows_marked
from build_tools.paths.leaving import leaving_the_hall
from build_tools.paths.whole import paths_of
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.diagrams.floor_marks import KINDS, marks
from build_tools.views.diagrams.floor_plan import floor_plan, unit_floor_plan
from tests.paths.dances import dance_of, loom, pool, section, standing
from tests.support.drawn import seen_in
from tests.support.sound_bank import every_unit, unit_named

LARGEST = 10_000
DOT = re.compile(r"M(-?[\d.]+) (-?[\d.]+)h0")


def dots(svg: str) -> list[tuple[float, float]]:
    """Where a dot is drawn, hollow ones once."""
    found = []
    for name, attributes in seen_in(svg).elements:
        if name == "path" and attributes.get("stroke-width") == "7":
            found += [(float(x), float(y)) for x, y in DOT.findall(attributes["d"])]
    return found


def test_every_dancer_is_drawn_and_twice_where_they_end_elsewhere() -> None:
    dance = pool()
    once = floor_plan(dance, dance.sections["B"])
    roles = 4
    assert len(dots(once.svg)) == USUAL_CLASS + roles, "and one of each in the legend"
    assert "All end where they start, and are drawn once." in once.words
    rows = loom()
    moved = floor_plan(rows, rows.sections["A"])
    assert len(dots(moved.svg)) == 2 * USUAL_CLASS + 4


def test_dots_stand_where_the_paths_put_them_to_scale() -> None:
    dance = pool()
    found = dots(floor_plan(dance, dance.sections["B"]).svg)
    paths = paths_of(dance)
    (rings,) = (one for one in paths.stretches if one.section and one.section.letter == "B")
    scale = 320 / paths.hall.width
    middle = (180, 22 + paths.hall.depth * scale / 2)
    for one in paths.everybody(rings.ends):
        x, y = middle[0] + one.x * scale, middle[1] + one.y * scale
        assert any(abs(x - u) < 0.06 and abs(y - v) < 0.06 for u, v in found)


def test_roles_look_different_and_are_named() -> None:
    drawn = [marks(kind, [(0, 0, 0)]) for kind in range(KINDS)]
    assert len(set(drawn)) == KINDS
    dance = pool()
    words = seen_in(floor_plan(dance, dance.sections["C"]).svg).words
    assert {"ones", "twos"} <= set(words)


@pytest.mark.parametrize(
    ("slug", "letter", "roles"),
    [
        ("marble-run", "C", {"tracks", "marbles"}),
        ("rope-bridge", "B", {"wests", "easts"}),
    ],
)
def test_everybody_has_a_role_also_where_all_do_one_thing_or_make_it_up(
    slug: str, letter: str, roles: set[str]
) -> None:
    """Advisers could not see who is track first, nor that wests and easts have changed banks."""
    unit = unit_named(slug)
    figure = unit_floor_plan(unit, unit.dance.sections[letter])
    assert roles <= set(seen_in(figure.svg).words)
    assert roles <= {name for name, _ in rows_marked(unit.dance.sections[letter])}


def test_the_end_is_where_a_section_ends_and_not_where_the_next_one_stands() -> None:
    """Flocks scattered at the end of a gathering were drawn as the sixes that come next."""
    unit = unit_named("starlings")
    paths = in_a_hall(unit)
    first = next(one for one in paths.stretches if one.section is not None)
    found = dots(unit_floor_plan(unit, unit.dance.sections["A"]).svg)
    scale = 320 / paths.hall.width
    middle = (180, 22 + paths.hall.depth * scale / 2)
    for one in paths.everybody(first.ends - 0.001):
        x, y = middle[0] + one.x * scale, middle[1] + one.y * scale
        assert any(abs(x - u) < 0.2 and abs(y - v) < 0.2 for u, v in found)


def test_a_unit_is_drawn_for_its_own_class_and_floor() -> None:
    """Half a class in a cleared classroom was drawn as thirty in a hall of 18 by 10 metres."""
    unit = unit_named("after-home-time")
    own = unit.space.drawn_for
    assert own is not None
    for one in unit.dance.sections.values():
        figure = unit_floor_plan(unit, one)
        assert figure.words[-1] == (
            f"Drawn for {own.pupils} pupils on a floor of {own.width} by {own.depth} metres."
        )
    stands = unit_floor_plan(unit, unit.dance.sections["A"])
    assert len(dots(stands.svg)) in (own.pupils, 2 * own.pupils + 2)


def test_sides_have_the_names_that_the_dance_gives_them() -> None:
    dance = pool()
    assert {"sea", "beach"} <= set(seen_in(floor_plan(dance, dance.sections["A"]).svg).words)


def test_what_is_made_up_is_said_to_be_one_way() -> None:
    dance = pool()
    assert (
        "One way it may look. Pupils find their own, and end where it takes them."
        in floor_plan(dance, dance.sections["D"]).words
    )


def test_who_would_go_through_a_wall_is_counted() -> None:
    go = {"travel": 16, "direction": "forwards"}
    out = dance_of(
        "A",
        {"A": section(16, standing("scattered"), [{"what": ["go"], "as": "unison"}])},
        {"go": [go]},
    )
    (told,) = (one for one in floor_plan(out, out.sections["A"]).words if "wall" in one)
    found = re.fullmatch(
        r"(\d+) of 30 would go through the front wall\. Let whoever stands nearest to it start "
        r"([\d.]+) metres further in, or let everyone take smaller steps\.",
        told,
    )
    assert found
    over = leaving_the_hall(paths_of(out))
    assert int(found[1]) == len({one.dancer for one in over}) > 0
    assert max(one.metres for one in over) <= float(found[2]) < max(o.metres for o in over) + 0.5
    stay = pool()
    assert not any("wall" in one for one in floor_plan(stay, stay.sections["B"]).words)


def test_a_plan_is_small_and_drawn_alike_twice() -> None:
    for unit in every_unit():
        for one in unit.dance.sections.values():
            figure = floor_plan(unit.dance, one)
            assert len(figure.svg.encode()) < LARGEST
            paths_of.cache_clear()
            assert floor_plan(unit.dance, one).svg == figure.svg


def test_open_ways_that_are_not_drawn_are_said_to_be_open() -> None:
    """An adviser of the windy day: all thirty stood where they began, though "at the end: spread
    out"; and a dotted line had no key."""
    seeds, home = unit_named("seeds-on-the-move"), unit_named("after-home-time")
    figure = unit_floor_plan(seeds, seeds.dance.sections["D"])
    words = "The ways are open and are not drawn; the marks show where they start."
    assert words in figure.words
    assert "The dotted line is the edge of their place." in figure.words
    assert len(dots(figure.svg)) == 30
    assert words not in unit_floor_plan(home, home.dance.sections["C"]).words
    assert words not in unit_floor_plan(seeds, seeds.dance.sections["C"]).words
