"""Pictures without what they carry unseen: places, names, comments, small copies of themselves."""

from __future__ import annotations

from build_tools.packs.hidden_data.broken import PictureError
from build_tools.packs.hidden_data.jpeg import cleaned_jpeg
from build_tools.packs.hidden_data.png import cleaned_png
from build_tools.packs.hidden_data.svg import cleaned_svg
from build_tools.packs.hidden_data.webp import cleaned_webp

__all__ = ["PictureError", "as_packed", "cleaned"]
_BY_ENDING = {"png": cleaned_png, "jpg": cleaned_jpeg, "webp": cleaned_webp, "svg": cleaned_svg}


def cleaned(name: str, data: bytes) -> bytes:
    """The picture `data` with what is seen and nothing else; clean pictures stay as they are.

    Raises `PictureError`, in a reader's words, for what is not the picture that `name` says.
    """
    return _BY_ENDING[name.rpartition(".")[2]](data)


def as_packed(path: str, data: bytes) -> bytes:
    """A unit's file as a pack would hold it; what is no sound picture stays as it is."""
    if not path.startswith("media/"):
        return data
    try:
        return cleaned(path, data)
    except (PictureError, KeyError):
        return data
