"""Files that are either written whole or not at all, on disks that others read from."""

from __future__ import annotations

import errno
import os
import time
from collections.abc import Callable
from pathlib import Path

PART = ".part"
"""The end of the name of what is not finished."""
_FAILS = {errno.ENOSPC, errno.EIO, errno.EROFS}
_TRIES = 40
_WAIT = 0.1


def write_whole(path: Path, data: bytes) -> None:
    """Put `data` at `path` in one step: a reader sees the old file or the new one."""
    part = path.with_name(f".{path.name}{PART}")
    # What a killed run left, or a link that somebody laid there, goes; it is never written through.
    part.unlink(missing_ok=True)
    try:
        write_down(part, data)
        settle(part)
        patiently(lambda: part.replace(path))
    except OSError:
        part.unlink(missing_ok=True)
        raise
    settle(path.parent)


def write_down(path: Path, data: bytes) -> None:
    """Write `data` at `path`, where nothing is yet; it is sure once `settle` was called."""
    with path.open("xb") as file:
        file.write(data)


def make_folder(path: Path) -> None:
    """Make a folder, unless it is there, whose name the disk has when this comes back."""
    if not path.is_dir():
        path.mkdir(exist_ok=True)
        settle(path.parent)


def settle_all(folder: Path) -> None:
    """Wait until the disk has the names in a folder and in every folder below it."""
    for path in (*(path for path in folder.rglob("*") if path.is_dir()), folder):
        settle(path)


def settle(path: Path) -> None:
    """Wait until the disk has a file's bytes, or the names in a folder."""
    if os.name == "nt" and path.is_dir():
        return
    handle = os.open(path, os.O_RDONLY if path.is_dir() else os.O_RDWR)
    try:
        os.fsync(handle)
    except OSError as error:
        # Some network file systems have no such call for folders; a disk that fails says so.
        if error.errno in _FAILS or not path.is_dir():
            raise
    finally:
        os.close(handle)


def patiently(work: Callable[[], object]) -> None:
    """Do `work`, trying for four seconds: Windows refuses while a reader holds the file."""
    for left in reversed(range(_TRIES)):
        try:
            work()
        except PermissionError:
            if os.name != "nt" or not left:
                raise
            time.sleep(_WAIT)
        else:
            return
