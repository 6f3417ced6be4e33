"""Speeds by the second: what is said and meant, and what only speaks of seconds."""

from __future__ import annotations

from fractions import Fraction

import pytest

from build_tools.sentences.rates import rates


@pytest.mark.parametrize(
    ("text", "in_a_minute", "side"),
    [
        ("Tap three beats a second.", Fraction(180), 0),
        ("One stroke to the second.", Fraction(60), 0),
        ("Ten strokes in six seconds.", Fraction(100), 0),
        ("A beat every two seconds.", Fraction(30), 0),
        ("Three seconds from one stroke to the next.", Fraction(20), 0),
        ("One count takes two seconds.", Fraction(30), 0),
        ("Nearly two beats a second.", Fraction(120), -1),
        ("A little slower than two beats a second.", Fraction(120), -1),
        ("Just over one beat a second.", Fraction(60), 1),
    ],
)
def test_speeds_that_are_said(text: str, in_a_minute: Fraction, side: int) -> None:
    assert [(rate.in_a_minute, rate.side) for rate in rates(text)] == [(in_a_minute, side)]


@pytest.mark.parametrize(
    "text",
    [
        "Wait three seconds after the last stroke.",
        "In the second lesson the drum is slower.",
        "Not two strokes a second.",
        "Each stroke rings on for half a second.",
    ],
)
def test_seconds_that_are_no_speed(text: str) -> None:
    assert not list(rates(text))
