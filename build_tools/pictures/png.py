"""PNG pictures: the chunks that make the picture stay (W3C, Portable Network Graphics)."""

from __future__ import annotations

import zlib

from build_tools.pictures.limits import MOST_PIECES
from build_tools.pictures.png_shape import Chunk, refuse_misshapen
from build_tools.pictures.stripped import DAMAGED, Stripped
from build_tools.pictures.trouble import PictureError
from build_tools.pictures.upright import UPRIGHT, orientation_in

SIGNATURE = b"\x89PNG\r\n\x1a\n"
_SEEN = frozenset(b"IHDR PLTE IDAT IEND tRNS cHRM gAMA iCCP sBIT sRGB cICP acTL fcTL fdAT".split())


def stripped_png(data: bytes) -> Stripped:
    """The signature and the chunks that are seen, up to the end of the picture."""
    if not data.startswith(SIGNATURE):
        raise PictureError("it is not a PNG picture, though its name ends in .png")
    kept, at, orientation = [SIGNATURE], len(SIGNATURE), UPRIGHT
    chunks: list[Chunk] = []
    for _ in range(MOST_PIECES):
        length = int.from_bytes(data[at : at + 4], "big")
        kind, end = data[at + 4 : at + 8], at + 12 + length
        if end > len(data):
            raise PictureError(DAMAGED)
        told = int.from_bytes(data[end - 4 : end], "big")
        if zlib.crc32(data[at + 4 : end - 4]) != told:
            raise PictureError(DAMAGED)
        chunks.append((kind, data[at + 8 : end - 4]))
        if kind == b"eXIf":
            orientation = orientation_in(data[at + 8 : end - 4])
        if kind in _SEEN:
            kept.append(data[at:end])
        if kind == b"IEND":
            refuse_misshapen(chunks)
            return Stripped(b"".join(kept), orientation)
        at = end
    raise PictureError(DAMAGED)
