"""What sounds in a stretch: pieces end to end, every stroke in its place, nothing where none is.

Source: a count lasts 60 / tempo seconds (the definition of a metronome mark).
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Heard
from build_tools.movement.sounding import (
    ROLL,
    RUNG,
    SHAKEN,
    STRUCK,
    Piece,
    laid,
    length_of,
    written_length,
)

SOUNDS = ("beat", "soft beat", "roll", "shaker", "bell", "claps", "voice", "recording", "silence")
TEMPI = st.integers(40, 208)
PHRASES = st.integers(2, 16)
COUNTS = st.sampled_from([Fraction(n, 2) for n in range(1, 65)])


@st.composite
def pieces(draw: st.DrawFn, counted: bool | None = None) -> Heard:
    in_counts = draw(st.booleans()) if counted is None else counted
    counts = draw(COUNTS) if in_counts else None
    seconds = None if in_counts else draw(st.integers(1, 40))
    longest = -(-Fraction(counts if counts is not None else seconds or 1) // 1)
    on = draw(st.lists(st.integers(1, longest), max_size=6, unique=True))
    return Heard(
        draw(st.sampled_from(SOUNDS)),
        counts=counts,
        seconds=seconds,
        on=tuple(Fraction(n) for n in on),
        says=tuple(draw(st.lists(st.sampled_from(["go", "-"]), max_size=min(8, longest)))),
    )


def known(found: tuple[Piece, ...] | None) -> tuple[Piece, ...]:
    assert found is not None
    return found


@given(st.lists(pieces(), min_size=1, max_size=8), st.booleans(), TEMPI, PHRASES)
def test_pieces_lie_end_to_end_and_strokes_and_words_within_them(
    heard: list[Heard], counted: bool, tempo: int, phrase: int
) -> None:
    found = known(laid(heard, counted=counted, tempo=tempo, phrase=phrase))
    assert found[0].start == 0
    assert found[-1].end == length_of(heard, counted=counted, tempo=tempo)
    assert all(a.end == b.start for a, b in pairwise(found))
    for piece in found:
        assert all(piece.start <= stroke.at < piece.end for stroke in piece.strokes)
        assert all(piece.start <= word.at < piece.end for word in piece.words)
        assert bool(piece.strokes) <= (piece.sound in STRUCK)


@given(st.lists(pieces(), min_size=1, max_size=8), TEMPI, PHRASES)
def test_a_stretch_lasts_as_long_in_counts_as_in_seconds(
    heard: list[Heard], tempo: int, phrase: int
) -> None:
    in_counts = known(laid(heard, counted=True, tempo=tempo, phrase=phrase))
    in_seconds = known(laid(heard, counted=False, tempo=tempo, phrase=phrase))
    assert in_counts[-1].end * 60 / tempo == in_seconds[-1].end
    for a, b in zip(in_counts, in_seconds, strict=True):
        assert [s.at * 60 / tempo for s in a.strokes] == [s.at for s in b.strokes]


@given(st.lists(pieces(counted=True), min_size=1, max_size=8), PHRASES)
def test_counts_need_no_tempo_where_a_stretch_is_counted(heard: list[Heard], phrase: int) -> None:
    found = known(laid(heard, counted=True, tempo=None, phrase=phrase))
    assert found[-1].end == sum(written_length(one) for one in heard)
    assert laid(heard, counted=False, tempo=None, phrase=phrase) is None


@given(PHRASES, st.integers(1, 64), st.sampled_from(["beat", "soft beat", "claps"]))
def test_the_first_of_each_phrase_is_louder_whatever_the_pieces(
    phrase: int, counts: int, sound: str
) -> None:
    one = known(
        laid([Heard(sound, counts=Fraction(counts))], counted=True, tempo=100, phrase=phrase)
    )
    cut = [Heard(sound, counts=Fraction(1))] * counts
    many = known(laid(cut, counted=True, tempo=100, phrase=phrase))
    assert [s for piece in many for s in piece.strokes] == list(one[0].strokes)
    assert [s.at for s in one[0].strokes if s.loud] == list(range(0, counts, phrase))


def test_a_rhythm_of_the_units_own_by_hand() -> None:
    loom = Heard(
        "claps", counts=Fraction(4), on=tuple(Fraction(n) for n in ("1", "2", "3", "7/2", "4"))
    )
    (piece, again) = known(laid([loom, loom], counted=True, tempo=112, phrase=8))
    assert [s.at for s in piece.strokes] == [0, 1, 2, Fraction(5, 2), 3]
    assert [s.at for s in again.strokes] == [4, 5, 6, Fraction(13, 2), 7]
    # one louder in eight, so the second four has none
    assert [s.at for s in (*piece.strokes, *again.strokes) if s.loud] == [0]


@pytest.mark.parametrize(
    ("heard", "rate"),
    [
        (Heard("roll", counts=Fraction(4)), ROLL),
        (Heard("roll", seconds=4), ROLL),
        (Heard("shaker", seconds=4), SHAKEN),
        (Heard("shaker", counts=Fraction(4)), None),
        (Heard("bell", seconds=4), RUNG),
        (Heard("bell", counts=Fraction(4)), None),
        (Heard("shaker", seconds=4, on=(Fraction(1), Fraction(3))), None),
        (Heard("beat", seconds=4), None),
    ],
)
def test_what_is_quick_all_through(heard: Heard, rate: int | None) -> None:
    (piece,) = known(laid([heard], counted=heard.counts is not None, tempo=90, phrase=8))
    assert piece.rate == rate


def test_three_slow_beats_in_a_span_by_hand() -> None:
    slow = Heard("beat", counts=Fraction(6), on=(Fraction(1), Fraction(3), Fraction(5)))
    (roll, beats) = known(
        laid([Heard("roll", seconds=6), slow], counted=False, tempo=108, phrase=8)
    )
    # two counts at 108 a minute are 120/108 = 10/9 of a second
    assert roll.end == 6
    assert [s.at for s in beats.strokes] == [6, 6 + Fraction(10, 9), 6 + Fraction(20, 9)]
    assert beats.end == 6 + Fraction(30, 9)
