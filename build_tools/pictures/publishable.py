"""Pictures and recordings as they are published: no places, names, comments or small copies."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping

from build_tools.pictures.decoded import points_of, turned_upright
from build_tools.pictures.drawings.cost import refuse_costly
from build_tools.pictures.drawings.reading import read_drawing
from build_tools.pictures.drawings.tree import Element, as_text
from build_tools.pictures.jpeg import stripped_jpeg
from build_tools.pictures.mp3 import stripped_mp3
from build_tools.pictures.png import stripped_png
from build_tools.pictures.stripped import Stripped
from build_tools.pictures.trouble import PictureError
from build_tools.pictures.upright import UPRIGHT
from build_tools.pictures.webp import stripped_webp

_STRIPPED: Mapping[str, Callable[[bytes], Stripped]] = {
    "png": stripped_png,
    "jpg": stripped_jpeg,
    "webp": stripped_webp,
}
_KNOWN: dict[str, int] = {}
"""Points of the pictures that this process has found as they should be, by their digests."""


def cleaned(name: str, data: bytes) -> bytes:
    """The picture or recording `data` with what is seen or heard and nothing else; clean ones stay.

    Raises `PictureError`, in a reader's words, for what is not what `name` says.
    """
    kind = name.rpartition(".")[2]
    if kind == "mp3":
        return stripped_mp3(data)
    return _drawing(data) if kind == "svg" else _photograph(kind, data)[0]


def as_published(path: str, data: bytes) -> bytes:
    """A unit's file as it would be published; what is no sound picture stays as it is."""
    if not path.startswith("media/"):
        return data
    try:
        return cleaned(path, data)
    except (PictureError, KeyError):
        return data


def _drawing(data: bytes) -> bytes:
    known = _digest("svg", data)
    if known in _KNOWN:
        return data
    drawing = read_drawing(data, _inside)
    refuse_costly(drawing.root, drawing.photo_points)
    clean = as_text(drawing.root).encode()
    _KNOWN[_digest("svg", clean)] = 0
    return clean


def read_clean_drawing(data: bytes) -> Element:
    """The drawing as a tree of what may be published."""
    return read_drawing(data, _inside).root


def _inside(kind: str, data: bytes) -> tuple[bytes, int]:
    return _photograph(kind.replace("jpeg", "jpg"), data)


def _photograph(kind: str, data: bytes) -> tuple[bytes, int]:
    """The photograph as it is published, and how many points it has."""
    known = _digest(kind, data)
    if known in _KNOWN:
        return data, _KNOWN[known]
    stripped = _STRIPPED[kind](data)
    points = points_of(kind, stripped.data)
    clean = stripped.data
    if stripped.orientation != UPRIGHT:
        turned = turned_upright(kind, clean, stripped.orientation)
        clean = _STRIPPED[kind](turned).data
    _KNOWN[_digest(kind, clean)] = points
    return clean, points


def _digest(kind: str, data: bytes) -> str:
    return kind + hashlib.sha256(data).hexdigest()
