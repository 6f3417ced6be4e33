"""A picture that an author drops on a page: known by its bytes, made fit, given a free name."""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import dataclass
from pathlib import Path

from build_tools.pictures.heif import is_heif
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from build_tools.source.file_names import MOST_NAME, plain_picture_name
from build_tools.source.media_files import SHARED
from build_tools.source.media_read import what_was_done

_SAVE_AS = "open it, save it as a JPEG (.jpg) or a PNG (.png), and drop that"
_OTHERS = (
    (rb"GIF8", f"it is a GIF, which keeps few colours or moves: {_SAVE_AS}"),
    (rb"II\*\x00|MM\x00\*", f"it is a TIFF, which browsers do not show: {_SAVE_AS}"),
    (rb"BM", f"it is a bitmap (.bmp), which is very large: {_SAVE_AS}"),
    (rb".{4}ftypavi[fs]", f"it is an AVIF, which not every browser shows: {_SAVE_AS}"),
    (rb"%PDF", "it is a PDF, which holds pages and no picture: save the picture in it as a JPEG "
               "(.jpg), and drop that"),
    (rb"PK\x03\x04|\xd0\xcf\x11\xe0", "it is a document or a folder packed into one file: save the "
                                     "picture in it as a JPEG (.jpg), and drop that"),
    (rb".{4}ftyp", "it is a film or a picture of a kind that is not read here: save one picture of "
                   "it as a JPEG (.jpg), and drop that"),
)  # fmt: skip
_UNKNOWN = f"it is no picture of a kind that is read here: {_SAVE_AS}"
_DRAWING = re.compile(rb"\s*(?:\xef\xbb\xbf)?\s*<(?:\?xml|!--|!DOCTYPE svg|svg)", re.IGNORECASE)
_OF_CAMERAS = re.compile(
    r"(img|image|dsc|dscn|dscf|pxl|photo|picture|pic|scan|screenshot|screen-shot|whatsapp|capture"
    r"|untitled|download|p|mvimg|[0-9a-f]{12,})(-|[0-9]|\Z)|[0-9-]+\Z"
)
"""Names that cameras and telephones give, by which nobody would know the picture."""


@dataclass(frozen=True, slots=True)
class Dropped:
    """A picture as it is kept: its kind (jpg), the name it came with, and what was done to it."""

    kind: str
    named: str
    data: bytes
    done: tuple[str, ...]


def as_dropped(name: str, data: bytes) -> Dropped:
    """The picture upright, small and bare; raises `PictureError` with how to save it otherwise."""
    kind = _kind(data)
    plain = f"picture.{kind}"
    made = cleaned(plain, data)
    done = what_was_done(plain, plain, data)
    if kind == "svg" and made != data:
        done.append("without what only the program that drew it needs")
    if is_heif(data):
        done.insert(0, "as a JPEG, which every browser shows")
    stem = name.replace("\\", "/").rpartition("/")[2].rpartition(".")[0] or name
    return Dropped(kind, stem, made, tuple(done))


def _kind(data: bytes) -> str:
    if data.startswith(b"\x89PNG\r\n\x1a\n"):
        return "png"
    if data.startswith(b"\xff\xd8\xff") or is_heif(data):
        return "jpg"
    if data[:4] == b"RIFF" and data[8:12] == b"WEBP":
        return "webp"
    if _DRAWING.match(data):
        return "svg"
    for begins, why in _OTHERS:
        if re.match(begins, data, re.DOTALL):
            raise PictureError(why)
    raise PictureError(_UNKNOWN)


def free_name(picture: Dropped, title: str, taken: Collection[str]) -> str:
    """What the picture is called in the unit's media folder: by its own name, or by its title.

    No other picture there, nor one that units share, has the name.
    """
    own = plain_picture_name(f"{picture.named[:_MOST_STEM]}.{picture.kind}") or ""
    by_title = plain_picture_name(f"{title[:_MOST_STEM]}.{picture.kind}") or ""
    sensible = own and not _OF_CAMERAS.match(own.rpartition(".")[0])
    stem = ((own if sensible else by_title) or own or "picture.").rpartition(".")[0]
    number, name = 1, f"{stem}.{picture.kind}"
    while name in taken:
        number += 1
        name = f"{stem}-{number}.{picture.kind}"
    return name


_MOST_STEM = MOST_NAME - 10


def names_taken(unit: Path) -> frozenset[str]:
    """What the pictures in a unit's folder, and those that units share, are called in the bank."""
    found: set[str] = set()
    for folder in (unit / "media", unit.resolve().parent.parent / SHARED):
        names = [one.name for one in folder.iterdir()] if folder.is_dir() else []
        found |= {plain for name in names if (plain := plain_picture_name(name))}
        found |= {name.casefold() for name in names}
    return frozenset(found)
