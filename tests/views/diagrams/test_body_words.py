"""What a picture of a move shows, in words that no teacher takes otherwise."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest

from build_tools.body.moves import slashes
from build_tools.body.poses import moved
from build_tools.model.dance import Action
from build_tools.views.dance.left_open import drawn_actions
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
        ({"kind": "transfer", "level": "high", "word": "sink"}, "Stand tall"),
        ({"kind": "transfer", "level": "high", "word": "settle"}, "Come to rest, standing"),
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


def test_a_knock_is_on_oneself_as_often_as_it_has_counts_and_presses_nothing() -> None:
    """An adviser: "it happens twice, on oneself; pressing forwards is what the unit forbids"."""
    knock: dict[str, Any] = {
        "kind": "gesture",
        "word": "knock",
        "level": "high to middle",
        "body_part": "fists",
    }
    assert said(**knock) == "Both hands knock twice, close to the body, from high to half high"
    once = moved(Action(counts=Fraction(1), **knock), None, "chair")
    assert body_in_words(once).startswith("On a chair: both hands knock, close to the body")
    low = {"kind": "gesture", "word": "rap", "level": "middle", "direction": "down"}
    assert said(**low) == "Both hands knock low twice"
    press = {"kind": "gesture", "word": "press", "level": "high to middle"}
    assert said(**press).startswith("Both arms press forwards and down")


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


def moves_of(slug: str, name: str) -> dict[str, Action]:
    return {action_label(a): a for a in drawn_actions(unit_named(slug).dance, name)}


def told(slug: str, name: str, word: str) -> str:
    return body_in_words(moved(moves_of(slug, name)[word], None, "standing"))


@pytest.mark.parametrize(
    ("slug", "name", "word", "words"),
    [
        # an adviser found the plain move's words under moves that pupils change (common practice,
        # no source: what is said of a move is what is danced)
        ("rock-pool", "anemone-opens", "open", "The part you chose opens wide"),
        ("rock-pool", "anemone-snap", "flick", "The part you chose flicks"),
        ("rock-pool", "crab-answer", "hide", "Still, in a bigger or smaller shape"),
        ("marble-run", "new-push", "push", "The part you chose moves forwards"),
        ("rock-pool", "storm-wave", "rush", "Two small steps, strongly"),
        ("leaving", "pat-peg", "pat", "Both hands pat"),
        ("leaving", "peg", "unhook", "One arm moves up"),
        ("kite-and-string", "kite", "swoop", "Three small steps to the left"),
    ],
)
def test_a_changed_move_is_said_as_it_is_danced(
    slug: str, name: str, word: str, words: str
) -> None:
    assert told(slug, name, word).startswith(words)


def test_a_dodge_that_pupils_resize_is_neither_small_nor_big() -> None:
    dodge = told("rock-pool", "crab-answer", "dodge")
    assert dodge.startswith("Bend the knees and jump to the right, bigger or smaller, landing")
    assert told("road-builders", "own-stone", "take").endswith("with the feel you chose")


def test_a_way_along_a_curve_is_no_winding_way() -> None:
    swoop = told("kite-and-string", "kite", "swoop")
    assert "on a curve" in swoop
    assert "winding" not in swoop


def test_a_part_that_pupils_choose_is_drawn_as_one_that_the_unit_offers() -> None:
    """A figure whose arms open wide is no picture of an elbow or a shoulder that opens."""
    seen = 0
    for unit in whole_bank().units:
        dance = unit.dance
        for name, development in dance.developments.items():
            if development.device != "change of body part" or development.body_part:
                continue
            for action in drawn_actions(dance, name):
                if "body_part" in action.chosen:
                    theme = moves_of(unit.slug, development.of)[action_label(action)]
                    assert moved(action).end != moved(theme).end
                    seen += 1
    assert seen >= 3


def test_quick_steps_are_walked_whatever_the_word_for_them() -> None:
    """In a storm the rush is no side-step: its step says so, and small steps keep the arms in."""
    rush = moved(moves_of("rock-pool", "storm-wave")["rush"])
    plain = moved(moves_of("rock-pool", "wave")["rush"])
    assert plain.move.manner == "side"
    assert rush.move.manner is None
    shown = rush.shown
    assert abs(shown.right_arm.raised - shown.left_arm.raised) < 40
    slashed = replace(rush.move, feel=rush.move.feel | {"indirect"})
    assert not slashes(slashed)
    assert slashes(replace(slashed, size="big"))
