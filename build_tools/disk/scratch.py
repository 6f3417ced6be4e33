"""A folder for work in hand, which goes with it; what a killed run left is cleared by the next."""

from __future__ import annotations

import os
import shutil
import stat
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from filelock import FileLock, Timeout

_START = "dance-unit-bank-"
LOCK = ".in-use"
WITHIN = "within"


@contextmanager
def scratch(kind: str, beside: Path | None = None) -> Iterator[Path]:
    """Give an empty folder of this run's own, named after what it is for.

    It lies in the system's folder for such, or in the folder `beside`. Folders of the same kind
    whose run is over are removed first: the system lets go of a lock when its process ends.
    """
    start = left_behind(kind) if beside else f"{_START}{kind}-"
    place = Path(beside or tempfile.gettempdir())
    _clear(place, start)
    room = Path(tempfile.mkdtemp(prefix=start, dir=place))
    lock = FileLock(room / LOCK, timeout=1)
    try:
        with lock:
            inner = room / WITHIN
            inner.mkdir()
            yield inner
    finally:
        shutil.rmtree(room, ignore_errors=True)


def left_behind(kind: str) -> str:
    """How the name of a scratch folder beside something starts."""
    return f".{_START}{kind}-"


def _clear(place: Path, start: str) -> None:
    for room in place.glob(f"{start}*"):
        if not _ours(room) or not (room / LOCK).exists():
            continue
        try:
            with FileLock(room / LOCK, timeout=0):
                pass
        except (Timeout, OSError):
            continue
        shutil.rmtree(room, ignore_errors=True)


def _ours(room: Path) -> bool:
    """Whether it is a plain folder made by this user: others may write into the system's folder."""
    try:
        found = room.lstat()
    except OSError:
        return False
    mine = not hasattr(os, "getuid") or found.st_uid == os.getuid()
    return stat.S_ISDIR(found.st_mode) and mine
