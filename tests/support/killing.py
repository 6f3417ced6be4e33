"""Processes that say each phase before they enter it, killed in the one that a test wants."""

from __future__ import annotations

import multiprocessing
import os
import runpy
import subprocess
import sys
import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import AbstractContextManager, contextmanager
from multiprocessing.connection import Connection
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]

MARK = "phase "
MORE_TRIES = 30
WHOLE = "whole"
"""The phase of a process that ended by itself before it could be killed."""


def says(phase: str) -> None:
    """In the process to be killed: say which phase begins, at once."""
    print(f"{MARK}{phase}", flush=True)


def saying(holder: Any, name: str, phase: Callable[..., str]) -> None:
    """In the process to be killed: say a phase before each call of `holder.name`.

    `phase` is given what the call is given; where it answers "", the phase before it goes on.
    """
    real = getattr(holder, name)

    def call(*given: Any, **options: Any) -> Any:
        if said := phase(*given, **options):
            says(said)
        return real(*given, **options)

    setattr(holder, name, call)


def slow_disk(seconds: float) -> None:
    """In the process to be killed: let each step of the disk take a moment, so that kills land."""
    for holder, name in ((os, "fsync"), (Path, "replace"), (Path, "rename"), (Path, "unlink")):
        real = getattr(holder, name)

        def slowed(*given: Any, real: Callable[..., Any] = real, **options: Any) -> Any:
            time.sleep(seconds)
            done = real(*given, **options)
            time.sleep(seconds)
            return done

        setattr(holder, name, slowed)


class Forked:
    """A module that runs as a program in a process of its own, forked from one that has loaded
    already what most of them load (`loaded.py`): so a kill waits for no loading.
    """

    def __init__(self, module: str, arguments: Sequence[str]) -> None:
        context = multiprocessing.get_context("forkserver")
        heard, told = context.Pipe(duplex=False)
        self._process = context.Process(target=_as_program, args=(module, arguments, told))
        with told:
            self._process.start()
        with heard:
            self.stdout = os.fdopen(os.dup(heard.fileno()), encoding="utf-8")

    def kill(self) -> None:
        """End it at once, whatever it is doing."""
        self._process.kill()

    def wait(self) -> int:
        """Wait until it has ended; gives its exit code, less than 0 where it was killed."""
        self._process.join()
        code = self._process.exitcode
        assert code is not None
        return code


def _as_program(module: str, arguments: Sequence[str], told: Connection) -> None:
    os.dup2(told.fileno(), 1)
    told.close()
    sys.stdout = os.fdopen(1, "w", encoding="utf-8", closefd=False)
    sys.argv = [module, *arguments]
    os.chdir(ROOT)
    runpy.run_module(module, run_name="__main__")


Program = Forked | subprocess.Popen[str]


def forked(module: str, *arguments: str) -> AbstractContextManager[Program]:
    """The same as `started`, much sooner: for what starts no other processes of its own."""
    if "forkserver" in multiprocessing.get_all_start_methods():
        return _until_over(Forked(module, arguments))
    return started(module, *arguments)


def started(module: str, *arguments: str) -> AbstractContextManager[Program]:
    """The module `module` of the tests as a process of its own, which this kills at the end."""
    command = [sys.executable, "-m", module, *arguments]
    return _until_over(subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, text=True))


@contextmanager
def _until_over(process: Program) -> Iterator[Program]:
    try:
        yield process
    finally:
        process.kill()
        process.wait()
        assert process.stdout is not None
        process.stdout.close()


def killed_in(process: Program, phase: str, after: float) -> str:
    """Kill the process `after` seconds from when it says `phase`.

    Gives the phase that the kill landed in: the last that the process said, since it says each
    before it enters it.
    """
    assert process.stdout is not None
    landed = ""
    for line in process.stdout:
        landed = _phase_of(line) or landed
        if landed == phase:
            time.sleep(after)
            process.kill()
            break
    for line in process.stdout:
        landed = _phase_of(line) or landed
    return WHOLE if process.wait() == 0 else landed


def _phase_of(line: str) -> str:
    return line.removeprefix(MARK).strip() if line.startswith(MARK) else ""


def wanted_phases(phases: Sequence[str], rounds: int, landed: Mapping[str, int]) -> Iterator[str]:
    """Which phase to kill in next: each `rounds` times, then again those that no kill has hit.

    `landed` is kept up to date by the caller: how many kills landed in each phase.
    """
    yield from (phase for _ in range(rounds) for phase in phases)
    for _ in range(MORE_TRIES):
        if missed := [phase for phase in phases if not landed[phase]]:
            yield missed[0]
