"""Dance in plain words: every word that authors may write is said, and lengths are exact."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Any

import pytest

from build_tools.model.dance import Action, Development, Passage, Seconds, Transition
from build_tools.movement.devices import DEVICES
from build_tools.shapes.schemas import schema
from build_tools.views.words.plain_words import (
    action_in_words,
    counts_in_words,
    development_in_words,
    fit_in_words,
    listed,
    seconds_in_words,
    told_apart,
    transition_in_words,
)
from tests.support.sound_bank import whole_bank

FITS: list[str] = schema("unit")["$defs"]["passage"]["properties"]["as"]["enum"]
JOINS: list[str] = schema("unit")["properties"]["transitions"]["items"]["properties"]["as"]["enum"]
TRADE_WORDS = ("canon", "unison", "retrograde", "fragmentation", "embellishment", "accumulation")


def test_an_action_is_said_whole() -> None:
    action = Action(
        "jump", Fraction(3, 2), "dodge", also=("turn",), level="low to high", direction="sideways",
        side="left", pathway="zigzag", size="big", body_part="elbows", facing="centre",
        dynamics=("light", "sudden"),
    )  # fmt: skip
    assert action_in_words(action) == (
        "dodge: 1 1/2 counts, jump and turn sideways to the left, along a zigzag line, "
        "from low to high, big, with the elbows, facing the middle, light and sudden"
    )


@pytest.mark.parametrize("device", DEVICES)
def test_every_device_is_said_without_trade_words(device: str) -> None:
    said = development_in_words(Development("gust-two", "gust", device, joined_to="calm-sea"))
    assert said.startswith("gust, ")
    assert not [word for word in TRADE_WORDS if word in said]


@pytest.mark.parametrize(
    ("device", "fields", "said"),
    [
        ("change of facing", {"facing": "back"}, "facing the sea"),
        ("change of facing", {"facing": "left"}, "facing the left"),
        ("change of direction", {"direction": "backwards"}, "going backwards"),
        ("change of size", {"size": "small"}, "danced small"),
        ("change of level", {"level": "low to high"}, "from low to high"),
        ("change of pathway", {"pathway": "zigzag"}, "along a zigzag line"),
        ("change of body part", {"body_part": "elbows"}, "with the elbows"),
        ("change of formation", {"formation": "circle"}, "in a circle"),
        ("change of facing", {}, "facing another way"),
    ],
)
def test_what_a_change_changes_to_is_said_once(
    device: str, fields: dict[str, Any], said: str
) -> None:
    """ "Swing round, facing another way: facing back" said it twice, and in no class's words."""
    made = Development("gust-two", "gust", device, **fields)
    assert development_in_words(made, {"back": "sea"}) == f"gust, {said}"


def test_no_published_change_says_another_and_then_which() -> None:
    for unit in whole_bank().units:
        for made in unit.dance.developments.values():
            said = development_in_words(made, unit.dance.sides)
            twice = re.search(r"\b(another|bigger or smaller|higher or lower)\b[^,]*: ", said)
            assert twice is None or made.dynamics


@pytest.mark.parametrize("fit", FITS)
def test_every_way_of_fitting_parts_is_said_without_trade_words(fit: str) -> None:
    said = fit_in_words(Passage(("gust", "calm"), fit, parts=3, after=Fraction(4)))
    assert said
    assert not [word for word in TRADE_WORDS if word in said]


def test_a_canon_says_how_many_counts_after() -> None:
    said = fit_in_words(Passage(("gust",), "canon", parts=3, after=Fraction(4)))
    assert said == "3 parts, each starts 4 counts after the one before"


@pytest.mark.parametrize("kind", JOINS)
def test_every_join_is_said(kind: str) -> None:
    counts = Fraction(8) if kind in ("move", "hold", "overlap") else None
    said = transition_in_words(Transition("A", "B", kind, counts, "walk", "the drum"))
    assert said
    assert ("8 counts" in said) == (counts is not None)


def test_lengths_are_said_as_a_teacher_says_them() -> None:
    assert counts_in_words(Fraction(1)) == "1 count"
    assert counts_in_words(Fraction(3, 2)) == "1 1/2 counts"
    assert seconds_in_words(Seconds(Fraction(20), Fraction(30))) == "20 to 30 seconds"
    assert seconds_in_words(Seconds(Fraction(60), Fraction(60))) == "1 minute"
    long = Seconds(Fraction(100), Fraction(121))
    assert seconds_in_words(long) == "1 minute 40 seconds to 2 minutes 1 second"
    assert [listed(words) for words in ((), ("a",), ("a", "b"), ("a", "b", "c"))] == [
        "", "a", "a and b", "a, b and c",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("part", "chosen", "said"),
    [
        ("hands", False, "gesture, with the hands"),
        ("one arm", False, "gesture, with one arm"),
        ("one hand", True, "gesture, with the part you chose"),
    ],
)
def test_a_part_of_the_body_is_said_in_plain_english(part: str, chosen: bool, said: str) -> None:
    decided = frozenset({"body_part"} if chosen else ())
    action = Action("gesture", Fraction(1), body_part=part, chosen=decided)
    assert action_in_words(action, "") == said


def test_things_with_commas_inside_are_told_apart_by_semicolons() -> None:
    assert told_apart(["red", "blue", "green"], "or") == "red, blue or green"
    assert told_apart(["low, on bent knees", "tall", "both"], "or") == (
        "low, on bent knees; tall; or both"
    )
    assert told_apart(["low, on bent knees"], "or") == "low, on bent knees"
