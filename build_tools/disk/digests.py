"""Digests of files by their names and bytes."""

from __future__ import annotations

import hashlib
import os
import time
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path

DOUBT_NANOSECONDS = 2_000_000_000
"""Some file systems keep times in steps of two seconds; younger files may change unseen."""

_Signs = tuple[int, int, int, int]
_known: dict[str, tuple[_Signs, str]] = {}


def size_and_times(status: os.stat_result) -> tuple[int, int, int]:
    """A file's size in bytes, and when it was written and last changed at all, in nanoseconds."""
    return status.st_size, status.st_mtime_ns, status.st_ctime_ns


def digest_of_file(path: Path) -> str:
    """The digest of the bytes of `path`, read now."""
    return hashlib.sha256(path.read_bytes()).hexdigest()


def digest_once(path: Path) -> str:
    """As `digest_of_file`; a file of this software is read again only once its times change.

    For a process that builds again and again, as `watch` does. Not for what authors write: where a
    system has no time that programs cannot set, another file may have the size and time of this.
    """
    status = path.stat()
    signs = (*size_and_times(status), status.st_ino)
    known = _known.get(str(path))
    if known is not None and known[0] == signs:
        return known[1]
    found = digest_of_file(path)
    if max(signs[1:3]) < time.time_ns() - DOUBT_NANOSECONDS:
        _known[str(path)] = signs, found
    return found


def digest_of_files(
    files: Iterable[Path], root: Path, digest: Callable[[Path], str] = digest_of_file
) -> str:
    """One digest of the names, below `root`, and the bytes of `files`."""
    found, above = hashlib.sha256(), f"{root}{os.sep}"
    for path in sorted(files, key=str):
        own = str(path)
        name = own[len(above) :].replace(os.sep, "/") if own.startswith(above) else path.name
        found.update(f"{name}\0{digest(path)}\n".encode())
    return found.hexdigest()


def files_below(folder: Path) -> Iterator[Path]:
    """Each file in `folder` and in the folders in it, but what Python keeps there for itself."""
    for inside, folders, names in os.walk(folder):
        folders[:] = [name for name in folders if name != "__pycache__"]
        yield from (Path(inside, name) for name in names)
