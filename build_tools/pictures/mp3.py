"""MP3 recordings, without what programs add before and behind what is heard.

A recording is nothing but frames of MPEG audio, layer III, one after another. What other programs
write of titles, names, places and pictures before the first frame (ID3v2) or behind the last
(ID3v1) is left out; anything else between or behind the frames is refused.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.pictures.limits import MOST_RECORDING
from build_tools.pictures.trouble import PictureError

_HEADER = 4
_ID3V2 = 10
"""Bytes before what an ID3v2 tag holds."""
_ID3V1 = 128
_KBITS_1 = (0, 32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320)
_KBITS_2 = (0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160)
"""Kilobits a second by the number in a header: ISO/IEC 11172-3 and 13818-3, layer III."""
_RATES = (44_100, 48_000, 32_000)


@dataclass(frozen=True, slots=True)
class _Frame:
    """One frame: where it ends, how many samples it has, and how many a second."""

    end: int
    samples: int
    rate: int


def stripped_mp3(data: bytes) -> bytes:
    """The frames of a recording and nothing else. Raises `PictureError` where it is none."""
    if len(data) > MOST_RECORDING:
        raise PictureError(
            f"it has {len(data):,} bytes, more than {MOST_RECORDING:,}: save it in one channel, "
            "at 96 kilobits a second"
        )
    heard = _without_tags(data)
    if not heard or sum(1 for _ in _frames(heard)) < 1:
        raise PictureError(_NO_RECORDING)
    return heard


def seconds_of(data: bytes) -> float:
    """How long a recording lasts, in seconds. Raises `PictureError` where it is none."""
    return sum(frame.samples / frame.rate for frame in _frames(_without_tags(data)))


_NO_RECORDING = "it is not an MP3 recording, though its name ends in .mp3"


def _without_tags(data: bytes) -> bytes:
    start, end = 0, len(data)
    if data[:3] == b"ID3" and len(data) >= _ID3V2:
        size = 0
        for byte in data[6:_ID3V2]:
            size = size << 7 | byte & 0x7F
        start = _ID3V2 + size
    if data[-_ID3V1:][:3] == b"TAG":
        end -= _ID3V1
    return data[start:end]


def _frames(data: bytes) -> Iterator[_Frame]:
    """Each frame in order; they fill the whole of `data`, or PictureError is raised."""
    at = 0
    while at < len(data):
        frame = _frame(data, at)
        if frame is None:
            raise PictureError(
                _NO_RECORDING if at == 0 else f"something that is no sound stands at byte {at:,}"
            )
        yield frame
        at = frame.end


def _frame(data: bytes, at: int) -> _Frame | None:
    head = data[at : at + _HEADER]
    if len(head) < _HEADER or head[0] != 0xFF or head[1] & 0xE6 != 0xE2:
        return None
    version = head[1] >> 3 & 3
    kbits, rate = head[2] >> 4, head[2] >> 2 & 3
    if version not in (2, 3) or kbits in (0, 15) or rate == 3:
        return None
    first = version == 3
    per_second = _RATES[rate] if first else _RATES[rate] // 2
    bits = (_KBITS_1 if first else _KBITS_2)[kbits] * 1000
    length = (144 if first else 72) * bits // per_second + (head[2] >> 1 & 1)
    if at + length > len(data):
        return None
    return _Frame(at + length, 1152 if first else 576, per_second)
