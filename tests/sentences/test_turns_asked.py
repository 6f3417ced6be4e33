"""How many whole turns a text asks for."""

from __future__ import annotations

import pytest

from build_tools.sentences.turns_asked import turns_asked, turns_on_each_count


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("Two full turns, then sink.", 2),
        ("Spin three times in the last counts.", 3),
        ("One turn right and one turn left.", 2),
        ("Two turns to the right, then two back.", 4),
        ("Not one whirl but two.", 2),
        ("Turn twice, then add a third turn.", 3),
        ("Not two turns, just one.", 0),
        ("Take turns to lead.", 0),
        ("Dance it four times round.", 0),
        ("Dance the whirl three times.", 0),
        ("Try two different whirls, one turn each.", 0),
    ],
)
def test_turns(text: str, number: int) -> None:
    assert turns_asked(text) == number


def test_a_turn_on_every_count() -> None:
    assert turns_on_each_count("Spin once round on every count.")
    assert not turns_on_each_count("Spin once round on the last count.")
