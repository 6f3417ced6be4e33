"""Taking in, all or nothing, also when it is killed half-way.

The unit is first written whole into a room of its own in the content folder. Then a journal says
which folders are renamed, and only then are they. Where a run was killed, the next one finishes
what a journal says, and clears away a room that has none, or one that this software did not write.
"""

from __future__ import annotations

import json
import re
import shutil
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from filelock import FileLock, Timeout

from build_tools.disk import sure_files
from build_tools.packs.taking_in.placing import EARLIER, UNITS, Placing

ROOM = ".taking-in"
LOCK = ".taking-in.lock"
_JOURNAL = "journal.json"
_STAGED = "unit"
_LOCK_SECONDS = 2.0
_MOST_JOURNAL = 4_000
"""Bytes of a journal: two steps need some hundred."""
_UNIT = r"[a-z0-9]+(?:-[a-z0-9]+)*"
_IN_UNITS = re.compile(rf"{UNITS}/{_UNIT}\Z")
_IN_EARLIER = re.compile(rf"{EARLIER}/{_UNIT}-[0-9]+\.[0-9]+\.[0-9]+(?:-[0-9]+)?\Z")

Steps = list[tuple[str, str]]
"""Which folder becomes which, below the content folder, in their order."""


class BusyError(Exception):
    """Another run is taking in a unit at this moment."""


class HalfwayError(Exception):
    """The disk refused after the journal was written: the next run finishes what it says."""


class OutsideError(Exception):
    """A folder that units go into lies outside the content folder; the text names it."""


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

    Raises OSError or OutsideError, and then everything is as it was, or HalfwayError.
    """
    room = content / ROOM
    steps: Steps = [(f"{ROOM}/{_STAGED}", plan.goal)]
    if plan.moved is not None:
        steps.insert(0, (plan.goal, plan.moved))
    _refuse_outside(content)
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
    """Do what a journal says is still to do, or clear away what has no journal of ours."""
    room = content / ROOM
    if room.is_symlink() or room.is_file():
        room.unlink()
    if not room.exists():
        return
    journal = room / _JOURNAL
    steps = _read(journal)
    if steps is not None:
        _refuse_outside(content)
        for source, goal in steps:
            _move(content / source, content / goal)
        journal.unlink()
    shutil.rmtree(room)
    sure_files.settle(content)


def _read(journal: Path) -> Steps | None:
    """The steps that the journal names; None where there is none, or none that we would write."""
    if journal.is_symlink() or not journal.is_file() or journal.stat().st_size > _MOST_JOURNAL:
        return None
    try:
        told = json.loads(journal.read_bytes())
        steps = [(str(source), str(goal)) for source, goal in told]
    except (ValueError, TypeError, RecursionError):
        return None
    return steps if _ours(steps) else None


def _ours(steps: Steps) -> bool:
    """Whether the unit goes from its room to its place, and what is there to the earlier ones."""
    if not 1 <= len(steps) <= 2:
        return False
    source, goal = steps[-1]
    if source != f"{ROOM}/{_STAGED}" or not (_IN_UNITS.match(goal) or _IN_EARLIER.match(goal)):
        return False
    if len(steps) == 1:
        return True
    before, kept = steps[0]
    return before == goal and bool(_IN_UNITS.match(before) and _IN_EARLIER.match(kept))


def _refuse_outside(content: Path) -> None:
    whole = content.resolve()
    for name in (UNITS, EARLIER):
        if not (content / name).resolve().is_relative_to(whole):
            raise OutsideError(f"{name} is a link that leads out of {content.as_posix()}")


def _move(source: Path, goal: Path) -> None:
    """Rename a folder once: a run after a killed one finds the goal there."""
    if source.is_dir() and not source.is_symlink() and not goal.exists():
        sure_files.make_folder(goal.parent)
        sure_files.patiently(lambda: source.rename(goal))
        sure_files.settle(goal.parent)
        sure_files.settle(source.parent)


def _stage(folder: Path, files: Mapping[str, bytes]) -> None:
    shutil.rmtree(folder.parent, ignore_errors=True)
    folder.mkdir(parents=True)
    for name, data in files.items():
        path = folder / name
        path.parent.mkdir(exist_ok=True)
        sure_files.write_down(path, data)
        sure_files.settle(path)
    sure_files.settle_all(folder.parent)
    # else the room, and with it the journal, could be gone after a power cut, and the moves not
    sure_files.settle(folder.parents[1])
