"""How long `check` takes on a large bank, against PyYAML's C loader alone; one run, both timed.

Also how long it takes when one unit of the bank has changed since the last check.
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


@dataclass(frozen=True, slots=True)
class Run:
    """One command: wall and core seconds, and the largest process in MiB."""

    wall: float
    cores: float
    peak: float


def timed(command: list[str]) -> Run:
    """Run `command` and measure it with all its children."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    start = time.perf_counter()
    done = subprocess.run(command, cwd=PROJECT, stdout=subprocess.PIPE, text=True, check=False)
    wall = time.perf_counter() - start
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    if done.returncode not in (0, 1):
        raise SystemExit(f"{' '.join(command)} ended with {done.returncode}")
    print(f"    {done.stdout.strip().splitlines()[-1]}")
    cores = (after.ru_utime + after.ru_stime) - (before.ru_utime + before.ru_stime)
    return Run(wall, cores, after.ru_maxrss / 1024)


def show(name: str, run: Run) -> None:
    print(f"{name}: {run.wall:.2f} s wall, {run.cores:.2f} core-seconds, {run.peak:.0f} MiB peak")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--units", type=int, default=1500)
    units: int = parser.parse_args().units
    with tempfile.TemporaryDirectory(prefix="bank-") as folder:
        bank = Path(folder) / "content"
        files = make_bank(bank, units)
        print(f"{units:,} units, {files:,} files, {os.cpu_count()} cores")
        peer_command = [sys.executable, str(Path(__file__).with_name("yaml_alone.py")), str(bank)]
        ours_command = [sys.executable, "-m", "build_tools", "check", "--content", str(bank)]
        peer = timed(peer_command)
        ours = timed(ours_command)
        lesson = bank / "units" / "rock-pool-00000" / "lesson-1.md"
        text = lesson.read_text(encoding="utf-8")
        lesson.write_text(text.replace("minutes: 45", "minutes: 46", 1), encoding="utf-8")
        again = timed(ours_command)
    show("PyYAML's C loader alone, one core", peer)
    show("check, every core", ours)
    show("check again, one unit changed", again)
    print(f"check / loader: {ours.wall / peer.wall:.2f} of its wall time")


if __name__ == "__main__":
    main()
