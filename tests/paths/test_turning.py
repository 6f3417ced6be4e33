"""Turning the hall round turns the paths; a mirror mirrors them; a swap twice is no swap.

A hall is turned with all that names a side of it. What faces partners, a centre or as it likes
names none, so it stands as before to the front; which way it looks is turned with the places.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from build_tools.body.ages import at_age
from build_tools.model.dance import Action, Dance, Section, Standing
from build_tools.paths.class_in_groups import class_in_groups
from build_tools.paths.dancing import dance_section, room_of
from build_tools.paths.facings import facings
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import Hall, Point, ahead, dancing_area
from build_tools.paths.legs import Leg, Moment, point_of
from build_tools.paths.starting import centres_of
from build_tools.paths.walking import Dancer
from build_tools.paths.whole import paths_of
from tests.paths.dances import dance_of, loom, pool, section, standing
from tests.paths.strategies import FACINGS, dances, halls, pupils

PUPILS = 7
BODY = at_age(8)
ROUND = {"front": "right", "right": "back", "back": "left", "left": "front"}
"""Each side after a quarter turn clockwise."""
OVER = {"left": "right", "right": "left"}
"""Each side after left and right have changed over."""


def danced(dance: Dance, one: Section, at_first: list[Moment]) -> list[Moment]:
    """Where everybody ends who goes through a section from such places."""
    return [dancer.now() for dancer in dancers_after(dance, one, at_first)]


def dancers_after(dance: Dance, one: Section, at_first: list[Moment]) -> list[Dancer]:
    """Everybody after a section begun in such places."""
    dancers = [Dancer(m.x, m.y, m.facing) for m in at_first]
    together = class_in_groups(len(dancers), groups_of(one).size, (groups_of(one).size,))
    dance_section(
        dancers,
        dance,
        one,
        together,
        0.0,
        room_of(together, together, (0.0, 0.0), tuple((m.x, m.y) for m in at_first)),
        BODY,
        0.5,
    )
    return dancers


def legs_of(dance: Dance, one: Section, at_first: list[Moment]) -> list[list[Leg]]:
    """The legs of everybody who goes through a section from such places."""
    return [dancer.legs for dancer in dancers_after(dance, one, at_first)]


def starting(many: int) -> list[Moment]:
    """Places without any order to them, nobody in another's."""
    return [
        Moment(1.7 * math.cos(n) + n * 0.31, 2.3 * math.sin(2 * n), 41.0 * n, 1)
        for n in range(many)
    ]


def changed(dance: Dance, sides: dict[str, str], actions: Callable[[Action], Action]) -> Dance:
    """The dance with what it says of the hall's sides changed, and each action changed."""

    def side(name: str | None) -> str | None:
        return None if name is None else sides.get(name, name)

    def standing_so(one: Standing) -> Standing:
        return replace(one, facing=sides.get(one.facing, one.facing))

    return replace(
        dance,
        sides={},
        motifs={
            name: replace(
                motif,
                actions=tuple(
                    replace(actions(a), facing=side(actions(a).facing), towards=side(a.towards))
                    for a in motif.actions
                ),
            )
            for name, motif in dance.motifs.items()
        },
        sections={
            letter: replace(
                one,
                start=standing_so(one.start),
                end=standing_so(one.end),
                danced=tuple(replace(p, towards=side(p.towards)) for p in one.danced),
            )
            for letter, one in dance.sections.items()
        },
    )


def same(found: Moment, place: Point, facing: float) -> bool:
    near = math.dist((found.x, found.y), place) < 1e-5
    return near and math.cos(math.radians(found.facing - facing)) > 1 - 1e-9


@given(dances())
def test_turning_the_hall_a_quarter_turns_every_way(dance: Dance) -> None:
    plain, turned = (changed(dance, sides, lambda a: a) for sides in ({}, ROUND))
    one = plain.sections[plain.form[0]]
    assume(one.counts is not None)
    at_first = starting(PUPILS)
    here = danced(plain, one, at_first)
    turned_first = [Moment(-m.y, m.x, m.facing + 90, 1) for m in at_first]
    there = danced(turned, turned.sections[one.letter], turned_first)
    for before, after in zip(here, there, strict=True):
        assert same(after, (-before.y, before.x), before.facing + 90)


def facing_a_side(dance: Dance) -> Dance:
    """The dance with nobody facing a partner, a centre or as they like when a section begins."""
    known = dict.fromkeys(("partner", "centre", "outwards", "mixed"), "left")
    return replace(
        dance,
        front="The middle of the ring",
        sections={
            letter: replace(
                one,
                start=replace(one.start, facing=known.get(one.start.facing, one.start.facing)),
                end=replace(one.end, facing=known.get(one.end.facing, one.end.facing)),
            )
            for letter, one in dance.sections.items()
        },
    )


@given(dances(), pupils, halls, st.floats(0, 1))
def test_turning_the_hall_turns_the_whole_class_at_every_moment(
    dance: Dance, many: int, hall: Hall, part: float
) -> None:
    """Places, joins and made up sections too, wherever all who stand face a side."""
    sided_dance = facing_a_side(dance)
    plain, turned = (changed(sided_dance, sides, lambda a: a) for sides in ({}, ROUND))
    here = paths_of(plain, many, hall)
    there = paths_of(turned, many, Hall(hall.depth, hall.width))
    for moment in (0.0, here.lasts * part, here.lasts):
        for before, after in zip(here.everybody(moment), there.everybody(moment), strict=True):
            assert same(after, (-before.y, before.x), before.facing + 90)


@pytest.mark.parametrize("pupils", [3, 9, 26])
def test_turning_the_hall_turns_who_shares_a_partner_that_stands_with_the_first(
    pupils: int,
) -> None:
    """Two who have met in one place, in a hall of 5 by 5 metres: the way across from one to the
    other was that of the last places of a sum, so the third went there or stayed."""
    go = [{"travel": 1}]
    start = standing("scattered", "front", within="face to face")
    meet = {"what": ["go", "go", "go"], "as": "unison", "towards": "partner"}
    pairs = {"size": 2}
    dance = dance_of(
        "A B A",
        {
            "A": section(8, start, [meet, {"what": ["go", "go"], "as": "unison"}], groups=pairs),
            "B": section(8, standing("scattered"), [meet], groups=pairs),
        },
        {"go": go},
        transitions=[
            {"from": one, "to": other, "as": "move", "counts": 1} for one, other in ("AB", "BA")
        ],
    )
    sided = facing_a_side(dance)
    plain, turned = (changed(sided, sides, lambda a: a) for sides in ({}, ROUND))
    here, there = (paths_of(one, pupils, Hall(5.0, 5.0)) for one in (plain, turned))
    for moment in range(round(here.lasts) + 1):
        for before, after in zip(here.everybody(moment), there.everybody(moment), strict=True):
            assert same(after, (-before.y, before.x), before.facing + 90)


def other_side(action: Action) -> Action:
    """The action to the other side; one that says none goes to the right, so to the left."""
    return replace(action, side="left" if action.side != "left" else "right")


def right_side(action: Action) -> Action:
    """The action with its side said, since what is not said goes to the right for all."""
    return replace(action, side=action.side or "right")


@given(dances(), st.floats(0, 1))
def test_a_mirror_mirrors_every_way_and_every_curve(dance: Dance, part: float) -> None:
    plain = changed(dance, {}, right_side)
    mirrored = changed(dance, OVER, other_side)
    one = plain.sections[plain.form[0]]
    assume(one.counts is not None)
    at_first = starting(PUPILS)
    here = legs_of(plain, one, at_first)
    over = [Moment(-m.x, m.y, -m.facing, 1) for m in at_first]
    there = legs_of(mirrored, mirrored.sections[one.letter], over)
    for mine, theirs in zip(here, there, strict=True):
        assert [(leg.start, leg.end) for leg in mine] == [(leg.start, leg.end) for leg in theirs]
        for before, after in zip(mine, theirs, strict=True):
            x, y = point_of(before, part)
            assert math.dist(point_of(after, part), (-x, y)) < 1e-5
            assert math.cos(math.radians(after.face1 + before.face1)) > 1 - 1e-9


@given(st.sampled_from(FACINGS), st.integers(2, 12), halls, st.booleans())
def test_who_looks_where_is_turned_and_mirrored_with_the_places(
    facing: str, many: int, hall: Hall, mirror: bool
) -> None:
    """In pairs; the same eye for room to move, whichever way the hall lies.

    But for who stands right on a line on which a mirror leaves a hall as it is.
    """
    places = [(m.x * hall.width / 9, (m.y + 0.3) * hall.depth / 9) for m in starting(many)]
    assume(not mirror or all(abs(math.sin(4 * math.atan2(y, x))) > 1e-3 for x, y in places))
    together = class_in_groups(many, 2, (2,))
    area = dancing_area(hall, "front in the middle")
    over = OVER if mirror else ROUND
    moved = [(-x, y) if mirror else (-y, x) for x, y in places]
    moved_area = area if mirror else area.turned(1)
    here = facings(facing, places, together, centres_of(places, together, area), area)
    there = facings(
        over.get(facing, facing),
        moved,
        together,
        centres_of(moved, together, moved_area),
        moved_area,
    )
    for before, after in zip(here, there, strict=True):
        wanted = -before if mirror else before + 90
        assert math.cos(math.radians(after - wanted)) > 1 - 1e-9


@given(st.sampled_from(("question and answer", "side by side")), st.booleans())
def test_a_swap_twice_is_no_swap(fit: str, swap: bool) -> None:
    """Both things and both roles changed over: the same dancers do the same."""

    def of(what: list[str], roles: list[str]) -> Dance:
        pairs = {"size": 2, "roles": {"ones": [1], "twos": [2]}}
        facing = standing("pairs", "partner", within="face to face", apart=4, groups_apart=5)
        line = {"what": what, "as": fit, "roles": roles, "swap": swap}
        go = [{"travel": 4, "direction": "backwards"}]
        turn = [{"turn": 2, "turn_by": "half"}, {"travel": 2, "direction": "sideways"}]
        return dance_of(
            "A", {"A": section(32, facing, [line], groups=pairs)}, {"go": go, "turn": turn}
        )

    once = paths_of(of(["go", "turn"], ["ones", "twos"]), 8)
    twice = paths_of(of(["turn", "go"], ["twos", "ones"]), 8)
    at_start = (once.at_first, once.at(0, 0))
    assert at_start == (twice.at_first, twice.at(0, 0))
    if fit == "side by side":
        assert once.legs == twice.legs
    ends = zip(once.everybody(32), twice.everybody(32), strict=True)
    assert all(same(one, (other.x, other.y), other.facing) for one, other in ends)


@pytest.mark.parametrize("dance", [pool(), loom()], ids=["pool", "loom"])
def test_the_way_ahead_is_where_a_dancer_faces(dance: Dance) -> None:
    paths = paths_of(dance, 12)
    forwards = [
        leg
        for legs in paths.legs
        for leg in legs
        if leg.face0 == leg.face1 and not leg.bend and math.dist(leg[2:4], leg[4:6]) > 0.1
    ]
    assert forwards
    ways = {
        round((math.degrees(math.atan2(leg.x1 - leg.x0, leg.y0 - leg.y1)) - leg.face0) % 360)
        for leg in forwards
    }
    assert ways <= {0, 90, 180, 270, 360}
    assert ahead(90) == pytest.approx((1, 0))
