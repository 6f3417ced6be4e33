"""What a page's script plays of a body: small, near the body itself, and the same as here."""

from __future__ import annotations

import json
from dataclasses import replace
from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.body.poses import BODIES, moved, pose_at
from build_tools.body.skeleton import skeleton
from build_tools.model.dance import Action
from build_tools.movement.effort import EFFORT_ACTIONS
from build_tools.views.dance.not_danced import not_danced
from build_tools.views.diagrams.body_frames import STEP, body_form, places, shown_at
from build_tools.views.diagrams.body_lines import View
from build_tools.views.diagrams.body_views import view_of
from tests.body.strategies import FEELS, actions, befores, bodies, joined, parts, published
from tests.support.figure_sheet import danced
from tests.support.page_script import ask
from tests.support.sound_bank import real_bank

MOST_BYTES = 6_500
FURTHEST = 5.5
"""Units of a hundred: half a step of the grid, and what a straight way leaves out."""


@given(joined, bodies, parts)
def test_the_script_shows_what_is_worked_out_here(
    pair: tuple[Action, Action | None], body: str, time: float
) -> None:
    form = body_form([pair], body)
    assert ask("bodies.at", form, 0, time) == pytest.approx(shown_at(form, 0, time), abs=1e-9)


@given(joined, bodies, parts)
def test_what_is_shown_is_near_the_body_itself(
    pair: tuple[Action, Action | None], body: str, time: float
) -> None:
    done = moved(*pair, body)
    truth = places(skeleton(pose_at(done, time)), View(view_of(done)))
    shown = shown_at(body_form([pair], body), 0, time)
    off = [abs(a - b) for a, b in zip(shown, (n for at in truth for n in at), strict=True)]
    assert max(off) < FURTHEST + STEP / 2


@given(st.lists(st.tuples(actions, befores), min_size=2, max_size=2), bodies, parts)
def test_a_move_is_the_same_beside_others(
    pairs: list[tuple[Action, Action | None]], body: str, time: float
) -> None:
    whole = body_form(pairs, body)
    last = len(pairs) - 1
    assert shown_at(whole, last, time) == shown_at(body_form([pairs[last]], body), 0, time)


@pytest.mark.parametrize("body", BODIES)
def test_a_units_moves_are_small(body: str) -> None:
    units: dict[str, list[tuple[Action, Action | None]]] = {}
    dances = {unit.title: unit.dance for unit in real_bank().units}
    for unit, name, actions_ in danced():
        if not_danced(dances[unit], name) is None:
            units.setdefault(unit, []).extend(zip(actions_, (None, *actions_), strict=False))
    for unit, pairs in units.items():
        form = body_form(list(dict.fromkeys(pairs)), body)
        size = len(json.dumps(form, separators=(",", ":")).encode())
        assert size <= MOST_BYTES, (unit, size)


FELT = [(feel,) for feel in (*FEELS, *EFFORT_ACTIONS)]
TIMES = [n / 10 for n in range(11)]


@pytest.mark.parametrize(
    "action",
    [
        Action("gesture", Fraction(4), "open", level="low to high", size="small to big"),
        Action("travel", Fraction(4), level="middle", direction="forwards"),
        Action("transfer", Fraction(2), "rock", direction="sideways", level="middle"),
    ],
)
@pytest.mark.parametrize("body", BODIES)
def test_no_two_feels_look_alike(action: Action, body: str) -> None:
    """At some moment some joint is somewhere else, by two hundredths of the child at least."""
    seen = {}
    for feel in FELT:
        done = moved(replace(action, dynamics=feel), None, body)
        view = View(view_of(done))
        seen[feel] = [
            n for t in TIMES for at in places(skeleton(pose_at(done, t)), view) for n in at
        ]
    for one, other in combinations(FELT, 2):
        off = max(abs(a - b) for a, b in zip(seen[one], seen[other], strict=True))
        assert off > 2, (one, other, off)


def test_the_grid_holds_every_published_move() -> None:
    for body in BODIES:
        for action, before in published():
            done = moved(action, before, body)
            for time in TIMES:
                for x, y in places(skeleton(pose_at(done, time)), View(view_of(done))):
                    assert -75 < x < 75
                    assert -4 < y < 145
