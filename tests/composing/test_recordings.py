"""Each published recording is the piece it says it is: its tempo, length, loudness and joins."""

from __future__ import annotations

import numpy as np
import pytest
import soundfile

from build_tools.movement.sounding import COUNT_IN
from build_tools.pictures.limits import MOST_RECORDING
from build_tools.pictures.mp3 import seconds_of
from composing import instruments
from composing.__main__ import pieces
from composing.instruments import RATE, Samples
from composing.loudness import MOST_PEAK, TARGET, high_pass, loudness, shelf
from composing.piece import Piece
from tests.support.banks import CONTENT
from tests.support.sound import pulse
from tests.support.sound_bank import whole_bank

PIECES = tuple(pieces())
EACH = pytest.mark.parametrize("piece", PIECES, ids=lambda piece: piece.file)
INSTRUMENTS = ("whistle", "string", "bell", "air", "drum", "rattle")


def heard(piece: Piece) -> tuple[Samples, int]:
    sound, rate = soundfile.read(CONTENT / "units" / piece.file)
    return sound, rate


def test_every_recording_that_is_published_is_one_of_our_pieces() -> None:
    published = {path.relative_to(CONTENT / "units") for path in CONTENT.rglob("*.mp3")}
    assert {path.as_posix() for path in published} == {piece.file for piece in PIECES}
    assert PIECES


@EACH
def test_the_pulse_read_back_is_the_units_tempo_within_one_per_cent(piece: Piece) -> None:
    """Of all tempos near by, the one whose beats meet most of what is struck (Fourier's sum)."""
    (unit,) = (unit for unit in whole_bank().units if unit.slug == piece.file.partition("/")[0])
    assert unit.dance.tempo == piece.tempo
    sound, rate = heard(piece)
    assert pulse(sound, rate, piece.tempo) == pytest.approx(piece.tempo, rel=0.01)


@EACH
@pytest.mark.thorough
def test_the_tempo_read_back_by_a_beat_tracker_is_the_units_within_one_per_cent(
    piece: Piece,
) -> None:
    """The line through the beats that librosa finds, since each is rounded to a frame.

    Most of its time goes into making librosa ready, which a fresh machine has to do again.
    """
    import librosa

    sound, rate = heard(piece)
    _, beats = librosa.beat.beat_track(y=sound.astype(np.float32), sr=rate, start_bpm=piece.tempo)
    times = librosa.frames_to_time(beats, sr=rate)
    slope = np.polyfit(np.arange(len(times)), times, 1)[0]
    assert 60 / slope == pytest.approx(piece.tempo, rel=0.01)


@EACH
def test_it_is_as_long_as_the_dance_its_count_in_and_what_dies_away(piece: Piece) -> None:
    (unit,) = (unit for unit in whole_bank().units if unit.slug == piece.file.partition("/")[0])
    data = (CONTENT / "units" / piece.file).read_bytes()
    assert len(data) < MOST_RECORDING
    assert seconds_of(data) == pytest.approx(piece.seconds, abs=0.2)
    assert unit.dance.sound.lasts == pytest.approx(seconds_of(data), abs=1)
    assert piece.seconds > (COUNT_IN + piece.counts) * 60 / piece.tempo


@EACH
def test_it_is_as_loud_as_the_target_and_no_peak_goes_over(piece: Piece) -> None:
    sound, rate = heard(piece)
    assert loudness(sound, rate) == pytest.approx(TARGET, abs=0.5)
    assert np.abs(sound).max() <= MOST_PEAK


@EACH
def test_it_begins_and_ends_in_silence(piece: Piece) -> None:
    sound, rate = heard(piece)
    assert np.abs(sound[-rate // 20 :]).max() < 0.01
    assert np.abs(sound[:4]).max() < 0.05


@pytest.mark.parametrize("name", INSTRUMENTS)
@pytest.mark.parametrize("pitch", [60.0, 220.0, 880.0])
def test_no_sound_clicks_where_it_is_joined_to_the_next(name: str, pitch: float) -> None:
    """Each begins and ends at nothing, so that what follows may begin anywhere."""
    sound = getattr(instruments, name)(pitch, 0.4)
    assert len(sound) == int(0.4 * RATE)
    assert abs(sound[0]) < 1e-9
    assert abs(sound[-1]) < 1e-9
    rising = np.arange(20) / (instruments.RISE * RATE)
    assert np.all(np.abs(sound[:20]) <= 1.8 * rising), "nothing is at its loudest at once"


def test_loudness_is_that_of_the_standards_own_signal() -> None:
    """ITU-R BS.1770-4: a sine of 997 Hz at full scale in one channel reads -3.01 LKFS."""
    full = np.sin(2 * np.pi * 997 * np.arange(5 * 48_000) / 48_000)
    assert loudness(full, 48_000) == pytest.approx(-3.01, abs=0.01)
    assert loudness(0.1 * full, 48_000) == pytest.approx(-23.01, abs=0.01)


def test_the_filters_are_those_of_the_standards_tables() -> None:
    """ITU-R BS.1770-4, tables 1 and 2, at 48 kHz (from memory)."""
    up, down = shelf(48_000)
    assert up == pytest.approx([1.53512485958697, -2.69169618940638, 1.19839281085285], abs=1e-6)
    assert down == pytest.approx([1.0, -1.69065929318241, 0.73248077421585], abs=1e-6)
    up, down = high_pass(48_000)
    assert up == pytest.approx([1.0, -2.0, 1.0])
    assert down == pytest.approx([1.0, -1.99004745483398, 0.99007225036621], abs=1e-6)
