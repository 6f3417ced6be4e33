"""What an author says of a move goes on being said where it holds, sentence by sentence."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.model.dance import Action
from build_tools.views.lesson.words_still_true import (
    first_sentence,
    way_as_it_holds,
    way_still_true,
    words_as_they_hold,
)
from tests.support.sound_bank import real_unit

LOW = replace(real_unit().dance.motifs["wave"].actions[0], level="low", side=None)
HIGH = replace(LOW, level="high")
TAKE = "Fold a little and reach for it. Keep your back low. Both hands stay on the stone."


@pytest.mark.parametrize(
    ("now", "said"),
    [
        (LOW, TAKE),
        (HIGH, "Fold a little and reach for it. Both hands stay on the stone."),
    ],
)
def test_a_sentence_that_holds_no_more_goes_alone(now: Action, said: str) -> None:
    assert way_as_it_holds([LOW], now, TAKE) == said


def test_a_sentence_more_takes_nothing_away() -> None:
    shorter = "Fold a little and reach for it."
    for more in ("Stay low.", "Wait eight counts.", "Go sideways.", "Be quick."):
        kept = way_as_it_holds([LOW], HIGH, f"{shorter} {more}")
        assert kept is not None
        assert kept.startswith(shorter)
    assert not way_still_true([LOW], HIGH, f"{shorter} Stay low."), "as a whole it does not hold"


def test_a_sentence_more_takes_no_meaning_away() -> None:
    for more in ("Do it very low.", "Look up."):
        kept = words_as_they_hold([LOW], HIGH, f"Bend and reach. {more}")
        assert kept is not None
        assert kept.startswith("Bend and reach.")
    assert words_as_they_hold([LOW], HIGH, "Stay low.") is None


def test_nothing_said_stays_nothing() -> None:
    assert way_as_it_holds([LOW], HIGH, None) is None
    assert first_sentence(None) == ""
    assert first_sentence(TAKE) == "Fold a little and reach for it."


def test_who_are_left_stand_on_no_side() -> None:
    right = replace(LOW, side="right")
    assert way_still_true([replace(LOW, side="left")], right, "All that are left join the ring.")
    assert not way_still_true([replace(LOW, side="left")], right, "Lean to the left.")
