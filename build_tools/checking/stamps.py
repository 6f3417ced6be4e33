"""What the files of a unit are stamped with, to see soon whether they are as they were."""

from __future__ import annotations

import os
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path
from typing import Any

from build_tools.disk.digests import digest_of_file, size_and_times
from build_tools.disk.stray_files import is_stray
from build_tools.source.media_files import SHARED

SHARES = f"../../{SHARED}/"
"""Stands before the names of files that units share, and alone for a unit that names any."""

Stamp = dict[str, list[Any]]
"""Each file of a unit: its size in bytes, its two times in nanoseconds, its SHA-256."""


def stamp_of(files: Mapping[str, os.DirEntry[str]]) -> Stamp:
    """The stamp of `files`, each read for its digest."""
    return {
        name: [*size_and_times(entry.stat()), _digest_if_read(entry)]
        for name, entry in files.items()
    }


def files_of(folder: Path) -> dict[str, os.DirEntry[str]]:
    """The files of the unit in `folder`, by their names below it."""
    found: dict[str, os.DirEntry[str]] = {}
    for inner in ("", "media"):
        found |= {f"{inner}/{e.name}" if inner else e.name: e for e in _entries(folder / inner)}
    return found


def shared_files_of(folder: Path) -> dict[str, os.DirEntry[str]]:
    """The files that units share, for the unit in `folder`."""
    return {f"{SHARES}{e.name}": e for e in _entries(folder.parent.parent / SHARED)}


def _entries(folder: Path) -> list[os.DirEntry[str]]:
    """The files in a folder but for strays; none where it cannot be opened."""
    with suppress(OSError), os.scandir(folder) as entries:
        return [e for e in entries if e.is_file() and not is_stray(e.name)]
    return []


def _digest_if_read(entry: os.DirEntry[str]) -> str:
    """The SHA-256 of a file; empty where it cannot be read."""
    try:
        return digest_of_file(Path(entry.path))
    except OSError:
        return ""


def unchanged(folder: Path, old: Stamp, trusted: int) -> Stamp | None:
    """The stamp of `folder` now if its files hold what they held, else None."""
    files = files_of(folder)
    stamp: Stamp = {}
    if SHARES in old:
        files |= shared_files_of(folder)
        stamp[SHARES] = old[SHARES]
    if {*files, *stamp} != set(old):
        return None
    for name, entry in files.items():
        size, *times, digest = old[name]
        now_size, *now_times = size_and_times(entry.stat())
        if now_size != size:
            return None
        if (now_times != times or max(now_times) > trusted) and _digest_if_read(entry) != digest:
            return None
        stamp[name] = [now_size, *now_times, digest]
    return stamp
