"""What a file of a unit was meant to be called, and how to say so."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection

from build_tools.problem import Fault, Problem

_LESSON = re.compile(r"lesson[\s_-]*0?([1-9][0-9]?)(.*)\Z", re.IGNORECASE)
_KINDS = {
    "mp3": "mp3", "svg": "svg", "png": "png", "jpg": "jpg", "jpeg": "jpg", "webp": "webp",
    "heic": "jpg", "heif": "jpg",
}  # fmt: skip
"""What each kind of file is published as."""
MOST_NAME = 54
"""Letters of a picture's name: with its folder it has the 60 that the unit's schema allows."""
_SHORT = 40
_OF_PHONES = {"avif", "tif", "tiff", "bmp", "gif"}
_WRITTEN_ELSEWHERE = {"docx", "doc", "odt", "pages", "rtf", "pdf"}
_HELP = (
    "rename it or move it out: units hold unit.md, lesson-1.md and so on, and pictures "
    "(svg, png, jpg, webp) and recordings (mp3) in media"
)


ODD = "file-name-odd"
"""The rule of a file that has no place where it lies: nothing else in its unit depends on it."""


def odd_name(file: str, message: str, help_: str = _HELP) -> Problem:
    """The problem of a file whose name has no place where it lies."""
    return Fault(ODD, 1, 1, printable(message), printable(help_)).at(printable(file))


def odd_file(file: str, beside: Collection[str]) -> Problem:
    """The problem of a file in a unit's folder that is none of a unit's; `beside` is what is."""
    name = file.rpartition("/")[2]
    message = f"`{name}` is not a file of a unit"
    extension = name.rpartition(".")[2].lower()
    if extension in _WRITTEN_ELSEWHERE:
        help_ = (
            f"a .{extension} file is not read: copy its words into the fields of a file such as "
            "lesson-1.md, and keep it in another folder"
        )
        return odd_name(file, message, help_)
    meant = _meant(name)
    if meant and meant in beside:
        help_ = (
            f"{meant} lies beside it: if this is a copy, see that every word you want stands in "
            f"{meant}, and keep the copy in another folder"
        )
        return odd_name(file, message, help_)
    return odd_name(file, message, f"call it {meant}, if that is what it is" if meant else _HELP)


def plain_picture_name(name: str) -> str | None:
    """What a picture or a recording is called in the bank: Pool 1.JPG is pool-1.jpg.

    None for what is neither, and for a name of which nothing would be left.
    """
    stem, _, extension = name.rpartition(".")
    apart = unicodedata.normalize("NFKD", stem.casefold())
    letters = "".join(one for one in apart if not unicodedata.combining(one))
    plain = "-".join(re.findall(r"[a-z0-9]+", letters))
    kind = _KINDS.get(extension.casefold())
    whole = f"{plain}.{kind}"
    return whole if plain and kind and len(whole) <= MOST_NAME else None


def odd_picture(file: str) -> Problem:
    """The problem of something in a unit's media folder that is no picture with a plain name."""
    stem, _, extension = file.rpartition("/")[2].rpartition(".")
    extension = extension.lower()
    plain = "-".join(re.findall(r"[a-z0-9]+", stem.lower()))[:_SHORT].strip("-") or "picture"
    if extension in _KINDS:
        meant = f"{plain}.{_KINDS[extension]}"
        message = "this file's name is too long, or has no letter or figure for an address"
        return odd_name(
            file, message, f"call it {meant}, here and in unit.md (file: media/{meant})"
        )
    if extension in _OF_PHONES:
        message = f"a .{extension} picture cannot be read by every browser, so it is not published"
        return odd_name(
            file, message, f"save it as a JPEG, call it {plain}.jpg, and put that in its place"
        )
    return odd_name(file, "this is no picture (svg, png, jpg, webp) and no recording (mp3)")


def _meant(name: str) -> str:
    stem = name.casefold().removesuffix(".txt")
    if re.sub(r"[\s_-]+", "", stem) in ("unit.md", "unit"):
        return "unit.md"
    found = _LESSON.match(name)
    return f"lesson-{int(found.group(1))}.md" if found else ""


def printable(text: str) -> str:
    """A name of bytes that are no text, or of controls, with a question mark for each."""
    return "".join(c if c.isprintable() else "?" for c in text)
