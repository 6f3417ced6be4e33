"""What lies in a pack, by what it is and not by its name: the unit's own files, and the rest."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from build_tools.packs.about import FORMAT
from build_tools.packs.limits import MOST_ABOUT, MOST_PICTURES
from build_tools.packs.reading.names import printable
from build_tools.packs.reading.pages import refuse_active_page
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from build_tools.source.folder import is_slug

_TEXT = re.compile(r"(unit|lesson-[1-9][0-9]?)\.md\Z")
_MEDIA = re.compile(r"media/[a-z0-9]+(-[a-z0-9]+)*\.(svg|png|jpg|webp|mp3)\Z")
_PAGE = re.compile(r"pages/[a-z0-9-]+\.html\Z")
_TAG_FILE = re.compile(r"(bagit|bag-info|(tag)?manifest-(sha512|sha256|sha1|md5))\.txt\Z")
_REST = frozenset({"licence.txt", "credits.txt", "about.json", "metadata.jsonld"})
_EDITION = re.compile(r"(0|[1-9][0-9]{0,3})(\.(0|[1-9][0-9]{0,3})){2}\Z")
_CONTROLS = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]")


@dataclass(frozen=True, slots=True)
class Pack:
    """A pack that is whole and harmless: its unit's slug and edition, and the unit's own files,
    pictures as they would be published.

    `pages` has the SHA-256 of each page that came with it, by its name, `beside` that of each file
    which says what the unit says too, `about` is about.json, and `sha512` the pack's own digest.
    """

    slug: str
    edition: str
    unit_files: Mapping[str, bytes]
    pages: Mapping[str, str] = field(default_factory=dict)
    beside: Mapping[str, str] = field(default_factory=dict)
    about: bytes = b""
    sha512: str = ""


def refuse_strange_tags(paths: Iterable[str]) -> None:
    """Raise RefusedError for a file beside the payload that is none of the standard's own.

    The standard allows others, and whoever unzips a pack by hand would find them. `paths` are all
    files of a pack, below one folder.
    """
    for path in paths:
        inside = path.partition("/")[2]
        if not inside.startswith("data/") and not _TAG_FILE.match(inside):
            raise RefusedError(f"`{printable(path)}` has no place in a unit's pack")


def contents_of(payload: dict[str, bytes]) -> Pack:
    """The unit in a verified payload, which is used up. Raises RefusedError for what is no unit, or
    not harmless.
    """
    if "unit/unit.md" not in payload:
        raise RefusedError("it is a sound bag, but no unit is in it")
    about = payload.get("about.json", b"")
    slug, edition = _named(about)
    unit: dict[str, bytes] = {}
    pages: dict[str, str] = {}
    beside: dict[str, str] = {}
    # The pages hold the pictures once more: they go first, to leave room.
    for path in sorted(payload, key=lambda one: (not _PAGE.match(one), one)):
        data = payload.pop(path)
        if path.startswith("unit/"):
            unit[path.removeprefix("unit/")] = data
        elif _PAGE.match(path):
            refuse_active_page(path, _text(path, data))
            pages[path.removeprefix("pages/")] = hashlib.sha256(data).hexdigest()
        elif path in _REST:
            if len(data) > MOST_ABOUT:
                raise RefusedError(f"{path} has {len(data):,} bytes, more than {MOST_ABOUT:,}")
            _text(path, data)
            beside[path] = hashlib.sha256(data).hexdigest()
        else:
            raise RefusedError(f"`{printable(path)}` has no place in a unit's pack")
    pictures = sum(len(data) for path, data in unit.items() if _MEDIA.match(path))
    if pictures > MOST_PICTURES:
        raise RefusedError(
            f"the unit's pictures have {pictures:,} bytes together, more than {MOST_PICTURES:,}"
        )
    for path in list(unit):
        unit[path] = _own(path, unit.pop(path))
    return Pack(slug, edition, dict(sorted(unit.items())), pages, beside, about)


def _own(path: str, data: bytes) -> bytes:
    """A file of the unit as it is taken in."""
    if _TEXT.match(path):
        _text(f"unit/{path}", data)
        return data
    if not _MEDIA.match(path):
        raise RefusedError(f"`unit/{printable(path)}` is not a file of a unit")
    try:
        return cleaned(path, data)
    except PictureError as error:
        place = f"unit/{path}:{error.line}" if error.line else f"unit/{path}"
        raise RefusedError(f"{place}: {error}") from None


def _text(path: str, data: bytes) -> str:
    try:
        words = data.decode("utf-8")
    except UnicodeDecodeError:
        raise RefusedError(f"{path} is not text, though its name says so") from None
    if found := _CONTROLS.search(words):
        line = words.count("\n", 0, found.start()) + 1
        raise RefusedError(f"{path}:{line}: there is a sign that is no letter")
    return words


def _named(raw: bytes) -> tuple[str, str]:
    """The unit's folder name and edition, as about.json says."""
    try:
        told = json.loads(raw) if len(raw) <= MOST_ABOUT else None
    except (ValueError, RecursionError):
        told = None
    if not isinstance(told, dict):
        raise RefusedError("about.json does not say which unit this is")
    says = told.get("format")
    if type(says) is not int or says != FORMAT:
        other = f"format {says}" if type(says) is int and 0 <= says < 1000 else "no such format"
        raise RefusedError(f"about.json says {other}; {FORMAT} is read")
    slug, edition = told.get("unit"), told.get("edition")
    if not isinstance(slug, str) or not is_slug(slug):
        raise RefusedError("about.json names a folder that a unit cannot have")
    if not isinstance(edition, str) or not _EDITION.match(edition):
        raise RefusedError("about.json says no edition, such as 1.0.0")
    return slug, edition
