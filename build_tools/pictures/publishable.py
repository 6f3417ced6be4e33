"""Pictures and recordings as they are published: no places, names, comments or small copies."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import lru_cache

from build_tools.pictures.decoded import points_of, turned_upright
from build_tools.pictures.drawings.cost import refuse_costly
from build_tools.pictures.drawings.reading import read_drawing
from build_tools.pictures.drawings.tree import Element, as_text
from build_tools.pictures.heif import as_jpeg, is_heif
from build_tools.pictures.jpeg import stripped_jpeg
from build_tools.pictures.mp3 import stripped_mp3
from build_tools.pictures.png import stripped_png
from build_tools.pictures.shrunk import shrunk
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


@dataclass(frozen=True, slots=True)
class Fit:
    """A photograph as it is published, and what was done to it."""

    data: bytes
    bared: bool
    """Whether it carried something unseen."""
    turned: bool
    """Whether it lay on its side, or was mirrored."""
    smaller: bool
    """Whether it was made smaller."""


@lru_cache(maxsize=4)
def fit_for_a_page(kind: str, data: bytes) -> Fit:
    """The photograph of a `kind`, such as jpg, as a page shows it: upright, bare and small.

    The last few are kept: the same one is asked for by a check, a page and its card.
    """
    upright, points, stripped = _seen(kind, data)
    small = shrunk(kind, upright)
    if small is not upright:
        small = _STRIPPED[kind](small).data
        _KNOWN[_digest(kind, small)] = points
    turned = stripped is not None and stripped.orientation != UPRIGHT
    bared = stripped is not None and stripped.data != data
    return Fit(small, bared, turned, small is not upright)


def cleaned(name: str, data: bytes) -> bytes:
    """The picture or recording `data` with what is seen or heard and nothing else; clean ones stay.

    Raises `PictureError`, in a reader's words, for what is not what `name` says.
    """
    kind = name.rpartition(".")[2]
    if kind == "mp3":
        return stripped_mp3(data)
    return _drawing(data) if kind == "svg" else fit_for_a_page(kind, data).data


def as_published(path: str, data: bytes) -> bytes:
    """A unit's file as it would be published; what is no sound picture stays as it is."""
    if not path.startswith("media/"):
        return data
    try:
        return cleaned(path, data)
    except (PictureError, KeyError):
        return data


@lru_cache(maxsize=32)
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
    """The photograph as it stands in a drawing, and how many points it has."""
    return _seen(kind, data)[:2]


def _seen(kind: str, data: bytes) -> tuple[bytes, int, Stripped | None]:
    """The photograph upright and bare, how many points it has, and what it was bared to.

    The last is None where it was so before.
    """
    known = _digest(kind, data)
    if known in _KNOWN:
        return data, _KNOWN[known], None
    if kind == "jpg" and is_heif(data):
        stripped = stripped_jpeg(as_jpeg(data))
    else:
        stripped = _STRIPPED[kind](data)
    points = points_of(kind, stripped.data)
    clean = stripped.data
    if stripped.orientation != UPRIGHT:
        turned = turned_upright(kind, clean, stripped.orientation)
        clean = _STRIPPED[kind](turned).data
    _KNOWN[_digest(kind, clean)] = points
    return clean, points, stripped


def _digest(kind: str, data: bytes) -> str:
    return kind + hashlib.sha256(data).hexdigest()
