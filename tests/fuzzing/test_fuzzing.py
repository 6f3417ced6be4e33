"""Readers of strangers' bytes, fuzzed by what of their code is reached: nothing falls or hangs.

atheris (libFuzzer for Python) does it; half a minute in all, and two hours with `--thorough`.
"""

from __future__ import annotations

import importlib.util
import re
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.fuzzing.fuzz_options import PLANTED, PLANTED_SECONDS, options
from tests.fuzzing.targets import TARGETS

SECONDS, MANY_SECONDS = 2, 720
FOUND = Path(__file__).with_name("found")
"""What once fell or hung, by its target, so that it never does again."""


@dataclass(frozen=True, slots=True)
class Fuzzed:
    """How a run ended, what it said, and the bytes that it ended on."""

    code: int
    said: str
    ended_on: tuple[bytes, ...]

    @property
    def reached(self) -> int:
        """How many ways through the code were taken."""
        return max(map(int, re.findall(r"\bcov: (\d+)", self.said)), default=0)


@pytest.fixture(scope="module", autouse=True)
def _fuzzer() -> None:
    assert importlib.util.find_spec("atheris"), (
        "the fuzzer atheris is not installed: it is made for Linux on x86-64 and Python 3.11 to "
        "3.13; run the tests there, after `python3 build_tools test` has set up what they need"
    )


# A process that takes the place of another begins with that one's greatest memory, and the fuzzer
# counts it as its own. A shell is small, so what it starts begins with nothing of the tests'.
FROM_A_SMALL_PROCESS = ("/bin/sh", "-c", '"$@" & wait $!', "sh")


def fuzzed(name: str, seconds: int, folder: Path) -> Fuzzed:
    """Fuzz a target for so long, in a process of its own."""
    done = subprocess.run(
        [
            *FROM_A_SMALL_PROCESS,
            *(sys.executable, "-m", "tests.fuzzing.fuzz_once", name),
            *options(name, seconds, folder),
        ],
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        errors="replace",
        check=False,
    )
    ended = sorted((folder / "ended").iterdir())
    return Fuzzed(done.returncode, done.stdout, tuple(path.read_bytes() for path in ended))


@pytest.mark.parametrize("name", TARGETS)
def test_nothing_falls_or_hangs(name: str, tmp_path: Path, thorough: bool) -> None:
    run = fuzzed(name, MANY_SECONDS if thorough else SECONDS, tmp_path)
    assert run.code == 0, (run.ended_on, run.said[-3000:])
    assert run.ended_on == ()
    assert run.reached > 50, run.said[-3000:]


@pytest.mark.parametrize("name", TARGETS)
def test_what_once_fell_stands(name: str) -> None:
    kept = FOUND / name.replace(" ", "-")
    for file in sorted(kept.iterdir()) if kept.is_dir() else ():
        TARGETS[name].read(file.read_bytes())


def test_a_planted_fault_is_found(tmp_path: Path) -> None:
    run = fuzzed(PLANTED, PLANTED_SECONDS, tmp_path)
    assert run.code != 0
    assert [data[:4] for data in run.ended_on] == [b"fell"]
    assert "ZeroDivisionError" in run.said
