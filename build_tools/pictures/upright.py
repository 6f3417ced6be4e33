"""Which way up a photograph is shown, by the data that it carries unseen."""

from __future__ import annotations

ORIENTATION = 0x0112
UPRIGHT = 1
_MOST_ENTRIES = 500


def orientation_in(exif: bytes) -> int:
    """Which way up a picture is shown, 1 for as it is, from the TIFF part of its Exif data.

    Exif 2.32 (CIPA DC-008), tag 0x0112. Data that cannot be read turns nothing.
    """
    order = {b"II": "little", b"MM": "big"}.get(exif[:2])
    if order is None or len(exif) < 8:
        return UPRIGHT

    def number(at: int, size: int) -> int:
        return int.from_bytes(exif[at : at + size], "little" if order == "little" else "big")

    start = number(4, 4)
    for n in range(min(number(start, 2), _MOST_ENTRIES)):
        at = start + 2 + 12 * n
        if at + 12 > len(exif):
            return UPRIGHT
        if number(at, 2) == ORIENTATION:
            found = number(at + 8, 2)
            return found if 1 <= found <= 8 else UPRIGHT
    return UPRIGHT
