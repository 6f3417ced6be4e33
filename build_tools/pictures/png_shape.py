"""Whether a PNG's parts fit one another, as browsers want them (W3C, Portable Network Graphics)."""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from build_tools.pictures.limits import MOST_POINTS
from build_tools.pictures.stripped import DAMAGED
from build_tools.pictures.trouble import PictureError

Chunk = tuple[bytes, bytes]
"""A chunk's kind, and what is in it."""
_HEAD = struct.Struct(">IIBBBBB")
_SAMPLES = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}
_DEPTHS = {0: (1, 2, 4, 8, 16), 2: (8, 16), 3: (1, 2, 4, 8), 4: (8, 16), 6: (8, 16)}
_PALETTE = 3
_CRITICAL = frozenset({b"IHDR", b"PLTE", b"IDAT", b"IEND"})
_PASSES = ((0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2),
           (0, 1, 1, 2))  # fmt: skip
"""Of an interlaced picture: first column and row of each pass, and the steps between."""
_PIECE = 1 << 16


@dataclass(frozen=True, slots=True)
class _Head:
    width: int
    height: int
    bits: int
    """Of one point."""
    interlaced: bool

    def bytes_of_rows(self) -> int:
        """How many bytes the rows of the picture have, each with its filter."""
        if not self.interlaced:
            return self._of(self.width, self.height)
        return sum(
            self._of(-(-(self.width - left) // across), -(-(self.height - top) // down))
            for left, top, across, down in _PASSES
        )

    def _of(self, width: int, height: int) -> int:
        return height * (1 + -(-width * self.bits // 8)) if width > 0 and height > 0 else 0


def refuse_misshapen(chunks: Sequence[Chunk]) -> None:
    """Raise PictureError where a browser would show nothing, or something else than a program."""
    head = _head(chunks)
    palettes = [body for kind, body in chunks if kind == b"PLTE"]
    if any(len(body) % 3 or not 3 <= len(body) <= 768 for body in palettes) or len(palettes) > 1:
        raise PictureError(DAMAGED)
    if chunks[0][1][9] == _PALETTE and not palettes:
        raise PictureError(DAMAGED)
    if any(kind not in _CRITICAL and kind[:1].isupper() for kind, _ in chunks):
        raise PictureError(DAMAGED)
    if head.width * head.height > MOST_POINTS:
        return  # it is told so by whoever looks at the points
    if _unpacked(chunks, head.bytes_of_rows()) != head.bytes_of_rows():
        raise PictureError(DAMAGED)


def _head(chunks: Sequence[Chunk]) -> _Head:
    if not chunks or [kind for kind, _ in chunks].count(b"IHDR") != 1 or chunks[0][0] != b"IHDR":
        raise PictureError(DAMAGED)
    body = chunks[0][1]
    if len(body) != _HEAD.size:
        raise PictureError(DAMAGED)
    width, height, depth, colour, packing, filtering, interlaced = _HEAD.unpack(body)
    if depth not in _DEPTHS.get(colour, ()) or packing or filtering or interlaced > 1:
        raise PictureError(DAMAGED)
    if not width or not height:
        raise PictureError(DAMAGED)
    return _Head(width, height, depth * _SAMPLES[colour], bool(interlaced))


def _unpacked(chunks: Sequence[Chunk], most: int) -> int:
    """How many bytes the picture's stream holds, one more than `most` where it is longer."""
    found = 0
    for piece in _pieces(b"".join(body for kind, body in chunks if kind == b"IDAT")):
        found += piece
        if found > most:
            break
    return found


def _pieces(stream: bytes) -> Iterator[int]:
    """How long each piece is that the stream unpacks to; nothing of it is kept."""
    reader = zlib.decompressobj()
    try:
        while stream and not reader.eof:
            yield len(reader.decompress(stream, _PIECE))
            stream = reader.unconsumed_tail
        yield len(reader.flush())
    except zlib.error:
        raise PictureError(DAMAGED) from None
