"""Every text that take-in, check and site read is read in time that grows with its length alone.

Each piece is repeated in each place in which a text is read, at some length and at ten times that.
In the usual tests each place gets some of the pieces, in turns, so that each piece is tried.
"""

from __future__ import annotations

import re

import pytest

from tests.support.growing import MOST_TIMES, PICTURES, PIECES, TEXTS, growth, seconds

SOON = 2_000
WHOLE = (SOON, 10_000, 100_000)
"""Letters, of which ten times as many are read too: up to a million."""
MOST_SECONDS = 4.0
_TURNS = 25


def pieces_for(text: str, thorough: bool, later: int = 0) -> tuple[str, ...]:
    """The pieces that are tried in a place; `later` moves its turn."""
    turn = (list(TEXTS).index(text) + later) % _TURNS
    return PIECES if thorough else PIECES[turn::_TURNS]


def test_every_piece_has_its_turn() -> None:
    tried = {piece for text in TEXTS for piece in pieces_for(text, thorough=False)}
    assert tried == set(PIECES)


@pytest.mark.parametrize("text", TEXTS)
def test_texts(text: str, thorough: bool) -> None:
    for length in WHOLE if thorough else (SOON,):
        for piece in pieces_for(text, thorough):
            times = growth(TEXTS[text], piece, length)
            assert times <= MOST_TIMES, (text, piece, length, times)


@pytest.mark.parametrize("picture", PICTURES)
def test_pictures(picture: str, thorough: bool) -> None:
    road, pieces = PICTURES[picture]
    for length in (*WHOLE, 1_000_000) if thorough else (SOON,):
        for piece in pieces:
            times = growth(road, piece, length)
            assert times <= MOST_TIMES, (picture, piece, length, times)


@pytest.mark.parametrize("text", TEXTS)
def test_none_takes_long(text: str, thorough: bool) -> None:
    """Where a text is short enough to be read, reading it does not take long either."""
    for piece in pieces_for(text, thorough, later=_TURNS // 2):
        taken = seconds(TEXTS[text], piece * (19_000 // len(piece)))
        assert taken < MOST_SECONDS, (text, piece, taken)


def test_a_pattern_that_tries_every_way_is_seen() -> None:
    doubtful = re.compile("a+x")
    assert growth(doubtful.search, "a", SOON // 2) > MOST_TIMES
