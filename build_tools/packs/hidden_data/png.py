"""PNG pictures: the chunks that make the picture stay (W3C, Portable Network Graphics)."""

from __future__ import annotations

import zlib

from build_tools.packs.hidden_data.broken import PictureError, refuse_turned

SIGNATURE = b"\x89PNG\r\n\x1a\n"
_SEEN = frozenset(b"IHDR PLTE IDAT IEND tRNS cHRM gAMA iCCP sBIT sRGB cICP acTL fcTL fdAT".split())


def cleaned_png(data: bytes) -> bytes:
    """The signature and the chunks that are seen, up to the end of the picture."""
    if not data.startswith(SIGNATURE):
        raise PictureError("it is not a PNG picture, though its name ends in .png")
    kept, at = [SIGNATURE], len(SIGNATURE)
    while True:
        length = int.from_bytes(data[at : at + 4], "big")
        kind, end = data[at + 4 : at + 8], at + 12 + length
        body, told = data[at + 8 : end - 4], data[end - 4 : end]
        if end > len(data) or zlib.crc32(kind + body) != int.from_bytes(told, "big"):
            raise PictureError("it is damaged: open it and save it again")
        if kind == b"eXIf":
            refuse_turned(body)
        if kind in _SEEN:
            kept.append(data[at:end])
        if kind == b"IEND":
            return b"".join(kept)
        at = end
