"""A finger to the lips and a hand behind the ear are drawn there, and small sways are small."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.body.poses import BODIES, moved
from build_tools.body.ranges import beyond
from build_tools.body.skeleton import skeleton
from build_tools.views.diagrams.body_words import body_in_words
from tests.support.sound_bank import whole_bank

NEAR = 0.09
"""In parts of standing height: about the length of a hand, as a hand is before what it touches."""


def actions(word: str) -> list:  # type: ignore[type-arg]
    unit = next(unit for unit in whole_bank().units if unit.slug == "after-home-time")
    return [a for motif in unit.dance.motifs.values() for a in motif.actions if a.word == word]


@pytest.mark.parametrize("body", BODIES)
@pytest.mark.parametrize("level", ["low", "middle", "high"])
def test_a_finger_is_at_the_lips_and_a_hand_at_the_ear(body: str, level: str) -> None:
    """An adviser: a teacher who is told not to demonstrate shows these figures."""
    for word in ("hush", "listen"):
        (action,) = actions(word)
        drawn = skeleton(moved(replace(action, level=level), None, body).end)
        goal = drawn.chin if word == "hush" else drawn.head
        tip = drawn.right_arm.tip
        assert sum((a - b) ** 2 for a, b in zip(tip, goal, strict=True)) ** 0.5 < NEAR
        assert beyond(drawn) == ()


def test_the_captions_say_where_the_hand_is() -> None:
    (hush,), (listen,) = actions("hush"), actions("listen")
    assert body_in_words(moved(hush)) == "Still, a finger to the lips, held back"
    assert body_in_words(moved(listen)) == "Still, a hand behind one ear"


@pytest.mark.parametrize("body", BODIES)
def test_a_small_sway_has_the_arms_by_the_sides(body: str) -> None:
    """An adviser: "small and neat", and a figure that swings both arms wide."""
    for tick in actions("tick"):
        small, big = (
            skeleton(moved(one, None, body).end) for one in (tick, replace(tick, size="big"))
        )
        wide = [abs(one.left_arm.wrist.x - one.left_arm.shoulder.x) for one in (small, big)]
        assert wide[0] < 0.2
        assert wide[0] < wide[1]
