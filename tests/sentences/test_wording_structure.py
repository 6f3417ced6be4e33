"""Words by which rules read a step: common practice, no source. In doubt they say yes."""

from __future__ import annotations

import pytest

from build_tools.movement.devices import DEVICES
from build_tools.sentences import wording_structure as wording


@pytest.mark.parametrize("device", DEVICES)
def test_each_device_has_plain_words_and_its_own_name(device: str) -> None:
    assert wording.says_device(device, f"today we meet {device}.")
    assert not wording.says_device(device, "sit and rest.")


@pytest.mark.parametrize(
    ("device", "text"),
    [
        ("retrograde", "last move first, like a film on rewind"),
        ("fragmentation", "practise only flick, shut, grip"),
        ("accumulation", "one. one, two. one, two, three"),
        ("change of speed", "now take twice as long"),
    ],
)
def test_plain_words_are_read(device: str, text: str) -> None:
    assert wording.says_device(device, text)


@pytest.mark.parametrize(
    ("text", "mimed"),
    [
        ("pretend to saw wood", True),
        ("mime a letter being opened", True),
        ("act out the storm", True),
        ("do not mime the saw, dance it", False),
        ("nobody acts out an accident", False),
        ("make it bigger than a mime", True),
        ("move as if you were smoke", False),
    ],
)
def test_acting_out_is_read_and_its_opposite_is_not(text: str, mimed: bool) -> None:
    assert wording.says_mime(text) is mimed


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("the last time it comes home", True),
        ("the second a is slower, the first time light", True),
        ("the boat rides over a stone", False),
    ],
)
def test_a_return_is_said(text: str, said: bool) -> None:
    assert wording.says_returning(text) is said


@pytest.mark.parametrize(("text", "twice"), [("dance it twice", True), ("dance it", False)])
def test_more_than_once_is_read(text: str, twice: bool) -> None:
    assert wording.says_twice(text) is twice


def test_a_word_is_found_whole() -> None:
    assert wording.word_in("stone", "leave the stone out")
    assert not wording.word_in("stone", "stones stay")


@pytest.mark.parametrize(("text", "out"), [("leave the stone out", True), ("keep it", False)])
def test_what_is_left_out_is_read(text: str, out: bool) -> None:
    assert wording.says_left_out(text) is out
