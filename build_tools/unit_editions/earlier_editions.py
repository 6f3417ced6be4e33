"""The edition before a unit's own, kept in the bank as a folder or a pack, and what changed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from build_tools.comparing.change import WrittenUnit
from build_tools.comparing.comparison import Comparison, SinceLast, compared
from build_tools.comparing.edition_number import newer
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.walled import Refused, walled
from build_tools.packs.taking_in.placing import EARLIER
from build_tools.problem import Problem
from build_tools.unit_editions.unit_texts import text_of_folder, text_of_pack

_KEPT = re.compile(r"-[0-9]+\.[0-9]+\.[0-9]+(-[0-9]+)?(\.zip)?\Z")


def since_last_edition(content: Path, slug: str) -> SinceLast:
    """What changed in the unit `slug` since the newest edition kept of it, its publisher's own."""
    now = text_of_folder(content / "units" / slug)
    if isinstance(now, list):
        return SinceLast(None, None, ())
    best: tuple[str, Comparison] | None = None
    unreadable = []
    for path in kept_editions(content, slug):
        before = _read(path)
        if isinstance(before, str):
            unreadable.append(f"{EARLIER}/{path.name}: {before}")
            continue
        comparison = _of_same_unit(before, now)
        if comparison and (best is None or not newer(best[1].before, comparison.before)):
            best = f"{EARLIER}/{path.name}", comparison
    place, comparison = best or (None, None)
    return SinceLast(place, comparison, tuple(unreadable))


def kept_editions(content: Path, slug: str) -> Iterator[Path]:
    """The folders and packs in which earlier editions of the unit `slug` may be kept."""
    folder = content / EARLIER
    if folder.is_dir():
        for path in sorted(folder.iterdir()):
            if path.name.startswith(slug) and _KEPT.match(path.name, len(slug)):
                yield path


def _read(path: Path) -> WrittenUnit | str:
    """The unit at `path`, or why there is none, in a few words."""
    found = text_of_folder(path) if path.is_dir() else walled(_text_of_pack, path)
    if isinstance(found, Refused):
        return found.why
    if isinstance(found, list):
        first = found[0]
        return f"{first.file.rpartition('/')[2]}, line {first.line}: {first.message}"
    return found


def _text_of_pack(file: Path) -> WrittenUnit | list[Problem] | Refused:
    try:
        return text_of_pack(file)
    except RefusedError as refused:
        return Refused(str(refused))


def _of_same_unit(before: WrittenUnit, now: WrittenUnit) -> Comparison | None:
    """The two side by side, where the kept one is of the same publisher, not later, and differs."""
    comparison = compared(before, now)
    same = before.fields.get("publisher") == now.fields.get("publisher")
    later = newer(comparison.before, comparison.after)
    if not same or later:
        return None
    told = bool(comparison.changes) or comparison.before != comparison.after
    return comparison if told else None
