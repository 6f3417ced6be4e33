"""Building the site as a user does, from the command line, and reading what came out."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterable, Mapping
from itertools import groupby
from pathlib import Path

from tests.support.banks import LOOKED_AT

ROOT = Path(__file__).resolve().parents[2]
CONTENT = ROOT / "content"
BOOKLET = re.compile(r"units/[^/]+/booklet\.html")
LESSON = re.compile(r"units/[^/]+/lesson-[0-9]+\.html")
_VARIES = re.compile(r"(?<=^units/)[^/]+|[0-9]+")


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


def part_of(site: Path, folder: Path, *pages: str) -> Path:
    """A copy of these pages in `folder`, to be changed at will, with what every page loads."""
    shutil.copytree(site / "assets", folder / "assets")
    for page in pages:
        (folder / page).parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(site / page, folder / page)
    return folder


def html_pages(folder: Path) -> list[str]:
    """The paths of every page of a site."""
    return sorted(path.relative_to(folder).as_posix() for path in folder.rglob("*.html"))


def template_of(path: str) -> str:
    """What a page shares with others of its kind: its path without the unit and the number.

    Lists below browse/ are of units, or of the topics, years or subjects there are.
    """
    if path.startswith("browse/"):
        return "browse/units" if "-" in path else "browse/choices"
    return _VARIES.sub("*", path)


def heaviest(folder: Path, paths: Iterable[str]) -> list[str]:
    """Of the pages at `paths` the largest of each template, in order."""
    largest: dict[str, str] = {}
    for path in sorted(paths, key=lambda one: (folder / one).stat().st_size):
        largest[template_of(path)] = path
    return sorted(largest.values())


def pages_to_open(folder: Path, thorough: bool) -> list[str]:
    """Every page in the long run; in the usual one the heaviest of each template.

    Lessons as cards for the hand come first, since an address with another place on the same page
    is no page to go to.
    """
    pages = html_pages(folder)
    lessons = lesson_pages(folder)
    if not thorough:
        pages, lessons = heaviest(folder, pages), heaviest(folder, lessons)
    return [*(f"{path}#card" for path in lessons), *pages]


def lessons_to_open(folder: Path, thorough: bool) -> list[str]:
    """Every lesson's page in the long run; in the usual one the heaviest of each unit."""
    pages = lesson_pages(folder)
    return pages if thorough else heaviest_of_each_unit(folder, pages)


def heaviest_of_each_unit(folder: Path, paths: Iterable[str]) -> list[str]:
    """Of the pages at `paths` the largest of each template in each unit that is looked at."""
    every = sorted(paths)
    looked_at = [path for path in every if path.split("/")[1] in LOOKED_AT] or every
    by_unit = groupby(looked_at, key=lambda path: path.split("/")[1])
    return [path for _, own in by_unit for path in heaviest(folder, own)]


def lesson_pages(folder: Path) -> list[str]:
    """The paths of every lesson's own page of a site, without its card and the other views."""
    return [path for path in html_pages(folder) if LESSON.fullmatch(path)]
