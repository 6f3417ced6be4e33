"""Turning the hall round turns the paths; a mirror mirrors them; a swap twice is no swap."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from build_tools.body.ages import at_age
from build_tools.model.dance import Action, Dance, Section
from build_tools.paths.class_in_groups import class_in_groups
from build_tools.paths.dancing import dance_section, room_of
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.hall import Point, ahead
from build_tools.paths.legs import Moment
from build_tools.paths.walking import Dancer
from build_tools.paths.whole import paths_of
from tests.paths.dances import dance_of, loom, pool, section, standing
from tests.paths.strategies import dances

PUPILS = 7
BODY = at_age(8)
ROUND = {"front": "right", "right": "back", "back": "left", "left": "front"}
"""Each side after a quarter turn clockwise."""
OVER = {"left": "right", "right": "left"}
"""Each side after left and right have changed over."""


def danced(dance: Dance, one: Section, at_first: list[Moment]) -> list[Moment]:
    """Where everybody ends who goes through a section from such places."""
    dancers = [Dancer(m.x, m.y, m.facing) for m in at_first]
    together = class_in_groups(len(dancers), groups_of(one).size, (groups_of(one).size,))
    dance_section(dancers, dance, one, together, 0.0, room_of(together, (0.0, 0.0)), BODY, 0.5)
    return [dancer.now() for dancer in dancers]


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
                one, danced=tuple(replace(p, towards=side(p.towards)) for p in one.danced)
            )
            for letter, one in dance.sections.items()
        },
    )


def same(found: Moment, place: Point, facing: float) -> bool:
    near = math.dist((found.x, found.y), place) < 1e-5
    return near and math.cos(math.radians(found.facing - facing)) > 1 - 1e-9


@given(dances())
def test_turning_the_hall_a_quarter_turns_every_path(dance: Dance) -> None:
    one = dance.sections[dance.form[0]]
    assume(one.counts is not None)
    at_first = starting(PUPILS)
    here = danced(changed(dance, {}, lambda a: a), one_of(dance, one, {}), at_first)
    turned_first = [Moment(-m.y, m.x, m.facing + 90, 1) for m in at_first]
    turned = changed(dance, ROUND, lambda a: a)
    there = danced(turned, turned.sections[one.letter], turned_first)
    for before, after in zip(here, there, strict=True):
        assert same(after, (-before.y, before.x), before.facing + 90)


def one_of(dance: Dance, one: Section, sides: dict[str, str]) -> Section:
    """The section as `changed` leaves it."""
    return changed(dance, sides, lambda a: a).sections[one.letter]


def sided(action: Action) -> Action:
    """The action with its side said, since what is not said goes to the right for all."""
    return replace(action, side=action.side or "right")


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
