"""JPEG pictures: the segments that make the picture stay (ITU-T T.81; JFIF 1.02; ICC.1)."""

from __future__ import annotations

from build_tools.packs.hidden_data.broken import PictureError, refuse_turned

_START, _END, _SCAN = 0xD8, 0xD9, 0xDA
_COMMENT = 0xFE
_BARE = frozenset({0x01, *range(0xD0, 0xD8)})
_EXIF = b"Exif\0\0"
_JFIF_HEAD = 14
_DAMAGED = "it is damaged: open it and save it again"


def cleaned_jpeg(data: bytes) -> bytes:
    """The picture without comments, applications' data and the small copy; colours stay true."""
    if data[:2] != bytes((0xFF, _START)):
        raise PictureError("it is not a JPEG picture, though its name ends in .jpg")
    kept, at = [data[:2]], 2
    while True:
        marker, at = _marker(data, at)
        if marker == _END:
            return b"".join([*kept, bytes((0xFF, _END))])
        if marker in _BARE:
            kept.append(bytes((0xFF, marker)))
            continue
        length = int.from_bytes(data[at : at + 2], "big")
        if length < 2 or at + length > len(data):
            raise PictureError(_DAMAGED)
        body = data[at + 2 : at + length]
        at += length
        seen = _seen(marker, body)
        if seen is not None:
            kept.append(bytes((0xFF, marker)) + (len(seen) + 2).to_bytes(2, "big") + seen)
        if marker == _SCAN:
            end = _end_of_scan(data, at)
            kept.append(data[at:end])
            at = end


def _marker(data: bytes, at: int) -> tuple[int, int]:
    """The marker at `at`, any number of filling bytes before it, and where it ends."""
    if at >= len(data) or data[at] != 0xFF:
        raise PictureError(_DAMAGED)
    while at < len(data) and data[at] == 0xFF:
        at += 1
    if at >= len(data):
        raise PictureError(_DAMAGED)
    return data[at], at + 1


def _seen(marker: int, body: bytes) -> bytes | None:
    """What of a segment is seen; None where nothing is."""
    if marker == 0xE0 and body.startswith(b"JFIF\0"):
        return body[: _JFIF_HEAD - 2] + b"\0\0"
    if marker == 0xE1 and body.startswith(_EXIF):
        refuse_turned(body[len(_EXIF) :])
    if marker == 0xE2 and body.startswith(b"ICC_PROFILE\0"):
        return body
    if marker == 0xEE and body.startswith(b"Adobe"):
        return body
    return None if 0xE0 <= marker <= 0xEF or marker == _COMMENT else body


def _end_of_scan(data: bytes, at: int) -> int:
    """Where the coded picture ends: at the first marker that is not part of it."""
    while True:
        at = data.find(b"\xff", at)
        if at < 0 or at + 1 >= len(data):
            raise PictureError(_DAMAGED)
        if data[at + 1] != 0 and not 0xD0 <= data[at + 1] <= 0xD7:
            return at
        at += 2
