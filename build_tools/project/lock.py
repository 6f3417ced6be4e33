"""`build_tools lock`: make requirements.lock and package-lock.json anew."""

from __future__ import annotations

import os
import subprocess
from pathlib import Path

import uv

from build_tools.building.browsers import ToolMissingError
from build_tools.disk.places import PROJECT
from build_tools.lifeline import programs
from build_tools.project.tools_for_tests import npm_command

LOCK = "requirements.lock"
OLDEST_PYTHON = "3.11"


def uv_command(*arguments: str) -> list[str]:
    """uv, as the lock carries it, deaf to this machine's own settings."""
    return [uv.find_uv_bin(), *arguments, "--no-config"]


def uv_environment() -> dict[str, str]:
    """The environment without uv's settings, so that only the public index is asked."""
    return {name: value for name, value in os.environ.items() if not name.startswith("UV_")}


def compile_command(upgrade: bool) -> list[str]:
    """One lock for every system and Python, each file named by its hash, no address in it."""
    command = uv_command("pip", "compile", "--quiet", "--universal")
    command += ["--fork-strategy", "fewest", "--python-version", OLDEST_PYTHON]
    command += ["--generate-hashes", "--only-binary", ":all:", "--all-extras"]
    command += ["--no-header", "--no-emit-index-url", "--no-emit-find-links"]
    if upgrade:
        command.append("--upgrade")
    return [*command, "--output-file", LOCK, "pyproject.toml"]


def npm_lock_command() -> list[str]:
    """npm's lock, without the addresses that it would take the packages from."""
    quiet = ["--no-audit", "--no-fund", "--ignore-scripts"]
    return [
        *npm_command(),
        "install",
        "--package-lock-only",
        "--omit-lockfile-registry-resolved",
        *quiet,
    ]


def run(upgrade: bool = False, root: Path = PROJECT) -> bool:
    """Remake both locks, keeping the pinned versions unless `upgrade`; says whether both are."""
    try:
        npm = npm_lock_command()
    except ToolMissingError as missing:
        print(f"build_tools lock: {missing}")
        return False
    python = programs.run(
        compile_command(upgrade), cwd=root, env=uv_environment(), stdout=subprocess.DEVNULL
    )
    return python.returncode == 0 and programs.run(npm, cwd=root).returncode == 0
