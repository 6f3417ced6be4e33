"""`build_tools test`: every check of the project; the checkers work while the tests run."""

from __future__ import annotations

import os
import sys
import tempfile
import threading
import time
from dataclasses import dataclass, field
from pathlib import Path

from build_tools.building.browsers import ToolMissingError
from build_tools.disk.places import PROJECT
from build_tools.lifeline import programs
from build_tools.project.tools_for_tests import tools

WORKERS = 2
EVERY_RUN = {
    # A fixed hash seed makes the order of sets the same in every run and every worker.
    "PYTHONHASHSEED": "0",
    # What is compiled is kept, whatever the caller's habit: tests start Python a hundred times, and
    # compiling the project anew takes each of them a second.
    "PYTHONDONTWRITEBYTECODE": "",
}


@dataclass(frozen=True, slots=True)
class Check:
    """One checker: its name in the summary, and its command line."""

    name: str
    command: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class CheckerResult:
    """What came of one checker: its exit code and how many seconds it took."""

    name: str
    code: int
    seconds: float

    def __str__(self) -> str:
        verdict = "passed" if self.code == 0 else f"FAILED (exit code {self.code})"
        return f"  {self.name}: {verdict}, {self.seconds:.1f} s"


def checks() -> list[Check]:
    """The checkers that run beside the tests, one after another."""
    scripts = Path(sys.executable).parent
    suffix = ".exe" if os.name == "nt" else ""
    ruff = str(scripts / f"ruff{suffix}")
    return [
        Check("ruff check", (ruff, "check", ".")),
        Check("ruff format", (ruff, "format", "--check", ".")),
        Check("mypy", (sys.executable, "-m", "mypy")),
        Check("import contracts", (str(scripts / f"lint-imports{suffix}"),)),
    ]


def pytest_check(thorough: bool, rest: list[str]) -> Check:
    """The tests, with the reader's own arguments last so that they win."""
    # A file's tests stay together, since they share what is made for them, and files go in the
    # order that tests/conftest.py gives them, the longest first.
    together = ["--dist", "loadfile", "--no-loadscope-reorder"]
    command = [sys.executable, "-m", "pytest", "-n", str(WORKERS), *together]
    if thorough:
        command.append("--thorough")
    return Check("pytest", (*command, *rest))


def run_check(check: Check, environment: dict[str, str], words: int | None = None) -> CheckerResult:
    """Run one checker from the project's folder, its output straight to the reader, or to the
    open file `words`.
    """
    start = time.monotonic()
    try:
        code = programs.run(
            list(check.command), cwd=PROJECT, env=environment, stdout=words, stderr=words
        ).returncode
    except OSError as error:
        print(f"{error}: remove .venv, then run this again", flush=True)
        code = 1
    return CheckerResult(check.name, code, time.monotonic() - start)


@dataclass(slots=True)
class Beside:
    """The checkers at work beside the tests; each says its own at once, and whole."""

    environment: dict[str, str]
    found: list[CheckerResult] = field(default_factory=list)

    def run(self) -> None:
        """Run each checker and say what it said."""
        for check in checks():
            with tempfile.TemporaryFile() as words:
                result = run_check(check, self.environment, words.fileno())
                words.seek(0)
                said = words.read().decode("utf-8", "replace")
            print(f"\n── {check.name}\n{said}", end="", flush=True)
            self.found.append(result)


def run(thorough: bool, rest: list[str]) -> bool:
    """Run every check, going on after a failure; says whether all of them passed."""
    try:
        found = tools(PROJECT)
    except ToolMissingError as missing:
        print(f"build_tools test: {missing}", file=sys.stderr)
        return False
    environment = dict(os.environ) | found.environment() | EVERY_RUN
    # many tests wait for a browser or a process, and the checkers use what is left meanwhile
    beside = Beside(environment)
    # whoever ends the tests by Ctrl-C waits for no checker
    thread = threading.Thread(target=beside.run, daemon=True)
    thread.start()
    print("── pytest, and the checkers beside it", flush=True)
    tests = run_check(pytest_check(thorough, rest), environment)
    thread.join()
    print("── summary", *beside.found, tests, sep="\n", flush=True)
    return len(beside.found) == len(checks()) and all(
        outcome.code == 0 for outcome in (*beside.found, tests)
    )
