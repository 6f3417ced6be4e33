"""Packages of the system: installed only where somebody says yes, or where nobody can be asked.

A machine belongs to whoever sits at it, so they are asked first. A machine that checks changes by
itself has nobody to ask; there it is said what is done, and done.
"""

from __future__ import annotations

import os
import shutil
import sys
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable

_YES = {"y", "yes"}


def can_install() -> bool:
    """Whether this process may install Debian packages."""
    root = hasattr(os, "geteuid") and os.geteuid() == 0
    return root and Path("/etc/debian_version").exists() and shutil.which("apt-get") is not None


def to_type(package: str) -> str:
    """The command by which somebody installs a package of Debian themselves."""
    return f"apt-get install --no-install-recommends {package}"


def steps(package: str) -> list[list[str]]:
    """The commands that install a package without asking anything."""
    quiet = ["env", "DEBIAN_FRONTEND=noninteractive", "apt-get", "-qq"]
    return [
        [*quiet, "update"],
        [*quiet, "install", "--yes", "--no-install-recommends", package],
    ]


def allowed(package: str, wanted_for: str, say: Callable[[str], None]) -> bool:
    """Whether a package may be installed: asked at a terminal, else said and taken as allowed."""
    if not somebody_can_answer():
        say(
            f"{wanted_for} needs Debian's package {package}; nobody can be asked here, "
            f"so it is installed now: {to_type(package)}"
        )
        return True
    say(f"{wanted_for} needs Debian's package {package}, which is not on this machine.")
    say(f"Install it now, as `{to_type(package)}` does? Type yes or no: ")
    return sys.stdin.readline().strip().casefold() in _YES


def somebody_can_answer() -> bool:
    """Whether a person sits at a terminal; services that check changes say by CI that none does."""
    streams = (sys.stdin, sys.stderr)
    return not os.environ.get("CI") and all(one is not None and one.isatty() for one in streams)
