"""Words with a slip of the hand in them, against words that are others."""

from __future__ import annotations

import pytest

from build_tools.sentences.slips import is_a_slip, slips_between


@pytest.mark.parametrize(
    ("typed", "word"),
    [("setle", "settle"), ("drfit", "drift"), ("haeve", "heave"), ("hodl", "hold"),
     ("holld", "hold"), ("shuder", "shudder"), ("shudderr", "shudder"), ("scater", "scatter")],
)  # fmt: skip
def test_a_slip_is_known(typed: str, word: str) -> None:
    assert is_a_slip(typed, word)


@pytest.mark.parametrize(
    ("typed", "word"),
    [("step", "stop"), ("fold", "hold"), ("glide", "slide"), ("hop", "hope"), ("drift", "drift"),
     ("sweep", "steep down"), ("crunch", "crouch"), ("run", "ran")],
)  # fmt: skip
def test_another_word_is_none(typed: str, word: str) -> None:
    assert not is_a_slip(typed, word)


def test_how_many_slips_lie_between() -> None:
    # the examples of the articles that name the two distances: Levenshtein, 1966 (kitten and
    # sitting, as textbooks have it, from memory); Damerau, 1964: two letters swapped are one slip
    assert slips_between("kitten", "sitting") == 3
    assert slips_between("ab", "ba") == 1
    assert slips_between("", "abc") == 3
