"""Work on what strangers send, done by a process of its own that can only use so much.

Whatever the work meets, its caller goes on: it gets an answer, or is told which limit was hit. The
limits are the system's own: setrlimit (POSIX.1-2017, and RLIMIT_DATA as Linux has it), and a job
object on Windows.
"""

from __future__ import annotations

import contextlib
import errno
import multiprocessing
import os
import pickle
import signal
import sys
import tempfile
import threading
import time
import traceback
from dataclasses import dataclass
from multiprocessing.connection import wait
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal, TypeVar

from build_tools.lifeline.windows_job import OUT_OF_QUOTA, limit_this_process
from build_tools.lifeline.workers import end_with_parent

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from multiprocessing.connection import Connection

Answer = TypeVar("Answer")
Limit = Literal["time", "memory", "disk", "words"]

PROCESSOR_SECONDS = 10
"""Of work, on a computer whose pace is the usual one; more on a slower one. To load the software,
check the bank's longest unit and draw its pages takes three of them, four on a busy machine."""
USUAL_PACE = 0.0083
"""Processor seconds of `_pace` on the virtual AMD EPYC where taking in was measured."""
SLOWEST = 8.0
"""So many times slower a computer may be and still get the time for the same work."""
WAITING_SECONDS = 120.0
"""Until work is ended that does not use the processor, or seldom gets it."""
MEMORY = 150 * 2**20
"""Bytes that the process may have beside the program's own text. With that, and with the process
that waits, it stays below 200 MiB."""
DISK = 100_000_000
"""Bytes of all files in its room."""
MOST_ANSWER = 16_000_000
"""Bytes of what it gives back."""
_LONGEST_FOLDER = 103 - 32
_LOOK_SECONDS = 0.02
_OVER_MEMORY, _OVER_DISK = 81, 82


class WallError(Exception):
    """The work needs more of something than it may have."""

    def __init__(self, limit: Limit) -> None:
        super().__init__(limit)
        self.limit = limit


class FellError(Exception):
    """The work ended by a fault of its own; the text is its traceback."""


@dataclass(frozen=True, slots=True)
class _Fell:
    told: str


def within_walls(
    work: Callable[..., Answer],
    *given: Any,
    room: Path,
    seconds: int = PROCESSOR_SECONDS,
    often: bool = False,
) -> Answer:
    """What `work(*given)` gives, done by another process whose temporary files lie in `room`.

    `work` is a function of a module; `seconds` are the processor's. Where it is done `often`, what
    it needs is loaded once for all, by the process that the others are forked from. Raises
    WallError where a limit is hit, and FellError for whatever `work` raises.
    """
    if sys.platform == "win32":
        context = multiprocessing.get_context("spawn")
    else:
        context = multiprocessing.get_context("forkserver")
        if often:
            context.set_forkserver_preload([work.__module__])
    here, there = context.Pipe(duplex=False)
    told_it = (there, str(room), seconds, work, given)
    process = context.Process(target=_work, args=told_it, daemon=True)
    with _short_addresses():
        process.start()
    there.close()
    try:
        told = _told(here, process.sentinel, room)
        if told is None:
            process.join()
            raise _ended(process.exitcode)
    finally:
        process.kill()
        process.join()
        here.close()
    found = pickle.loads(told)
    if isinstance(found, _Fell):
        raise FellError(found.told)
    return found  # type: ignore[no-any-return]


def _told(here: Connection, ended: int, room: Path) -> bytes | None:
    """What the process says; None where it ended without a word."""
    last = time.monotonic() + WAITING_SECONDS
    while True:
        ready = wait([here, ended], _LOOK_SECONDS)
        if here in ready:
            try:
                return here.recv_bytes(MOST_ANSWER)
            except EOFError:
                return None
            except OSError:
                raise WallError("words") from None
        if ready:
            return None
        if _bytes_in(room) > DISK:
            raise WallError("disk")
        if time.monotonic() > last:
            raise WallError("time")


def _ended(code: int | None) -> WallError | FellError:
    if code in (_OVER_MEMORY, -9):  # the second where the system itself ran out of it
        return WallError("memory")
    if code == _OVER_DISK:
        return WallError("disk")
    if code in (OUT_OF_QUOTA, -getattr(signal, "SIGXCPU", 24)):
        return WallError("time")
    return FellError(f"the process ended with {code}")


def _bytes_in(folder: Path) -> int:
    """The bytes of all files below a folder, whatever is done there at this moment."""
    found, folders = 0, [str(folder)]
    while folders:
        with contextlib.suppress(OSError), os.scandir(folders.pop()) as entries:
            for entry in entries:
                if entry.is_dir(follow_symlinks=False):
                    folders.append(entry.path)
                    continue
                with contextlib.suppress(OSError):
                    found += entry.stat(follow_symlinks=False).st_size
    return found


@contextlib.contextmanager
def _short_addresses() -> Iterator[None]:
    """Where temporary files lie deep down, sockets are made in the system's own folder.

    The process that others are forked from is spoken to by a socket, whose address may have 103
    letters (macOS; 107 on Linux) and ends on 32 that Python makes up.
    """
    before = tempfile.tempdir
    if sys.platform != "win32" and len(os.fsencode(tempfile.gettempdir())) > _LONGEST_FOLDER:
        tempfile.tempdir = "/tmp"
    try:
        yield
    finally:
        tempfile.tempdir = before


def _work(
    there: Connection,
    room: str,
    seconds: int,
    work: Callable[..., Any],
    given: tuple[Any, ...],
) -> None:
    """What the other process does from its start to its end."""
    end_with_parent()
    tempfile.tempdir = room
    _limit(seconds * _slowness())
    try:
        told = pickle.dumps(work(*given))
    except MemoryError:
        os._exit(_OVER_MEMORY)
    except Exception as fault:  # noqa: BLE001 - nothing that a stranger sends may end more than this
        if isinstance(fault, OSError) and fault.errno == errno.EFBIG:
            os._exit(_OVER_DISK)
        told = pickle.dumps(_Fell(traceback.format_exc()))
    there.send_bytes(told)


def _limit(seconds: float) -> None:
    if sys.platform == "win32":
        limit_this_process(seconds, MEMORY)
        return
    import resource

    limits = [
        (resource.RLIMIT_CPU, int(seconds)),
        (resource.RLIMIT_FSIZE, DISK),
        (resource.RLIMIT_CORE, 0),
    ]
    if sys.platform == "linux":
        limits.append((resource.RLIMIT_DATA, MEMORY))
    else:
        # Other systems have such a limit and do not keep to it.
        threading.Thread(target=_watch_memory, daemon=True).start()
    for kind, most in limits:
        _, hard = resource.getrlimit(kind)
        least = most if hard == resource.RLIM_INFINITY else min(most, hard)
        resource.setrlimit(kind, (least, hard))


def _watch_memory() -> None:
    """End this process when it has ever had too much; macOS counts bytes, others kilobytes."""
    if sys.platform == "win32":
        return
    import resource

    unit = 1 if sys.platform == "darwin" else 1024
    while resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * unit < MEMORY:
        time.sleep(_LOOK_SECONDS)
    os._exit(_OVER_MEMORY)


def _slowness() -> float:
    """How many times slower than usual this computer is, 1 where it is as quick or quicker."""
    return min(max(1.0, min(_pace() for _ in range(3)) / USUAL_PACE), SLOWEST)


def _pace() -> float:
    """Processor seconds of a small piece of work that is always the same."""
    start, mixed = time.process_time(), 0
    for number in range(100_000):
        mixed ^= number * 3
    return time.process_time() - start
