"""A folder changed in place, file by file, so that a killed run is finished by the next.

New files are made in a room beside the folder. Once all are there, a list of what has to go is
written into the room; from then on the change is decided, and whoever comes next finishes it. Each
file goes to its place in one step, so a reader has the old one or the new one.
"""

from __future__ import annotations

import json
import os
import shutil
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager, suppress
from pathlib import Path

from filelock import FileLock, Timeout

from build_tools.disk.scratch import LOCK, WITHIN, left_behind, scratch
from build_tools.disk.sure_files import patiently, write_whole

FRESH = "fresh"
_DECIDED = "decided.json"


@contextmanager
def changing(target: Path) -> Iterator[Path]:
    """Give a room for new files of `target`, to be made below `fresh` in it."""
    target.parent.mkdir(parents=True, exist_ok=True)
    finish_left(target)
    with scratch(target.name, beside=target.parent) as room:
        (room / FRESH).mkdir()
        yield room


def write_changed(files: Mapping[str, bytes], out: Path, fresh: Path) -> tuple[str, ...]:
    """Write below `fresh` the files that `out` has not, or not the same; gives their names."""
    changed = []
    for name, data in files.items():
        if _same(out / name, data):
            continue
        goal = fresh / name
        goal.parent.mkdir(parents=True, exist_ok=True)
        goal.write_bytes(data)
        changed.append(name)
    return tuple(changed)


def put(room: Path, target: Path, gone: Iterable[str]) -> None:
    """Put what is below `fresh` in the room into `target`, and take the files `gone` away.

    Where there is no folder `target` yet, it is there whole or not at all.
    """
    if not target.exists():
        patiently(lambda: (room / FRESH).replace(target))
        return
    write_whole(room / _DECIDED, json.dumps(sorted(gone)).encode())
    _finish(room, target)


def finish_left(target: Path) -> None:
    """Finish the changes of `target` that killed runs had decided on."""
    for decided in target.parent.glob(f"{left_behind(target.name)}*/{WITHIN}/{_DECIDED}"):
        room = decided.parent
        with suppress(Timeout, OSError), FileLock(room.parent / LOCK, timeout=0):
            _finish(room, target)


def _finish(room: Path, target: Path) -> None:
    gone = json.loads((room / _DECIDED).read_text(encoding="utf-8"))
    fresh = room / FRESH
    for folder, _, names in os.walk(fresh):
        goal = target / os.path.relpath(folder, fresh)
        if goal.is_symlink() or (goal.exists() and not goal.is_dir()):
            goal.unlink()
        goal.mkdir(parents=True, exist_ok=True)
        for name in names:
            _move(Path(folder, name), goal / name)
    for name in gone:
        # it may have lain in a folder where a file is now
        with suppress(FileNotFoundError, NotADirectoryError):
            (target / name).unlink()
    for parent in sorted({up for name in gone for up in Path(name).parents}, reverse=True):
        with suppress(OSError):
            # what still holds something stays
            (target / parent).rmdir()
    (room / _DECIDED).unlink()


def _move(source: Path, goal: Path) -> None:
    if goal.is_dir() and not goal.is_symlink():
        shutil.rmtree(goal)
    patiently(lambda: source.replace(goal))


def _same(path: Path, data: bytes) -> bool:
    try:
        plain = not path.is_symlink() and path.stat().st_size == len(data)
        return plain and path.read_bytes() == data
    except OSError:
        return False
