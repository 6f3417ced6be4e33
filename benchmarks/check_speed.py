"""How long `check` takes on a large bank, against PyYAML's C loader alone; one run, both timed.

Also how long it takes when one unit of the bank has changed since the last check. Python keeps
its compiled modules, as it does for everybody, in a folder of this run.
"""

from __future__ import annotations

import argparse
import os
import resource
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path

from make_bank import PROJECT, make_bank

STARTERS = 2
"""Processes beside one for each core: the one that starts in `.venv`, and the one that gathers."""


@dataclass(frozen=True, slots=True)
class Run:
    """One command: wall and core seconds, and the largest process in MiB."""

    wall: float
    cores: float
    peak: float


def timed(command: list[str], compiled: Path) -> Run:
    """Run `command` and measure it with all its children; `compiled` is for compiled modules."""
    environment = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    environment["PYTHONPYCACHEPREFIX"] = str(compiled)
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    start = time.perf_counter()
    done = subprocess.run(
        command, cwd=PROJECT, env=environment, stdout=subprocess.PIPE, text=True, check=False
    )
    wall = time.perf_counter() - start
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    if done.returncode not in (0, 1):
        raise SystemExit(f"{' '.join(command)} ended with {done.returncode}")
    last = (done.stdout.strip().splitlines() or ["done"])[-1]
    print(f"    {last}")
    cores = (after.ru_utime + after.ru_stime) - (before.ru_utime + before.ru_stime)
    return Run(wall, cores, after.ru_maxrss / 1024)


def show(name: str, run: Run) -> None:
    print(
        f"{name}: {run.wall:.2f} s wall, {run.cores:.2f} core-seconds, "
        f"{run.peak:.0f} MiB in the largest process"
    )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--units", type=int, default=1500)
    units: int = parser.parse_args().units
    with tempfile.TemporaryDirectory(prefix="bank-") as folder:
        bank = Path(folder) / "content"
        made = make_bank(bank, units)
        print(f"{units:,} units, {made.files:,} files, {os.cpu_count()} cores")
        print(f"{made.repeated:.0%} of the long lines of a unit stand in the one before too")
        peer_command = [sys.executable, str(Path(__file__).with_name("yaml_alone.py")), str(bank)]
        ours_command = [sys.executable, "-m", "build_tools", "check", "--content", str(bank)]
        compiled = Path(folder) / "compiled"
        peer = timed(peer_command, compiled)
        ours = timed(ours_command, compiled)
        lesson = bank / "units" / "rock-pool-00000" / "lesson-1.md"
        text = lesson.read_text(encoding="utf-8")
        lesson.write_text(text.replace("minutes: 45", "minutes: 46", 1), encoding="utf-8")
        again = timed(ours_command, compiled)
    show("PyYAML's C loader alone, one core", peer)
    show("check, every core", ours)
    show("check again, one unit changed", again)
    print(
        f"check / loader: {ours.wall / peer.wall:.2f} of its wall time, "
        f"{ours.cores / peer.cores:.2f} of its core-seconds"
    )
    processes = (os.cpu_count() or 1) + STARTERS
    print(f"memory: {processes} processes, {processes * ours.peak:.0f} MiB at most in all")


if __name__ == "__main__":
    main()
