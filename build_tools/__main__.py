"""Start here: `python3 build_tools <command>` makes the project's own `.venv`, then runs in it.

Standard library alone, since this file runs before anything is installed.
"""

from __future__ import annotations

import contextlib
import hashlib
import importlib
import importlib.util
import os
import shutil
import signal
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

if not __package__:
    # `python3 build_tools` looks for modules in this folder, not in the one that holds it.
    sys.path[0] = str(Path(__file__).resolve().parents[1])

from build_tools.commands.shared.exit_codes import INTERRUPTED, STOPPED
from build_tools.lifeline.in_order import end_in_order
from build_tools.lifeline.programs import run
from build_tools.lifeline.system_packages import allowed, can_install, steps, to_type

if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import NoReturn

ROOT = Path(__file__).resolve().parents[1]
OLDEST_PYTHON = (3, 11)
"""As in pyproject.toml, which nothing can read yet where this runs; a test holds them together."""
INSIDE = "BANK_INSIDE_VENV"
STAMP = "bank-stamp.txt"
STANDARD_ERROR = 2


class SetUpError(Exception):
    """The set-up stops here; the text is the one line that tells the reader what to do."""


def venv_of(root: Path) -> Path:
    """The folder of the project's own virtual environment."""
    return root / ".venv"


def python_of(venv: Path) -> Path:
    """The interpreter inside a virtual environment, on this system."""
    return venv / "Scripts" / "python.exe" if os.name == "nt" else venv / "bin" / "python"


def packages_stamp(root: Path) -> str:
    """What the installed packages depend on: the lock, this Python and the checkout's place."""
    lock = hashlib.sha256((root / "requirements.lock").read_bytes()).hexdigest()
    version = ".".join(str(part) for part in sys.version_info[:3])
    return f"lock {lock}\npython {version}\nplace {root}\n"


def project_stamp(root: Path) -> str:
    """What the project's own installation depends on: its `pyproject.toml`."""
    return f"project {hashlib.sha256((root / 'pyproject.toml').read_bytes()).hexdigest()}\n"


def stamped(root: Path) -> str:
    """The stamp of the last finished set-up; empty where there is none or its Python is gone."""
    venv = venv_of(root)
    if not python_of(venv).exists():
        return ""
    try:
        return (venv / STAMP).read_text(encoding="utf-8")
    except OSError:
        return ""


def is_ready(root: Path) -> bool:
    """Whether `.venv` holds exactly what the lock and `pyproject.toml` ask for."""
    return stamped(root) == packages_stamp(root) + project_stamp(root)


def run_step(command: list[str], failure: str) -> None:
    """Run one step of the set-up, its output on standard error; stop with `failure` if it fails."""
    try:
        code = run(
            command,
            cwd=ROOT,
            env=child_environment(dict(os.environ)),
            stdin=subprocess.DEVNULL,
            stdout=STANDARD_ERROR,
        ).returncode
    except OSError as error:
        raise SetUpError(f"{failure} ({error})") from error
    if code != 0:
        raise SetUpError(failure)


def say(text: str) -> None:
    """Tell the reader on standard error, so that a command's own output stays clean."""
    print(text, file=sys.stderr, flush=True)


def can_make_venvs() -> bool:
    """Whether this Python can make a virtual environment that has pip."""
    importlib.invalidate_caches()
    return all(importlib.util.find_spec(name) for name in ("venv", "ensurepip"))


def make_sure_of_venv_module() -> None:
    """Install Debian's `python3-venv` where it is missing and may be; else say what to install."""
    if can_make_venvs():
        return
    package = "python3-venv"
    if can_install():
        by_hand = f"run `{to_type(package)}`, then this again"
        if not allowed(package, "making the project's own Python", say):
            raise SetUpError(f"nothing was installed; {by_hand}")
        for step in steps(package):
            run_step(step, f"could not install {package}: {by_hand}")
    if not can_make_venvs():
        raise SetUpError(
            "this Python cannot make virtual environments: install its venv and ensurepip "
            "(on Debian and Ubuntu: `sudo apt-get install python3-venv`), then run this again"
        )


def install_packages(root: Path) -> None:
    """Make `.venv` anew with every package of the lock, each checked against its hash."""
    venv = venv_of(root)
    make_sure_of_venv_module()
    say(f"setting up {venv} (once; it takes a minute or two) …")
    try:
        if venv.exists():
            shutil.rmtree(venv)
    except OSError as error:
        raise SetUpError(f"could not remove {venv}: close what uses it ({error})") from error
    base = getattr(sys, "_base_executable", None) or sys.executable
    run_step([base, "-I", "-m", "venv", str(venv)], f"could not make {venv}")
    run_step(
        [*pip(venv), "--require-hashes", "--only-binary", ":all:", "-r", "requirements.lock"],
        "could not install the packages in requirements.lock: see pip's words above",
    )


def install_project(root: Path) -> None:
    """Install the project itself into `.venv`, as a link to this checkout."""
    run_step(
        [*pip(venv_of(root)), "--no-deps", "--no-build-isolation", "-e", "."],
        "could not install the project itself: see pip's words above",
    )


def pip(venv: Path) -> list[str]:
    """The start of every `pip install` line."""
    quiet = ["-qq", "--no-input", "--disable-pip-version-check"]
    return [str(python_of(venv)), "-I", "-m", "pip", "install", *quiet]


def set_up(root: Path) -> None:
    """Bring `.venv` up to date, doing only what has changed; a half-made one is made anew."""
    with only_one(root / ".venv.lock"):
        if is_ready(root):
            return
        if not stamped(root).startswith(packages_stamp(root)):
            # Without a stamp an interrupted set-up is made anew by the next call.
            (venv_of(root) / STAMP).unlink(missing_ok=True)
            install_packages(root)
        install_project(root)
        stamp = packages_stamp(root) + project_stamp(root)
        (venv_of(root) / STAMP).write_text(stamp, encoding="utf-8")


@contextlib.contextmanager
def only_one(path: Path) -> Iterator[None]:
    """Hold the lock on `path`, which the system lets go when this process ends, however it ends."""
    with path.open("a+b") as file:
        if sys.platform == "win32":
            import msvcrt

            while True:
                with contextlib.suppress(OSError):
                    file.seek(0)
                    msvcrt.locking(file.fileno(), msvcrt.LK_LOCK, 1)
                    break
        else:
            import fcntl

            fcntl.flock(file, fcntl.LOCK_EX)
        yield


def command_line(root: Path, arguments: list[str]) -> list[str]:
    """The same command, run by the project's own Python."""
    return [str(python_of(venv_of(root))), "-P", "-m", "build_tools", *arguments]


def child_environment(environment: dict[str, str]) -> dict[str, str]:
    """The caller's environment with UTF-8 on and nothing that points at another Python's code.

    Where the caller insists on the plain C locale, a Python whose folder has an accent in its
    path could not even start: it reads where this checkout lies by the locale's encoding.
    """
    dropped = {"PYTHONHOME", "PYTHONPATH"}
    kept = {name: value for name, value in environment.items() if name not in dropped}
    if kept.get("LC_ALL") in ("C", "POSIX"):
        kept["LC_ALL"] = "C.UTF-8"
    return kept | {"PYTHONUTF8": "1", INSIDE: "1"}


def run_inside(root: Path, arguments: list[str]) -> int:
    """Run the command in `.venv` from the caller's folder; gives the command's exit code.

    Whoever ends the process that they started ends the command: it becomes that process, or, where
    the system cannot do that, lives in the same job.
    """
    if os.name != "nt":
        become(root, arguments)
    return run_and_wait(root, arguments)


def become(root: Path, arguments: list[str]) -> NoReturn:
    """Turn this very process into the command."""
    for stream in (sys.stdout, sys.stderr):
        stream.flush()
    line = command_line(root, arguments)
    os.execve(line[0], line, child_environment(dict(os.environ)))


def run_and_wait(root: Path, arguments: list[str]) -> int:
    """Run the command as a child, in this process's job, and wait for it."""
    # The console sends Ctrl-C to the child as well: let the child end its work, and wait for it.
    before = signal.signal(signal.SIGINT, lambda *_: None)
    try:
        return subprocess.run(
            command_line(root, arguments),
            env=child_environment(dict(os.environ)),
            check=False,
        ).returncode
    finally:
        signal.signal(signal.SIGINT, before)


def is_inside(root: Path) -> bool:
    """Whether this process is what `run_inside` makes: the command, in the project's own Python."""
    venv = venv_of(root)
    return INSIDE in os.environ and venv.exists() and venv.samefile(sys.prefix)


def main(arguments: list[str]) -> int:
    """Set up what is missing, then run the command; gives its exit code."""
    if sys.version_info < OLDEST_PYTHON:
        oldest = ".".join(map(str, OLDEST_PYTHON))
        say(f"Python {oldest} or later is needed: install it, then run this again with it")
        return STOPPED
    try:
        if is_inside(ROOT):
            from build_tools.cli import main as run_command

            end_in_order()
            return run_command(arguments)
        if os.name == "nt":
            from build_tools.lifeline.windows_job import hold_together

            hold_together()
        if not is_ready(ROOT):
            set_up(ROOT)
        return run_inside(ROOT, arguments)
    except SetUpError as stop:
        say(f"build_tools: {stop}")
        return STOPPED
    except KeyboardInterrupt:
        return INTERRUPTED


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
