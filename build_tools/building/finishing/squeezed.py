"""A text held small in a page, for a script alone: `site_overrides/pieces/unsqueezed.js` reads it.

LZMA finds again what stands far before, where deflating (RFC 1951) looks back 32 kB; no place is
asked for (`pb` 0), since letters stand at any. Base 85 (RFC 1924) takes five letters for four
bytes; those that mean something in HTML give way to others.
"""

from __future__ import annotations

import base64
import lzma

_HOW = (
    {
        "id": lzma.FILTER_LZMA1,
        "preset": 9,
        "lc": 3,
        "lp": 0,
        "pb": 0,
        "dict_size": 1 << 20,
    },
)
_GIVE_WAY = bytes.maketrans(b"&<>`", b",:./")
_COME_BACK = bytes.maketrans(b",:./", b"&<>`")


def squeezed(text: str) -> str:
    """The text in letters that may stand in an attribute between double quotation marks."""
    small = lzma.compress(text.encode(), lzma.FORMAT_RAW, filters=_HOW)
    return base64.b85encode(small).translate(_GIVE_WAY).decode()


def unsqueezed(letters: str) -> str:
    """The text again."""
    small = base64.b85decode(letters.encode().translate(_COME_BACK))
    return lzma.decompress(small, lzma.FORMAT_RAW, filters=_HOW).decode()
