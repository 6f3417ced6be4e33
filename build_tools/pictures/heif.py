"""Photographs as telephones keep them (HEIF with HEVC, ISO/IEC 23008-12), made JPEG pictures.

No browser shows them everywhere, so they are published as JPEG. They are known by how they begin,
whatever they are called. The first picture of a file is read; what stands beside it is not.
"""

from __future__ import annotations

import io
import warnings
from typing import Any

from build_tools.pictures.decoded import FAULTS
from build_tools.pictures.limits import MOST_POINTS, MOST_SIDE
from build_tools.pictures.stripped import DAMAGED
from build_tools.pictures.trouble import PictureError

_BRANDS = frozenset({b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"mif1", b"msf1"})
"""How such files name themselves: ISO/IEC 23008-12, 10.2 and annex B.4."""
_QUALITY = 92
_NOT_HERE = (
    "it is a photograph as telephones keep them (.heic), and this computer cannot read it: open "
    "it, save it as a JPEG (.jpg), and put that in its place; or set the telephone's camera to "
    "its most compatible format"
)


def is_heif(data: bytes) -> bool:
    """Whether the bytes begin as such a file does (ISO/IEC 14496-12, 4.3)."""
    return data[4:8] == b"ftyp" and data[8:12] in _BRANDS


def as_jpeg(data: bytes) -> bytes:
    """The photograph as a JPEG, upright, with its colours and nothing else that it carries.

    How large it says it is is looked at before any point is read. Raises `PictureError`.
    """
    reader = _reader()
    try:
        # what each file says of itself is read here, and no point of it
        found = reader.open_heif(data)
        width, height = found.size
    except FAULTS:
        raise PictureError(DAMAGED) from None
    if max(width, height) > MOST_SIDE or width * height > MOST_POINTS:
        raise PictureError(
            f"it has {width:,} by {height:,} points, more than {MOST_POINTS:,} together: make it "
            "smaller"
        )
    try:
        picture = found.to_pillow()
        profile = picture.info.get("icc_profile")
        plain = picture if picture.mode in ("L", "RGB") else picture.convert("RGB")
        made = io.BytesIO()
        told = {"icc_profile": profile} if profile else {}
        plain.info.clear()
        plain.save(made, "JPEG", quality=_QUALITY, **told)
    except FAULTS:
        raise PictureError(DAMAGED) from None
    return made.getvalue()


def _reader() -> Any:
    """The library that decodes them; PictureError where it cannot be loaded."""
    try:
        # loading it takes longer than checking a unit, and few pictures are of this kind
        import pi_heif
        from pi_heif import options
    except ImportError:
        raise PictureError(_NOT_HERE) from None
    warnings.filterwarnings("ignore", module="pi_heif")
    options.THUMBNAILS = options.DEPTH_IMAGES = options.AUX_IMAGES = False
    options.DECODE_THREADS = 1
    return pi_heif
