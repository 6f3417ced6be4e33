"""Taking in, all or nothing, also when it is killed half-way.

The unit is first written whole into a room of its own in the content folder. Then a journal says
which folders are renamed, and only then are they. Where a run was killed, the next one finishes
what a journal says, and clears away a room that has none.
"""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from filelock import FileLock, Timeout

from build_tools.disk import sure_files
from build_tools.packs.taking_in.placing import Placing

ROOM = ".taking-in"
LOCK = ".taking-in.lock"
_JOURNAL = "journal.json"
_STAGED = "unit"
_LOCK_SECONDS = 2.0


class BusyError(Exception):
    """Another run is taking in a unit at this moment."""


class HalfwayError(Exception):
    """The disk refused after the journal was written: the next run finishes what it says."""


@contextmanager
def alone_in(content: Path) -> Iterator[None]:
    """Hold the content folder's lock; what a killed run left is finished or undone first."""
    try:
        with FileLock(content / LOCK, timeout=_LOCK_SECONDS):
            finish(content)
            yield
    except Timeout:
        raise BusyError from None


def take(content: Path, files: Mapping[str, bytes], plan: Placing) -> None:
    """Put `files` where `plan` says.

    Raises OSError, and then everything is as it was, or HalfwayError.
    """
    room = content / ROOM
    steps = [[f"{ROOM}/{_STAGED}", plan.goal]]
    if plan.moved is not None:
        steps.insert(0, [plan.goal, plan.moved])
    try:
        _stage(room / _STAGED, files)
        sure_files.write_whole(room / _JOURNAL, json.dumps(steps).encode())
    except OSError:
        shutil.rmtree(room, ignore_errors=True)
        raise
    try:
        finish(content)
    except OSError as error:
        raise HalfwayError(str(error)) from error


def finish(content: Path) -> None:
    """Do what a journal says is still to do, or clear away what has no journal."""
    room = content / ROOM
    journal = room / _JOURNAL
    if not room.exists():
        return
    if journal.is_file():
        for source, goal in json.loads(journal.read_bytes()):
            _move(content / source, content / goal)
        journal.unlink()
    shutil.rmtree(room)
    sure_files.settle(content)


def _move(source: Path, goal: Path) -> None:
    """Rename a folder once: a run after a killed one finds the goal there."""
    if source.exists() and not goal.exists():
        goal.parent.mkdir(exist_ok=True)
        sure_files.patiently(lambda: source.rename(goal))
        sure_files.settle(goal.parent)


def _stage(folder: Path, files: Mapping[str, bytes]) -> None:
    shutil.rmtree(folder.parent, ignore_errors=True)
    folder.mkdir(parents=True)
    for name, data in files.items():
        path = folder / name
        path.parent.mkdir(exist_ok=True)
        sure_files.write_down(path, data)
        sure_files.settle(path)
    for inside in (folder, folder.parent):
        sure_files.settle(inside)
