"""Watching while an author writes: after each save the problems first, then the pages anew."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from build_tools.building.rebuild import Touched, again, rebuild, touched
from build_tools.checking.check_bank import check_folder
from build_tools.checking.quick_check import quick_check
from build_tools.problem import Problem


@dataclass(frozen=True, slots=True)
class ProblemsFound:
    """The problems of the whole bank as it was saved."""

    problems: tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class Written:
    """Which pages were written anew, in words; none where errors stand in the way."""

    pages: tuple[str, ...]


def watch(
    content: Path, saves: Iterable[list[Path]], out: Path, kept_in: Path
) -> Iterator[ProblemsFound | Written]:
    """Check the folder `content` and build its pages below `out`, then again after each save.

    `saves` gives the files of each save; what was read is kept in the file `kept_in`. The problems
    come before the pages, since they are what the author waits for.
    """
    report = check_folder(content)
    yield ProblemsFound(report.problems)
    yield Written(tuple(rebuild(content, out, Touched(frozenset(), True), report)))
    for saved in saves:
        what = touched(content, saved)
        now = quick_check(content, kept_in)
        yield ProblemsFound(now.problems)
        report = again(content, report, what, now)
        yield Written(tuple(rebuild(content, out, what, report)))
