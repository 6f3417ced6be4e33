"""How many strokes of a sort a text counts."""

from __future__ import annotations

import pytest

from build_tools.sentences.strokes_counted import strokes_counted


@pytest.mark.parametrize(
    ("text", "number", "how", "what"),
    [
        ("Sink on three slow beats.", 3, "slow", "beat"),
        ("The slow beats, five of them, bring them up.", 5, "slow", "beat"),
        ("Six beats, all of them slow.", 6, "slow", "beat"),
        ("Four more loud claps.", 4, "loud", "clap"),
        ("Not four loud claps but two.", 2, "loud", "clap"),
    ],
)
def test_strokes_that_are_counted(text: str, number: int, how: str, what: str) -> None:
    found = list(strokes_counted(text))
    assert [(one.number, one.what) for one in found] == [(number, what)]
    assert how in found[0].how


@pytest.mark.parametrize(
    "text", ["Freeze on the second slow beat.", "Four slow breaths.", "When the beats are over."]
)
def test_what_counts_no_strokes(text: str) -> None:
    assert not list(strokes_counted(text))
