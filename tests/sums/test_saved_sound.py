"""The saved sound and the saved notes of every unit read back: each sounds what the unit says.

Sources: RMS as the measure of loudness (IEC 61672-1, from memory); a pulse's rate is the strongest
line in the spectrum of its envelope (Scheirer 1998, Tempo and beat analysis of acoustic musical
signals, from memory). The notes are read by mido.
"""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest

from build_tools.model.unit import Unit
from build_tools.movement.sounding import DRUMMED, ROLL, RUNG, SHAKEN, STRUCK, Piece
from tests.sums.scores import PLAYED, Placed, pieces_placed, placed, saved_notes, saved_sound
from tests.support.sound import loudness, onsets, strokes_a_second

FLOOR = 0.0001
"""The loudness under which a stretch is silent: 80 dB under the loudest a file can hold."""
RINGS_ON = 0.35
"""Seconds that the last stroke before a silence may still ring."""
EDGE = 0.005
APART = 0.1
SOUNDED = 1.5
"""A roll or a shaker heard for as many seconds as this has its rate measured."""
KEYS = {
    "beat": {36, 45},
    "soft beat": {36, 45},
    "roll": {47},
    "shaker": {70},
    "bell": {84},
    "claps": {39},
}
STICKS = 37
UNITS = pytest.mark.parametrize("unit", PLAYED, ids=[unit.slug for unit in PLAYED])


def between(unit: Unit, start: Fraction, end: Fraction, after: float = 0.0) -> np.ndarray:
    samples, rate = saved_sound(unit.slug)
    return samples[round((float(start) + after) * rate) : round((float(end) - EDGE) * rate)]


def sounding(stretch: Placed, piece: Piece) -> tuple[Fraction, Fraction]:
    return stretch.time(piece.start), min(stretch.time(piece.end), stretch.starts + stretch.lasts)


@UNITS
def test_the_file_is_as_long_as_the_dance(unit: Unit) -> None:
    samples, rate = saved_sound(unit.slug)
    last = list(placed(unit))[-1]
    assert len(samples) / rate == pytest.approx(float(last.starts + last.lasts), abs=2 / rate)


@UNITS
def test_silence_is_silent_and_so_are_voices_and_the_schools_own_recording(unit: Unit) -> None:
    for stretch, piece in pieces_placed(unit):
        if piece.sound not in STRUCK:
            quiet = between(unit, *sounding(stretch, piece), after=RINGS_ON)
            assert loudness(quiet) < FLOOR, (piece.sound, stretch.starts)


@UNITS
def test_nothing_is_made_up_where_the_unit_does_not_say_what_sounds(unit: Unit) -> None:
    for stretch in placed(unit):
        if not stretch.sounding.known:
            end = stretch.starts + stretch.lasts
            assert loudness(between(unit, stretch.starts, end, after=RINGS_ON)) < FLOOR


@UNITS
def test_every_stroke_of_the_unit_is_there_and_no_other(unit: Unit) -> None:
    samples, rate = saved_sound(unit.slug)
    for stretch, piece in pieces_placed(unit):
        if piece.sound not in STRUCK or piece.rate is not None or piece.sound == "shaker":
            continue
        start, end = sounding(stretch, piece)
        # a little before, so that a stroke at the very start is one
        early = max(0.0, float(start) - 0.02)
        found = early + onsets(samples[round(early * rate) : round(float(end) * rate)], rate)
        found = found[found > float(start) - EDGE]
        due = [float(stretch.time(stroke.at)) for stroke in piece.strokes]
        assert len(found) == len(due), (piece, found, due)
        assert np.abs(found - np.array(due)).max() < 0.010


@UNITS
def test_a_roll_is_a_roll_and_a_shaker_is_shaken(unit: Unit) -> None:
    _, rate = saved_sound(unit.slug)
    for stretch, piece in pieces_placed(unit):
        if piece.rate is None:
            continue
        start, end = sounding(stretch, piece)
        loud = between(unit, start, end)
        assert loudness(loud) > 100 * FLOOR
        if end - start >= SOUNDED:
            assert strokes_a_second(loud, rate) == pytest.approx(piece.rate, abs=0.6)


@UNITS
def test_the_notes_are_the_strokes_of_the_unit_each_of_its_own_instrument(unit: Unit) -> None:
    file = saved_notes(unit.slug)
    now, notes = Fraction(0), []
    for message in file.tracks[0]:
        now += Fraction(message.time, file.ticks_per_beat) * 60 / Fraction(unit.dance.tempo or 0)
        if message.type == "note_on":
            notes.append((now, message.note))
    tick = Fraction(60, file.ticks_per_beat * (unit.dance.tempo or 1))
    claimed = 0
    for stretch in placed(unit):
        end = stretch.starts + stretch.lasts
        inside = [(at, key) for at, key in notes if stretch.starts - tick < at < end - tick]
        inside = [one for one in inside if one[1] != STICKS]
        claimed += len(inside)
        if not stretch.sounding.pieces:
            assert inside == []
        for piece in stretch.sounding.pieces:
            first, last = sounding(stretch, piece)
            mine = [key for at, key in inside if first - tick < at < last - tick]
            assert set(mine) <= KEYS.get(piece.sound, set()), piece
            if piece.rate is None:
                assert len(mine) == len(piece.strokes), piece
            else:
                assert len(mine) == pytest.approx(float(last - first) * piece.rate, rel=0.1)
    assert claimed + sum(key == STICKS for _, key in notes) == len(notes)


@UNITS
def test_the_words_are_lyrics_on_their_counts(unit: Unit) -> None:
    file = saved_notes(unit.slug)
    tick = Fraction(60, file.ticks_per_beat * (unit.dance.tempo or 1))
    now, told = Fraction(0), []
    for message in file.tracks[0]:
        now += message.time * tick
        if message.type == "lyrics":
            told.append((now, message.text))
    said = [
        (stretch.time(word.at), word.says)
        for stretch, piece in pieces_placed(unit)
        for word in piece.words
    ]
    assert [word for _, word in told] == [word for _, word in said]
    assert all(abs(a - b) <= tick for (a, _), (b, _) in zip(told, said, strict=True))


def test_the_unit_with_every_kind_of_sound_has_every_kind() -> None:
    (unit,) = (unit for unit in PLAYED if unit.slug == "clock-shop-sounds")
    kinds = {piece.sound for _, piece in pieces_placed(unit)}
    assert kinds == STRUCK | {"voice", "recording", "silence"}
    assert {p.rate for _, p in pieces_placed(unit)} == {None, ROLL, RUNG, SHAKEN}
    assert kinds > DRUMMED


def test_a_bell_has_a_pitch_and_a_shaker_has_none() -> None:
    """The partials of a bell are as 1/2, 1, 6/5, 3/2 and 2 (Rossing, Science of Percussion
    Instruments, 2000, from memory); nearly all of what sounds lies there. Program 113 of the
    General MIDI 1 sound set is the tinkle bell (from memory)."""
    prime = 1047
    unit = PLAYED[[u.slug for u in PLAYED].index("clock-shop-sounds")]
    for stretch, piece in pieces_placed(unit):
        if piece.sound in ("bell", "shaker"):
            _, rate = saved_sound(unit.slug)
            heard = np.abs(np.fft.rfft(between(unit, *sounding(stretch, piece)))) ** 2
            hertz = np.fft.rfftfreq(2 * len(heard) - 2, 1 / rate)
            tuned = sum(
                heard[abs(hertz - prime * part) < 40].sum() for part in (0.5, 1, 1.2, 1.5, 2)
            )
            assert (tuned / heard.sum() > 0.9) == (piece.sound == "bell")
    messages = saved_notes(unit.slug).tracks[0]
    assert [(m.channel, m.program) for m in messages if m.type == "program_change"] == [(0, 112)]
    rung = [m for m in messages if m.type == "note_on" and m.channel == 0]
    assert {m.note for m in rung} == KEYS["bell"]


def test_these_measures_notice_a_drum_in_a_silence_and_a_roll_of_another_rate() -> None:
    samples, rate = saved_sound("clock-shop-sounds")
    assert loudness(samples[:rate]) > 100 * FLOOR
    (roll,) = (
        (stretch, piece)
        for stretch, piece in pieces_placed(
            PLAYED[[u.slug for u in PLAYED].index("clock-shop-sounds")]
        )
        if piece.sound == "roll" and stretch.unit == 1
    )
    start, end = (float(one) for one in sounding(*roll))
    loud = samples[round(start * rate) : round(end * rate)]
    assert strokes_a_second(loud, rate * 2) == pytest.approx(2 * ROLL, abs=1.2)
