"""WebP pictures: the chunks that make the picture stay (RFC 9649)."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.pictures.limits import MOST_PIECES
from build_tools.pictures.stripped import DAMAGED, Stripped
from build_tools.pictures.trouble import PictureError
from build_tools.pictures.upright import UPRIGHT, orientation_in

_SEEN = frozenset({b"VP8 ", b"VP8L", b"VP8X", b"ALPH", b"ANIM", b"ANMF", b"ICCP"})
_SEEN_IN_FRAMES = frozenset({b"VP8 ", b"VP8L", b"ALPH"})
_HEAD, _FRAME_HEAD = 8, 16
"""Bytes of a chunk's own head, and of what a frame says of itself before its chunks."""
_EXIF_AND_XMP = 0b1100
_BEFORE_TIFF = b"Exif\0\0"


def stripped_webp(data: bytes) -> Stripped:
    """The picture without Exif, XMP and chunks that no reader shows."""
    if data[:4] != b"RIFF" or data[8:12] != b"WEBP":
        raise PictureError("it is not a WebP picture, though its name ends in .webp")
    end = _HEAD + int.from_bytes(data[4:_HEAD], "little")
    if end > len(data):
        raise PictureError(DAMAGED)
    kept, orientation = [], UPRIGHT
    for kind, chunk in _chunks(data[:end], 12):
        if kind == b"EXIF":
            orientation = orientation_in(chunk[_HEAD:].removeprefix(_BEFORE_TIFF))
        if kind == b"VP8X" and len(chunk) > _HEAD:
            chunk = chunk[:8] + bytes((chunk[8] & ~_EXIF_AND_XMP,)) + chunk[9:]
        if kind == b"ANMF":
            chunk = _frame(chunk)
        if kind in _SEEN:
            kept.append(chunk)
    body = b"WEBP" + b"".join(kept)
    return Stripped(b"RIFF" + len(body).to_bytes(4, "little") + body, orientation)


def _chunks(data: bytes, at: int) -> Iterator[tuple[bytes, bytes]]:
    """Each chunk from `at` on: its kind, and all of its bytes with the one that evens it out."""
    for _ in range(MOST_PIECES):
        if at >= len(data):
            return
        size = int.from_bytes(data[at + 4 : at + _HEAD], "little")
        after = at + _HEAD + size + size % 2
        if after > len(data):
            raise PictureError(DAMAGED)
        yield data[at : at + 4], data[at:after]
        at = after
    raise PictureError(DAMAGED)


def _frame(chunk: bytes) -> bytes:
    """A frame of a moving picture with the chunks that make it alone."""
    size = int.from_bytes(chunk[4:_HEAD], "little")
    frame = chunk[: _HEAD + size]
    head = frame[_HEAD : _HEAD + _FRAME_HEAD]
    inner = (one for kind, one in _chunks(frame, _HEAD + _FRAME_HEAD) if kind in _SEEN_IN_FRAMES)
    body = head + b"".join(inner)
    even = b"" if len(body) % 2 == 0 else b"\0"
    return b"ANMF" + len(body).to_bytes(4, "little") + body + even
