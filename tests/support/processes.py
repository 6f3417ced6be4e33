"""Processes that tests start and end, and a look at what is left of them."""

from __future__ import annotations

import os
import signal
import subprocess
import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager, suppress
from pathlib import Path

PATIENCE_SECONDS = 60.0


@contextmanager
def group(
    command: list[str], cwd: Path, environment: Mapping[str, str] | None = None
) -> Iterator[subprocess.Popen[str]]:
    """A command in a process group of its own, all of which is ended with the block."""
    first = subprocess.Popen(
        command,
        cwd=cwd,
        env=dict(environment) if environment is not None else None,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        encoding="utf-8",
        start_new_session=True,
    )
    try:
        yield first
    finally:
        with suppress(ProcessLookupError):
            os.killpg(first.pid, signal.SIGKILL)
        first.wait()
        for stream in (first.stdin, first.stdout):
            if stream is not None:
                stream.close()


def said(process: subprocess.Popen[str]) -> str:
    """The next line that the process says."""
    assert process.stdout is not None
    return process.stdout.readline().rstrip("\n")


def end_first(first: subprocess.Popen[str], number: int) -> int:
    """End the first process of a group alone, with a signal; gives its exit code."""
    first.send_signal(number)
    return first.wait(PATIENCE_SECONDS)


def nothing_left_of(group_id: int, seconds: float = PATIENCE_SECONDS) -> bool:
    """Whether every process of a group ends within some seconds."""
    return becomes_true(lambda: count_in_group(group_id) == 0, seconds)


def is_gone(pid: int, seconds: float = PATIENCE_SECONDS) -> bool:
    """Whether a process ends within some seconds."""
    return becomes_true(lambda: pid not in _running(), seconds)


def count_in_group(group_id: int) -> int:
    """How many processes of a group run."""
    return list(_running().values()).count(group_id)


def _running() -> dict[int, int]:
    """The group of every process that runs: not of those that ended and wait to be counted.

    Linux's own list says so, elsewhere `ps`, which a bare Debian lacks.
    """
    found = {}
    for stat in Path("/proc").glob("[0-9]*/stat"):
        with suppress(OSError):
            state, _, group_id = stat.read_text().rpartition(")")[2].split()[:3]
            if state != "Z":
                found[int(stat.parent.name)] = int(group_id)
    if not found:
        line = ["ps", "-A", "-o", "pid=,pgid=,state="]
        listed = subprocess.run(line, capture_output=True, text=True, check=True).stdout
        rows = [row.split() for row in listed.splitlines()]
        found = {int(pid): int(group_id) for pid, group_id, state in rows if state[0] != "Z"}
    return found


def becomes_true(ask: Callable[[], bool], seconds: float) -> bool:
    """Whether what is asked comes true within some seconds."""
    end = time.monotonic() + seconds
    while not ask():
        if time.monotonic() > end:
            return False
        time.sleep(0.01)
    return True
