"""JPEG pictures: the segments that make the picture stay (ITU-T T.81; JFIF 1.02; ICC.1)."""

from __future__ import annotations

import re

from build_tools.pictures.limits import MOST_PIECES, MOST_SCANS
from build_tools.pictures.stripped import DAMAGED, Stripped
from build_tools.pictures.trouble import PictureError
from build_tools.pictures.upright import UPRIGHT, orientation_in

_START, _END, _SCAN = 0xD8, 0xD9, 0xDA
_COMMENT = 0xFE
_NOT_SHOWN = frozenset({0xC3, *range(0xC5, 0xC8), *range(0xC9, 0xD0)})
"""Ways to write a JPEG that browsers do not show (T.81, table B.1): without loss, in layers, or by
arithmetic coding.
"""
_BARE = frozenset({0x01, *range(0xD0, 0xD9)})
_EXIF = b"Exif\0\0"
_JFIF_HEAD = 14
_AFTER_SCAN = re.compile(rb"\xff[^\x00\xd0-\xd7]", re.DOTALL)


def stripped_jpeg(data: bytes) -> Stripped:
    """The picture without comments, applications' data and the small copy; colours stay true."""
    if data[:2] != bytes((0xFF, _START)):
        raise PictureError("it is not a JPEG picture, though its name ends in .jpg")
    kept, at, scans, orientation = [data[:2]], 2, 0, UPRIGHT
    for _ in range(MOST_PIECES):
        marker, at = _marker(data, at)
        if marker == _END:
            return Stripped(b"".join([*kept, bytes((0xFF, _END))]), orientation)
        length = int.from_bytes(data[at : at + 2], "big")
        if marker in _NOT_SHOWN:
            raise PictureError("it is written in a way that browsers do not show: save it again")
        if marker in _BARE or length < 2 or at + length > len(data):
            raise PictureError(DAMAGED)
        body = data[at + 2 : at + length]
        at += length
        if marker == 0xE1 and body.startswith(_EXIF):
            orientation = orientation_in(body[len(_EXIF) :])
        seen = _seen(marker, body)
        if seen is not None:
            kept.append(bytes((0xFF, marker)) + (len(seen) + 2).to_bytes(2, "big") + seen)
        if marker == _SCAN:
            scans += 1
            end = _end_of_scan(data, at)
            kept.append(data[at:end])
            at = end
        if scans > MOST_SCANS:
            raise PictureError(f"it draws over itself more than {MOST_SCANS} times: save it again")
    raise PictureError(DAMAGED)


def _marker(data: bytes, at: int) -> tuple[int, int]:
    """The marker at `at`, any number of filling bytes before it, and where it ends."""
    if at >= len(data) or data[at] != 0xFF:
        raise PictureError(DAMAGED)
    while at < len(data) and data[at] == 0xFF:
        at += 1
    if at >= len(data):
        raise PictureError(DAMAGED)
    return data[at], at + 1


def _seen(marker: int, body: bytes) -> bytes | None:
    """What of a segment is seen; None where nothing is."""
    if marker == 0xE0 and body.startswith(b"JFIF\0"):
        return body[: _JFIF_HEAD - 2] + b"\0\0"
    if marker == 0xE2 and body.startswith(b"ICC_PROFILE\0"):
        return body
    if marker == 0xEE and body.startswith(b"Adobe"):
        return body
    return None if 0xE0 <= marker <= 0xEF or marker == _COMMENT else body


def _end_of_scan(data: bytes, at: int) -> int:
    """Where the coded picture ends: at the first marker that is not part of it."""
    found = _AFTER_SCAN.search(data, at)
    if found is None:
        raise PictureError(DAMAGED)
    return found.start()
