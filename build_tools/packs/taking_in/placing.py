"""Where a unit from a pack goes: what is here already stays, or is kept beside it.

A pack says whose it is, and nothing proves it. So a unit of this bank's own gives up its place only
where somebody who saw the difference asks for that.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from build_tools.disk.stray_files import is_beside
from build_tools.packs.reading.contents import Pack
from build_tools.pictures.publishable import as_published
from build_tools.pictures.trouble import PictureError
from build_tools.source.file_names import plain_picture_name
from build_tools.source.folder import TAKEN_IN
from build_tools.source.front_matter import read_markdown
from build_tools.source.shared_spelled import as_it_goes, shared_with

UNITS, EARLIER = "units", "earlier"
_OF_FIELDS = re.compile(r"(unit|lesson-[1-9][0-9]?)\.md\Z")
Why = Literal["new", "here", "newer", "older", "other", "yours"]


@dataclass(frozen=True, slots=True)
class Placing:
    """Where the unit goes, below the content folder, and where what is there now goes first.

    `why` is new: no such unit is here; here: these very files are; newer: a later edition of the
    unit here; older: an earlier one; other: the same edition, or the same name, with other words;
    yours: a later edition, as it says, of a unit that was written here.
    """

    why: Why
    goal: str
    edition_here: str | None = None
    moved: str | None = None
    """Where the unit that is here now goes; None where it stays or there is none."""
    instead: Placing | None = None
    """What may be asked for in its place: that the unit written here gives up its own."""


def placing_of(content: Path, pack: Pack, own: str) -> Placing:
    """What taking in `pack` would do in the bank at `content`, called `own`. Nothing is written."""
    here = content / UNITS / pack.slug
    if not here.exists():
        return Placing("new", f"{UNITS}/{pack.slug}")
    same = _folder_with(content, pack)
    told = _told(here)
    edition = str(told.get("edition", "")) or None
    if same is not None:
        return Placing("here", same, edition)
    theirs = _fields(pack.unit_files["unit.md"])
    kept = _free(content, f"{pack.slug}-{pack.edition}")
    publisher = str(told.get("publisher", ""))
    if edition is None or not same_name(str(theirs.get("publisher", "")), publisher):
        return Placing("other", kept, edition)
    if _number(pack.edition) > _number(edition):
        moved = _free(content, f"{pack.slug}-{edition}")
        newer = Placing("newer", f"{UNITS}/{pack.slug}", edition, moved)
        written_here = same_name(publisher, own) or not (here / TAKEN_IN).is_file()
        return Placing("yours", kept, edition, instead=newer) if written_here else newer
    return Placing("older" if _number(pack.edition) < _number(edition) else "other", kept, edition)


def same_name(one: str, other: str) -> bool:
    """Whether two publishers' names read alike: by neither size, form nor spaces."""
    return _read_aloud(one) == _read_aloud(other)


def _read_aloud(name: str) -> str:
    return " ".join(unicodedata.normalize("NFKC", name).casefold().split())


def _free(content: Path, name: str) -> str:
    """A name in the folder of earlier editions that nothing has."""
    at, n = f"{EARLIER}/{name}", 2
    while (content / at).exists():
        at, n = f"{EARLIER}/{name}-{n}", n + 1
    return at


def _folder_with(content: Path, pack: Pack) -> str | None:
    """The folder that has these very files, pictures compared without their hidden data."""
    earlier = content / EARLIER
    kept = sorted(earlier.glob(f"{pack.slug}-{pack.edition}*")) if earlier.is_dir() else []
    for folder in (content / UNITS / pack.slug, *kept):
        if folder.is_dir() and _files_in(folder) == dict(pack.unit_files):
            return folder.relative_to(content).as_posix()
    return None


def _files_in(folder: Path) -> dict[str, bytes]:
    found = {}
    for path in sorted(folder.rglob("*")):
        name = path.relative_to(folder).as_posix()
        hidden = any(part.startswith(".") for part in name.split("/"))
        if path.is_file() and not hidden and not is_beside(name) and name != TAKEN_IN:
            plain = plain_picture_name(path.name) if name.startswith("media/") else None
            called = f"media/{plain}" if plain else name
            found[called] = _as_it_would_go(folder, called, path)
    for called, path in shared_with(folder).items():
        found[called] = as_published(called, path.read_bytes())
    return found


def _as_it_would_go(folder: Path, called: str, path: Path) -> bytes:
    if not _OF_FIELDS.match(called):
        return as_published(called, path.read_bytes())
    try:
        return as_it_goes(folder, called)
    except PictureError:
        return path.read_bytes()


def _told(folder: Path) -> Mapping[str, object]:
    try:
        return _fields((folder / "unit.md").read_bytes())
    except OSError:
        return {}


def _fields(raw: bytes) -> Mapping[str, object]:
    read = read_markdown("unit.md", raw)
    if isinstance(read, list) or not isinstance(read.data, dict):
        return {}
    return read.data


def _number(edition: str) -> tuple[int, ...]:
    parts = edition.split(".")
    return tuple(int(part) for part in parts) if all(part.isdecimal() for part in parts) else ()
