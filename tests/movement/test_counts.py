"""Counts, phrases and seconds, against published values and an independent MIDI library."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import mido  # type: ignore[import-untyped]
import pytest
from hypothesis import given

from build_tools.model.build_dance import counts as read_counts
from build_tools.movement.counts import counts_in, figures, phrases, seconds
from tests.movement.strategies import PUBLISHED, counts, tempi


@pytest.mark.parametrize("row", PUBLISHED["seconds"]["rows"], ids=str)
def test_published_seconds(row: dict[str, Any]) -> None:
    assert seconds(row["counts"], row["tempo"]) == Fraction(row["seconds"])


@given(counts, tempi)
def test_seconds_are_counts_times_sixty_over_tempo(some: Fraction, tempo: int) -> None:
    assert seconds(some, tempo) * tempo == some * 60
    assert counts_in(seconds(some, tempo), tempo) == some


@given(counts, counts, tempi)
def test_seconds_add_up_and_halve_at_double_tempo(a: Fraction, b: Fraction, tempo: int) -> None:
    assert seconds(a + b, tempo) == seconds(a, tempo) + seconds(b, tempo)
    assert seconds(a, 2 * tempo) * 2 == seconds(a, tempo)


@pytest.mark.parametrize("tempo", [0, -60])
def test_no_tempo_no_length(tempo: int) -> None:
    with pytest.raises(ValueError, match="has no length"):
        seconds(8, tempo)
    with pytest.raises(ValueError, match="has no length"):
        counts_in(8, tempo)


@pytest.mark.parametrize(("tempo", "microseconds"), PUBLISHED["midi_tempo"]["rows"].items())
def test_published_midi_tempo(tempo: str, microseconds: int) -> None:
    assert round(seconds(1, int(tempo)) * 1_000_000) == microseconds
    assert mido.bpm2tempo(int(tempo)) == microseconds


@pytest.mark.parametrize("some", [1, 3, 8, 24, 32, 192, 512])
def test_mido_agrees(some: int) -> None:
    """MIDI keeps whole microseconds a beat, so it may be half a microsecond off on each count."""
    ticks = 480
    for tempo in range(30, 241, 7):
        theirs = mido.tick2second(some * ticks, ticks, mido.bpm2tempo(tempo))
        assert abs(float(seconds(some, tempo)) - theirs) <= some * 0.5e-6 + 1e-9, tempo


def test_worked_lengths() -> None:
    # Computed: eight-counts in three minutes at 120 and in two minutes at 100 beats a minute.
    assert phrases(counts_in(180, 120), 8) == (45, Fraction(0))
    assert phrases(counts_in(120, 100), 8) == (25, Fraction(0))
    assert phrases(192, 8) == (24, Fraction(0))


@given(counts, tempi)
def test_phrases_and_what_is_left_make_the_whole(some: Fraction, phrase: int) -> None:
    whole, left = phrases(some, phrase)
    assert whole * phrase + left == some
    assert 0 <= left < phrase


def test_a_phrase_has_counts() -> None:
    with pytest.raises(ValueError, match="is no phrase"):
        phrases(8, 0)


@given(counts)
def test_counts_are_shown_as_they_are_written(some: Fraction) -> None:
    assert read_counts(figures(some)) == some
