"""A program that we run ends with us, whatever ends us; and nothing of it is left after it."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from build_tools.lifeline import programs
from tests.support.banks import ROOT
from tests.support.processes import end_first, group, is_gone, said

FIRST = """
import subprocess, sys
from build_tools.lifeline import programs
programs.GRACE_SECONDS = 0.5
programs.run([sys.executable, "-c", sys.argv[1]])
"""
WORK = "import os, time; print(os.getpid(), flush=True); time.sleep(60)"
DEAF = f"import signal; signal.signal(signal.SIGTERM, signal.SIG_IGN); {WORK}"


SIGNALS = (signal.SIGKILL, signal.SIGTERM, signal.SIGHUP, signal.SIGINT)


@pytest.mark.parametrize(
    ("number", "work"),
    [
        pytest.param(
            number,
            work,
            id=f"{number.name} {name}",
            # in the usual run they take turns
            marks=pytest.mark.thorough if (n + m) % 2 else (),
        )
        for n, number in enumerate(SIGNALS)
        for m, (name, work) in enumerate((("usual", WORK), ("deaf", DEAF)))
    ],
)
def test_the_program_ends_with_the_one_that_ran_it(number: int, work: str) -> None:
    with group([sys.executable, "-c", FIRST, work], ROOT) as first:
        program = int(said(first))
        assert not is_gone(program, seconds=0.1)
        assert end_first(first, number) != 0
        assert is_gone(program, seconds=20)


def test_a_program_may_end_in_order(tmp_path: Path) -> None:
    """It is asked before it is made to."""
    tidy = (
        "import signal, sys; from pathlib import Path\n"
        "def end(*_):\n Path(sys.argv[1]).touch(); sys.exit()\n"
        f"signal.signal(signal.SIGTERM, end); {WORK}"
    )
    cleared = tmp_path / "cleared"
    first_code = FIRST.replace("sys.argv[1]]", "sys.argv[1], sys.argv[2]]")
    with group([sys.executable, "-c", first_code, tidy, str(cleared)], ROOT) as first:
        program = int(said(first))
        end_first(first, signal.SIGKILL)
        assert is_gone(program)
    assert cleared.exists()


def test_it_gives_what_the_program_gave() -> None:
    done = programs.run(
        [sys.executable, "-c", "import sys; print(input()); sys.exit(7)"],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        encoding="utf-8",
    )
    assert done.returncode == 1
    assert "EOFError" in done.stderr
    done = programs.run([sys.executable, "-c", "raise SystemExit(7)"])
    assert (done.returncode, done.stdout) == (7, None)


def test_a_program_that_takes_too_long_is_ended() -> None:
    began = time.monotonic()
    with pytest.raises(subprocess.TimeoutExpired):
        programs.run([sys.executable, "-c", WORK], stdout=subprocess.DEVNULL, timeout=0.5)
    assert time.monotonic() - began < 20


def test_a_program_that_is_not_there_is_said(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError):
        programs.run([str(tmp_path / "missing")])


def test_the_guard_ends_with_the_program_and_ends_nothing_else(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    guards: list[subprocess.Popen[bytes]] = []
    start = subprocess.Popen

    def noted(command: list[str], **options: object) -> subprocess.Popen[bytes]:
        process: subprocess.Popen[bytes] = start(command, **options)  # type: ignore[call-overload]
        if programs._GUARD in command:
            guards.append(process)
        return process

    monkeypatch.setattr(subprocess, "Popen", noted)
    bystander = start([sys.executable, "-c", "import time; time.sleep(60)"])
    try:
        assert programs.run([sys.executable, "-c", "pass"]).returncode == 0
        assert [guard.poll() for guard in guards] == [0]
        assert bystander.poll() is None
    finally:
        bystander.kill()
        bystander.wait()


def test_windows_needs_no_guard(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(os, "name", "nt")
    with programs._guarded() as guard:
        assert guard is None
