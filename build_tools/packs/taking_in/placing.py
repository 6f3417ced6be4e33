"""Where a unit from a pack goes: what is here already stays, or is kept beside it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from build_tools.disk.stray_files import is_beside
from build_tools.packs.reading.contents import Pack
from build_tools.pictures.publishable import as_published
from build_tools.source.document import read_markdown

UNITS, EARLIER = "units", "earlier"
Why = Literal["new", "here", "newer", "older", "other"]


@dataclass(frozen=True, slots=True)
class Placing:
    """Where the unit goes, below the content folder, and where what is there now goes first.

    `why` is new: no such unit is here; here: these very files are; newer: a later edition of the
    unit here; older: an earlier one; other: the same edition, or the same name, with other words.
    """

    why: Why
    goal: str
    edition_here: str | None = None
    moved: str | None = None
    """Where the unit that is here now goes; None where it stays or there is none."""


def placing_of(content: Path, pack: Pack) -> Placing:
    """What taking in `pack` would do in the bank at `content`. Nothing is written."""
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
    if theirs.get("publisher") != told.get("publisher") or edition is None:
        return Placing("other", kept, edition)
    if _number(pack.edition) > _number(edition):
        moved = _free(content, f"{pack.slug}-{edition}")
        return Placing("newer", f"{UNITS}/{pack.slug}", edition, moved)
    return Placing("older" if _number(pack.edition) < _number(edition) else "other", kept, edition)


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
        if path.is_file() and not hidden and not is_beside(name):
            found[name] = as_published(name, path.read_bytes())
    return found


def _told(folder: Path) -> Mapping[str, object]:
    try:
        return _fields((folder / "unit.md").read_bytes())
    except OSError:
        return {}


def _fields(raw: bytes) -> Mapping[str, object]:
    read = read_markdown("unit.md", raw)
    return {} if isinstance(read, list) else read.data


def _number(edition: str) -> tuple[int, ...]:
    return tuple(int(part) for part in edition.split(".")) if edition[:1].isdigit() else ()
