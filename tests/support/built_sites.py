"""Building the site as a user does, from the command line, and reading what came out."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
CONTENT = ROOT / "content"
LESSON = re.compile(r"units/[^/]+/lesson-[0-9]+\.html")


def build(content: Path, out: Path, environment: Mapping[str, str] | None = None) -> None:
    """Build the site of `content` into `out`, and fail with the tool's own words."""
    command = [sys.executable, "-m", "build_tools", "site", "--content", str(content)]
    done = subprocess.run(
        [*command, "--out", str(out)],
        cwd=ROOT,
        env=dict(os.environ) | {"PYTHONUTF8": "1"} | dict(environment or {}),
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr


def files(folder: Path) -> dict[str, bytes]:
    """Every file of a folder by its path, with `/`."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def html_pages(folder: Path) -> list[str]:
    """The paths of every page of a site."""
    return sorted(path.relative_to(folder).as_posix() for path in folder.rglob("*.html"))


def lesson_pages(folder: Path) -> list[str]:
    """The paths of every lesson's own page of a site, without its card and the other views."""
    return [path for path in html_pages(folder) if LESSON.fullmatch(path)]
