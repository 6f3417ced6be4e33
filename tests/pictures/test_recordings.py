"""Recordings are frames of sound and nothing else: what other programs add is left out, what is
no sound refused."""

from __future__ import annotations

import io

import numpy as np
import pytest
import soundfile

from build_tools.pictures.limits import MOST_RECORDING
from build_tools.pictures.mp3 import seconds_of, stripped_mp3
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError


def recording(seconds: float = 1.0, rate: int = 44_100) -> bytes:
    """A recording of one note, by a library."""
    file = io.BytesIO()
    note = 0.3 * np.sin(2 * np.pi * 440 * np.arange(int(seconds * rate)) / rate)
    soundfile.write(file, note, rate, format="MP3", subtype="MPEG_LAYER_III")
    return file.getvalue()


def id3(text: bytes) -> bytes:
    """What many programs write before the first frame (ID3v2.3, from memory)."""
    size = len(text)
    sizes = bytes(size >> shift & 127 for shift in (21, 14, 7, 0))
    return b"ID3\x03\x00\x00" + sizes + text


@pytest.mark.parametrize("rate", [22_050, 32_000, 44_100, 48_000])
def test_a_recording_stays_as_it_is_and_lasts_as_long_as_the_library_says(rate: int) -> None:
    data = recording(2.0, rate)
    assert stripped_mp3(data) == data
    told = soundfile.info(io.BytesIO(data))
    assert seconds_of(data) == pytest.approx(told.frames / told.samplerate, abs=0.15)


def test_names_before_and_behind_it_are_left_out() -> None:
    data = recording()
    tagged = id3(b"TIT2 A. Person, 12 Some Street") + data + b"TAG" + b"A. Person".ljust(125)
    assert cleaned("media/tune.mp3", tagged) == data


@pytest.mark.parametrize(
    "data",
    [b"", b"RIFF....WAVE", b"<svg/>", id3(b"only a name"), b"\xff\xfb\xf0\x00", b"\xff\xfb\x90"],
)
def test_what_is_no_recording_is_refused(data: bytes) -> None:
    with pytest.raises(PictureError, match=r"not an MP3 recording"):
        cleaned("media/tune.mp3", data)


def test_what_is_hidden_behind_the_sound_is_refused() -> None:
    with pytest.raises(PictureError, match="no sound stands at byte"):
        stripped_mp3(recording() + b"PK\x03\x04 and a letter")


def test_a_large_one_is_refused_with_both_sizes() -> None:
    with pytest.raises(PictureError, match=f"more than {MOST_RECORDING:,}"):
        stripped_mp3(b"\xff\xfb" + bytes(MOST_RECORDING))


def test_any_cut_or_flipped_byte_is_refused_or_stays_whole_frames() -> None:
    data = recording(0.5)
    for at in range(0, len(data), 97):
        for changed in (data[:at], data[:at] + bytes([data[at] ^ 0xFF]) + data[at + 1 :]):
            try:
                kept = stripped_mp3(changed)
            except PictureError:
                continue
            assert stripped_mp3(kept) == kept
            assert len(kept) <= len(changed)
