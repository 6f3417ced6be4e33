"""Photographs made as small as a page needs: looked at on a screen or on paper, never enlarged."""

from __future__ import annotations

import io
from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING

from build_tools.pictures.decoded import FAULTS, opened
from build_tools.pictures.limits import MOST_PHOTOGRAPH
from build_tools.pictures.stripped import DAMAGED
from build_tools.pictures.trouble import PictureError

if TYPE_CHECKING:
    from PIL import Image

_SIDES = (1600, 1280, 1024, 800, 640, 480)
"""Points along the longer side, the first that will do: 1,600 are 20 cm at 200 to the inch."""
_QUALITIES = (82, 74, 66)
_COLOURS = 256
_CARE = 3
"""A PNG packed in haste is at most so many times as large as the same packed with care, which takes
ten times as long; photographs, 1.2 times."""
_IN_PLACE = frozenset({"L", "LA", "RGB", "RGBA", "CMYK", "YCbCr"})
"""Ways to hold colours in which points can be mixed."""


def shrunk(kind: str, data: bytes) -> bytes:
    """The sound photograph in `MOST_PHOTOGRAPH` bytes at most; one that is small or moves stays.

    A picture that no size makes so light is as light as it gets.
    """
    if len(data) <= MOST_PHOTOGRAPH:
        return data
    least = data
    with opened(kind, data) as picture:
        if getattr(picture, "n_frames", 1) > 1:
            return data
        try:
            if kind == "jpg":
                # a JPEG is read at half its size or less in a quarter of the time
                picture.draft("RGB", (_SIDES[0], _SIDES[0]))
            whole = _plain(picture, kind)
            profile = picture.info.get("icc_profile") if whole.mode == picture.mode else None
            for side in _SIDES:
                whole.thumbnail((side, side), resample=_finest())
                for made in _saved(kind, whole, profile):
                    least = min(least, made, key=len)
                    if len(made) <= MOST_PHOTOGRAPH:
                        return made
        except FAULTS:
            raise PictureError(DAMAGED) from None
    return least


def _plain(picture: Image.Image, kind: str) -> Image.Image:
    """The picture no longer than the longest side, in colours that all of its kind can have.

    It is made smaller where it stands: twice in memory would be more than there is for strangers'.
    """
    if picture.mode in _IN_PLACE:
        picture.thumbnail((_SIDES[0], _SIDES[0]), resample=_finest())
    if kind != "jpg" and picture.has_transparency_data:
        return picture.convert("RGBA")
    return picture.copy() if picture.mode in ("L", "RGB") else picture.convert("RGB")


def _finest() -> Image.Resampling:
    from PIL import Image

    return Image.Resampling.LANCZOS


def _saved(kind: str, picture: Image.Image, profile: bytes | None) -> Iterator[bytes]:
    """The picture as a file, larger and better ones first."""
    from PIL import Image

    told = {"icc_profile": profile} if profile else {}
    if kind == "png":
        yield _png(picture, told)
        yield _png(picture.quantize(_COLOURS, method=Image.Quantize.FASTOCTREE), told)
        return
    name = "JPEG" if kind == "jpg" else "WEBP"
    more = {"optimize": True, "progressive": True} if kind == "jpg" else {"method": 4}
    for quality in _QUALITIES:
        yield _file(picture, name, quality=quality, **more, **told)


def _png(picture: Image.Image, told: Mapping[str, object]) -> bytes:
    """The picture as a PNG, packed with care where that may make it light enough."""
    quickly = _file(picture, "PNG", compress_level=1, **told)
    if len(quickly) > _CARE * MOST_PHOTOGRAPH:
        return quickly
    return _file(picture, "PNG", optimize=True, **told)


def _file(picture: Image.Image, name: str, **told: object) -> bytes:
    made = io.BytesIO()
    picture.save(made, name, **told)
    return made.getvalue()
