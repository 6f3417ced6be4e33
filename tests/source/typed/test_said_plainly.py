"""What people say for a word of a list, where it can mean nothing else."""

from __future__ import annotations

import pytest

from build_tools.source.typed.said_plainly import word_said

GROUPINGS = ("alone", "pairs", "threes", "fours", "fives", "sixes", "half class", "whole class")


@pytest.mark.parametrize(
    ("typed", "word"),
    [
        ("groups of 4", "fours"),
        ("in groups of four", "fours"),
        ("Groups of 2.", "pairs"),
        ("groups of 7", None),
        ("groups of 23", None),
        ("groups of 0", None),
        ("groups of children", None),
    ],
)
def test_groups_of_so_many_are_those_that_there_are(typed: str, word: str | None) -> None:
    """Of 23 there was a traceback: its figures stand side by side in those that are known."""
    assert word_said(typed, GROUPINGS) == word
