"""How often a text says that the whole has been run."""

from __future__ import annotations

import pytest

from build_tools.sentences.runs_told import runs_told


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("The whole has been run three times.", 3),
        ("The whole dance is joined, and it has been run twice.", 2),
        ("All three parts are made, and each half has run the whole once.", 1),
        ("The whole dance has been danced.", 1),
        ("Four parts are made; the whole has not been run.", None),
        ("Pupils made a seed of four moves, danced it twice and played windy day.", None),
        ("All pupils danced in pairs.", None),
    ],
)
def test_runs_that_are_told(text: str, number: int | None) -> None:
    told = runs_told(text)
    assert (told[0] if told else None) == number
