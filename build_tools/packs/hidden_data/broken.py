"""What is wrong with a picture."""

from __future__ import annotations

ORIENTATION = 0x0112


class PictureError(ValueError):
    """The picture cannot be cleaned; the text says why, and what to do."""


def orientation_in(exif: bytes) -> int:
    """Which way up a picture is shown, 1 for as it is, from the TIFF part of its Exif data.

    Exif 2.32 (CIPA DC-008), tag 0x0112. Data that cannot be read turns nothing.
    """
    order = {b"II": "little", b"MM": "big"}.get(exif[:2])
    if order is None or len(exif) < 8:
        return 1

    def number(at: int, size: int) -> int:
        return int.from_bytes(exif[at : at + size], "little" if order == "little" else "big")

    start = number(4, 4)
    for n in range(number(start, 2)):
        at = start + 2 + 12 * n
        if at + 12 > len(exif):
            return 1
        if number(at, 2) == ORIENTATION:
            return number(at + 8, 2)
    return 1


def refuse_turned(exif: bytes) -> None:
    """Raise where the picture is only upright by what would be taken out."""
    if orientation_in(exif) not in (0, 1):
        raise PictureError(
            "it lies on its side, and only its hidden data turns it upright: open it, turn it "
            "upright and save it again"
        )
