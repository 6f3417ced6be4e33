"""A package of the system is asked about at a terminal; where nobody sits, it is told and done."""

from __future__ import annotations

import os
import pty
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from build_tools.__main__ import INSIDE
from tests.support.banks import ROOT

STARTS = """
import sys
from pathlib import Path
from build_tools import __main__ as starter
starter.ROOT = Path(sys.argv[1])
starter.can_make_venvs = lambda: False
starter.can_install = lambda: True
sys.exit(starter.main(["check"]))
"""
FAKE = """#!/bin/sh
echo "$DEBIAN_FRONTEND: $*" >> "$LOG"
"""
BY_HAND = "apt-get install --no-install-recommends python3-venv"
INSTALLED = [
    "noninteractive: -qq update",
    "noninteractive: -qq install --yes --no-install-recommends python3-venv",
]


@dataclass(frozen=True, slots=True)
class Machine:
    """A bare checkout on a machine whose `apt-get` only notes what it was asked."""

    root: Path
    log: Path
    environment: dict[str, str]

    @property
    def command(self) -> list[str]:
        return [sys.executable, "-c", STARTS, str(self.root)]

    def installed(self) -> list[str]:
        return self.log.read_text().splitlines() if self.log.exists() else []


@pytest.fixture
def machine(tmp_path: Path) -> Machine:
    root, tools, log = tmp_path / "checkout", tmp_path / "bin", tmp_path / "log"
    for folder in (root, tools):
        folder.mkdir()
    for name in ("requirements.lock", "pyproject.toml"):
        (root / name).write_text("", encoding="utf-8")
    (tools / "apt-get").write_text(FAKE, encoding="utf-8")
    (tools / "apt-get").chmod(0o755)
    path = f"{tools}{os.pathsep}{os.environ['PATH']}"
    dropped = {INSIDE, "CI", "DEBIAN_FRONTEND"}
    kept = {name: value for name, value in os.environ.items() if name not in dropped}
    more = {"PATH": path, "LOG": str(log), "PYTHONPATH": str(ROOT)}
    return Machine(root, log, kept | more)


def at_a_terminal(machine: Machine, answer: bytes, **more: str) -> tuple[int, str]:
    """The exit code, and all that stood on the terminal of somebody who types `answer`."""
    ours, theirs = pty.openpty()
    with subprocess.Popen(
        machine.command, env=machine.environment | more, stdin=theirs, stdout=theirs, stderr=theirs
    ) as process:
        os.close(theirs)
        os.write(ours, answer)
        said = b""
        while True:
            try:
                said += os.read(ours, 4096)
            # Linux ends a terminal that nobody holds any longer with a fault.
            except OSError:
                break
    os.close(ours)
    return process.returncode, said.decode()


@pytest.mark.parametrize("answer", [b"no\n", b"\n", b"n\n", b"perhaps\n", b"\x04"])
def test_whoever_does_not_say_yes_gets_the_command_to_type(machine: Machine, answer: bytes) -> None:
    code, said = at_a_terminal(machine, answer)
    assert code == 1
    assert "needs Debian's package python3-venv" in said
    assert "Type yes or no" in said
    assert f"nothing was installed; run `{BY_HAND}`, then this again" in said
    assert machine.installed() == []


@pytest.mark.parametrize("answer", [b"yes\n", b"Y\n"])
def test_whoever_says_yes_gets_it_installed(machine: Machine, answer: bytes) -> None:
    _, said = at_a_terminal(machine, answer)
    assert "Type yes or no" in said
    assert machine.installed() == INSTALLED


def test_where_nobody_can_answer_it_is_told_and_done(machine: Machine) -> None:
    done = subprocess.run(
        machine.command,
        env=machine.environment,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )
    assert f"nobody can be asked here, so it is installed now: {BY_HAND}" in done.stderr
    assert "Type yes or no" not in done.stderr
    assert done.stdout == ""
    assert machine.installed() == INSTALLED


def test_a_service_that_checks_changes_is_nobody(machine: Machine) -> None:
    """Some give their programs a terminal, at which nobody sits."""
    _, said = at_a_terminal(machine, b"", CI="true")
    assert "nobody can be asked here" in said
    assert machine.installed() == INSTALLED
