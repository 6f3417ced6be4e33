"""The workers of a check end with the check."""

from __future__ import annotations

import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from build_tools.checking.quick_check import FEW
from tests.support.banks import BASE_UNIT, ROOT, copy_base
from tests.support.processes import count_in_group, end_first, group, nothing_left_of, said

POOL = """
import os, sys, time
from concurrent.futures import ProcessPoolExecutor
from build_tools.lifeline.workers import end_with_parent

def work(_):
    print(os.getpid(), flush=True)
    time.sleep(float(sys.argv[1]))

with ProcessPoolExecutor(3, initializer=end_with_parent) as pool:
    list(pool.map(work, range(3)))
    print("done", flush=True)
    time.sleep(60)
"""


@pytest.mark.parametrize("number", [signal.SIGKILL, signal.SIGTERM])
@pytest.mark.parametrize("seconds", ["60", "0.1"], ids=["at work", "waiting for work"])
def test_workers_end_with_the_process_they_work_for(number: int, seconds: str) -> None:
    with group([sys.executable, "-c", POOL, seconds], ROOT) as first:
        for _ in range(3 if seconds == "60" else 4):
            said(first)
        end_first(first, number)
        assert nothing_left_of(first.pid, seconds=10)


def test_a_check_of_many_units_leaves_no_worker(tmp_path: Path) -> None:
    bank = copy_base(tmp_path)
    unit = bank / "units" / BASE_UNIT
    for number in range(FEW * 3):
        shutil.copytree(unit, unit.with_name(f"boats-{number}"))
    command = [sys.executable, "-P", "-m", "build_tools", "check", "--content", str(bank)]
    with group(command, ROOT) as first:
        seen = wait_for_workers(first)
        end_first(first, signal.SIGKILL)
        assert seen > 1
        assert nothing_left_of(first.pid, seconds=20)


def wait_for_workers(first: subprocess.Popen[str]) -> int:
    """How many processes the group has once it has more than one."""
    end = time.monotonic() + 30
    while time.monotonic() < end and first.poll() is None:
        if (count := count_in_group(first.pid)) > 1:
            return count
        time.sleep(0.01)
    return 0
