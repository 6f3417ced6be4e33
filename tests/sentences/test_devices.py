"""Devices in plain words: common practice, no source."""

from __future__ import annotations

import pytest

from build_tools.movement.devices import DEVICES
from build_tools.sentences.devices import says_device


@pytest.mark.parametrize("device", DEVICES)
def test_each_device_has_plain_words_and_its_own_name(device: str) -> None:
    assert says_device(device, f"Today we meet {device}.")
    assert not says_device(device, "Sit and rest.")
    assert not says_device(device, None)


@pytest.mark.parametrize(
    ("device", "text"),
    [
        ("retrograde", "last move first, like a film on rewind"),
        ("retrograde", "You danced roll, reach, stamp. Now dance stamp, reach, roll."),
        ("fragmentation", "practise only flick, shut, grip"),
        ("accumulation", "one. one, two. one, two, three"),
        ("change of speed", "now take twice as long"),
    ],
)
def test_plain_words_are_read(device: str, text: str) -> None:
    assert says_device(device, text)


def test_going_backwards_is_no_retrograde() -> None:
    assert not says_device("retrograde", "Travel backwards as you dance.")


def test_what_was_seen_last_week_is_no_retrograde() -> None:
    assert not says_device("retrograde", "If it was muddled last week, first dance the canon.")


def test_roles_that_change_over_are_no_row_danced_backwards() -> None:
    assert not says_device("retrograde", "Ones ask, twos answer. Then twos ask, ones answer.")
    assert says_device("retrograde", "Count one, two, three; then three, two, one.")
