"""What a picture of a move shows, in words that no teacher takes otherwise."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from build_tools.body.poses import moved
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_words import body_in_words
from build_tools.views.words.plain_words import action_label
from tests.support.sound_bank import unit_named, whole_bank


def said(body: str = "standing", **fields: Any) -> str:
    """A move of two counts, in words."""
    return body_in_words(moved(Action(counts=Fraction(2), **fields), None, body))


@pytest.mark.parametrize(
    ("fields", "words"),
    [
        # teachers read "half high" as crouching, and "high" as on tiptoe
        ({"kind": "travel", "level": "middle", "direction": "forwards"}, "Two steps forwards"),
        (
            {"kind": "travel", "level": "high", "direction": "forwards"},
            "Two steps forwards, standing tall",
        ),
        ({"kind": "travel", "level": "low", "direction": "forwards"}, "Two steps forwards, low"),
        # a new teacher stopped at "turn right"
        (
            {"kind": "turn", "level": "middle", "side": "left", "turn_by": "whole"},
            "Turn once round to the left",
        ),
        # one half of a class goes to its left
        (
            {"kind": "travel", "level": "middle", "direction": "sideways", "step": "side-step"},
            "Two side-steps to one side",
        ),
        ({"kind": "transfer", "level": "high", "word": "settle"}, "Bend the knees"),
    ],
)
def test_a_move_is_said_as_a_teacher_hears_it(fields: dict[str, Any], words: str) -> None:
    assert said(**fields) == words


def test_nobody_leans_and_sits_tall() -> None:
    assert said("chair", kind="travel", level="high", direction="forwards") == (
        "On a chair: feet step on the spot, leaning forwards"
    )
    assert said("wheels", kind="travel", level="high", direction="forwards") == (
        "In a wheelchair: wheel forwards, sitting tall"
    )


def test_a_click_is_a_jolt_of_the_arms_and_no_crabs_pincers() -> None:
    (click,) = (
        a for a in unit_named("marble-run").dance.motifs["knock"].actions if a.word == "click"
    )
    assert "snap" not in body_in_words(moved(click, None, "standing"))
    (snap,) = (a for a in unit_named("rock-pool").dance.motifs["crab"].actions if a.word == "snap")
    assert "snap shut" in body_in_words(moved(snap, None, "standing"))


def test_no_published_move_is_said_to_be_half_high_all_through() -> None:
    seen = 0
    for unit in whole_bank().units:
        for motif in unit.dance.motifs.values():
            for action in motif.actions:
                words = body_in_words(moved(action, None, "standing"))
                assert ", half high" not in words
                assert action_label(action)
                seen += 1
    assert seen > 60
