"""Readers of strangers' bytes, fuzzed by what of their code is reached: nothing falls or hangs.

atheris (libFuzzer for Python) does it; a quarter of a minute in all, three hours with `--thorough`.
"""

from __future__ import annotations

import importlib.util
import json
import re
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.fuzzing.fuzz_options import PLANTED, PLANTED_SECONDS, options
from tests.fuzzing.targets import TARGETS

MANY_SECONDS = 720
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


class Fuzzer:
    """The process from which each run is forked, our code loaded in it once."""

    def __init__(self, process: subprocess.Popen[str]) -> None:
        self._process = process

    def fuzzed(self, name: str, seconds: int, folder: Path, *, few: bool = False) -> Fuzzed:
        """Fuzz a target for so long, or with a few readings, in a process of its own."""
        said = folder / "said"
        assert self._process.stdin is not None
        assert self._process.stdout is not None
        asked = json.dumps([name, options(name, seconds, folder, few=few), str(said)])
        self._process.stdin.write(f"{asked}\n")
        self._process.stdin.flush()
        code = int(self._process.stdout.readline())
        ended = sorted((folder / "ended").iterdir())
        words = said.read_text(encoding="utf-8", errors="replace")
        return Fuzzed(code, words, tuple(path.read_bytes() for path in ended))


@pytest.fixture(scope="module")
def fuzzer(thorough: bool) -> Iterator[Fuzzer]:
    assert importlib.util.find_spec("atheris"), (
        "the fuzzer atheris is not installed: it is made for Linux on x86-64 and Python 3.11 to "
        "3.13; run the tests there, after `python3 build_tools test` has set up what they need"
    )
    command = [sys.executable, "-m", "tests.fuzzing.fuzz_once"]
    if thorough:
        command.append("--library")
    with subprocess.Popen(
        command,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        encoding="utf-8",
    ) as process:
        yield Fuzzer(process)


@pytest.mark.parametrize("name", TARGETS)
def test_nothing_falls_or_hangs(name: str, fuzzer: Fuzzer, tmp_path: Path, thorough: bool) -> None:
    run = fuzzer.fuzzed(name, MANY_SECONDS, tmp_path, few=not thorough)
    assert run.code == 0, (run.ended_on, run.said[-3000:])
    assert run.ended_on == ()
    assert run.reached > 50, run.said[-3000:]


@pytest.mark.parametrize("name", TARGETS)
def test_what_once_fell_stands(name: str) -> None:
    kept = FOUND / name.replace(" ", "-")
    for file in sorted(kept.iterdir()) if kept.is_dir() else ():
        TARGETS[name].read(file.read_bytes())


def test_a_planted_fault_is_found(fuzzer: Fuzzer, tmp_path: Path) -> None:
    run = fuzzer.fuzzed(PLANTED, PLANTED_SECONDS, tmp_path)
    assert run.code != 0
    assert [data[:4] for data in run.ended_on] == [b"fell"]
    assert "ZeroDivisionError" in run.said
