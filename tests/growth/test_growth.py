"""Every text that take-in, check and site read is read in time that grows with its length alone.

Each piece is repeated in each place in which a text is read, at some length and at ten times that.
"""

from __future__ import annotations

import re

import pytest

from tests.support.growing import MOST_TIMES, PICTURES, PIECES, TEXTS, growth, seconds

SOON = (2_000,)
WHOLE = (2_000, 10_000, 100_000)
"""Letters, of which ten times as many are read too: up to a million."""
MOST_SECONDS = 4.0


@pytest.mark.parametrize("text", TEXTS)
def test_texts(text: str, thorough: bool) -> None:
    road = TEXTS[text]
    for length in WHOLE if thorough else SOON:
        for piece in PIECES:
            times = growth(road, piece, length)
            assert times <= MOST_TIMES, (text, piece, length, times)


@pytest.mark.parametrize("picture", PICTURES)
def test_pictures(picture: str, thorough: bool) -> None:
    road, pieces = PICTURES[picture]
    for length in (*WHOLE, 1_000_000) if thorough else (*SOON, 100_000):
        for piece in pieces:
            times = growth(road, piece, length)
            assert times <= MOST_TIMES, (picture, piece, length, times)


@pytest.mark.parametrize("text", TEXTS)
def test_none_takes_long(text: str, thorough: bool) -> None:
    """Where a text is short enough to be read, reading it does not take long either."""
    for piece in PIECES if thorough else PIECES[::7]:
        taken = seconds(TEXTS[text], piece * (19_000 // len(piece)))
        assert taken < MOST_SECONDS, (text, piece, taken)


def test_a_pattern_that_tries_every_way_is_seen() -> None:
    doubtful = re.compile(r"(?:a|b)*\s*x\Z|a+a+x")
    assert growth(doubtful.search, "a", 2_000) > MOST_TIMES
