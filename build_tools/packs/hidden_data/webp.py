"""WebP pictures: the chunks that make the picture stay (RFC 9649)."""

from __future__ import annotations

from build_tools.packs.hidden_data.broken import PictureError, refuse_turned

_SEEN = frozenset({b"VP8 ", b"VP8L", b"VP8X", b"ALPH", b"ANIM", b"ANMF", b"ICCP"})
_EXIF_AND_XMP = 0b1100
_BEFORE_TIFF = b"Exif\0\0"


def cleaned_webp(data: bytes) -> bytes:
    """The picture without Exif, XMP and chunks that no reader shows."""
    if data[:4] != b"RIFF" or data[8:12] != b"WEBP":
        raise PictureError("it is not a WebP picture, though its name ends in .webp")
    end = 8 + int.from_bytes(data[4:8], "little")
    kept, at = [], 12
    while at < end:
        kind, size = data[at : at + 4], int.from_bytes(data[at + 4 : at + 8], "little")
        after = at + 8 + size + size % 2
        if after > len(data) or after > end:
            raise PictureError("it is damaged: open it and save it again")
        chunk = data[at:after]
        if kind == b"EXIF":
            refuse_turned(chunk[8:].removeprefix(_BEFORE_TIFF))
        if kind == b"VP8X" and size:
            chunk = chunk[:8] + bytes((chunk[8] & ~_EXIF_AND_XMP,)) + chunk[9:]
        if kind in _SEEN:
            kept.append(chunk)
        at = after
    body = b"WEBP" + b"".join(kept)
    return b"RIFF" + len(body).to_bytes(4, "little") + body
