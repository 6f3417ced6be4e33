"""Photographs looked at in full by Pillow, so that none is believed that a reader could not see."""

from __future__ import annotations

import io
import struct
import warnings
import zlib
from typing import TYPE_CHECKING

from build_tools.pictures.limits import LEAST_FRAME, MOST_POINTS, MOST_SIDE
from build_tools.pictures.stripped import DAMAGED
from build_tools.pictures.trouble import PictureError

if TYPE_CHECKING:
    from collections.abc import Callable

    from PIL import Image, ImageFile

_QUALITY = 92
FAULTS = (
    OSError,
    EOFError,
    SyntaxError,
    ValueError,
    TypeError,
    LookupError,
    ArithmeticError,
    RuntimeError,
    struct.error,
    zlib.error,
)
"""What Pillow raises for a file that is not sound."""


def points_of(kind: str, data: bytes) -> int:
    """How many points all frames have, each looked at; PictureError where one is not sound."""
    with opened(kind, data) as picture:
        width, height = picture.size
        return width * height * _looked_at(picture)


def turned_upright(kind: str, data: bytes, orientation: int) -> bytes:
    """The picture with its points in the order in which they are to be seen, saved anew."""
    from PIL import Image

    ways = Image.Transpose
    way = {
        2: ways.FLIP_LEFT_RIGHT,
        3: ways.ROTATE_180,
        4: ways.FLIP_TOP_BOTTOM,
        5: ways.TRANSPOSE,
        6: ways.ROTATE_270,
        7: ways.TRANSVERSE,
        8: ways.ROTATE_90,
    }[orientation]
    with opened(kind, data) as picture:
        if getattr(picture, "n_frames", 1) > 1:
            raise PictureError("it moves and lies on its side: turn it upright and save it again")
        profile = picture.info.get("icc_profile")
        try:
            upright = picture.transpose(way)
            return _saved(kind, upright, profile)
        except FAULTS:
            raise PictureError(DAMAGED) from None


def _saved(kind: str, picture: Image.Image, profile: bytes | None) -> bytes:
    made = io.BytesIO()
    told = {"icc_profile": profile} if profile else {}
    if kind == "jpg":
        picture.save(made, "JPEG", quality=_QUALITY, optimize=True, **told)
    elif kind == "webp":
        picture.save(made, "WEBP", quality=_QUALITY, **told)
    else:
        picture.save(made, "PNG", optimize=True, **told)
    return made.getvalue()


def opened(kind: str, data: bytes) -> ImageFile.ImageFile:
    """The picture, of whose points none is read yet, but not one with too many."""
    # Loading these takes longer than checking a unit, and most units have drawings.
    from PIL import Image, JpegImagePlugin, PngImagePlugin, WebPImagePlugin

    readers: dict[str, Callable[[io.BytesIO], ImageFile.ImageFile]] = {
        "jpg": JpegImagePlugin.JpegImageFile,
        "png": PngImagePlugin.PngImageFile,
        "webp": WebPImagePlugin.WebPImageFile,
    }
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", Image.DecompressionBombWarning)
        try:
            picture = readers[kind](io.BytesIO(data))
            frames = int(getattr(picture, "n_frames", 1))
        except Image.DecompressionBombError:
            raise PictureError(
                f"it has more than {MOST_POINTS:,} points: make it smaller"
            ) from None
        except FAULTS:
            raise PictureError(DAMAGED) from None
    width, height = picture.size
    if max(width, height) > MOST_SIDE:
        raise PictureError(f"it is {max(width, height):,} points long, more than {MOST_SIDE:,}")
    if width * height * frames > MOST_POINTS:
        each = f"{width:,} by {height:,} points" + (f" in {frames:,} frames" if frames > 1 else "")
        raise PictureError(f"it has {each}, more than {MOST_POINTS:,} together: make it smaller")
    return picture


def _looked_at(picture: ImageFile.ImageFile) -> int:
    """How many frames the picture has, after each was decoded."""
    frames = int(getattr(picture, "n_frames", 1))
    soonest = float(LEAST_FRAME)
    try:
        for frame in range(frames):
            if frames > 1:
                picture.seek(frame)
            picture.load()
            if frames > 1:
                soonest = min(soonest, float(picture.info.get("duration", 0)))
    except FAULTS:
        raise PictureError(DAMAGED) from None
    if soonest < LEAST_FRAME:
        raise PictureError(
            f"it moves, and changes sooner than after {LEAST_FRAME} milliseconds: flashes can "
            "bring on a seizure; use a still picture"
        )
    return frames
