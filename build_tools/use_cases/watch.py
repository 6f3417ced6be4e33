"""Watching while an author writes: after each save the problems first, then the pages anew."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from build_tools.building.ready import wanted_of
from build_tools.building.site import Built, build_site
from build_tools.checking.quick_check import QuickReport, quick_check
from build_tools.misuse import Misuse
from build_tools.problem import Problem
from build_tools.source.file_names import ODD


@dataclass(frozen=True, slots=True)
class ProblemsFound:
    """The problems of the whole bank as it was saved."""

    problems: tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class Written:
    """Which pages were written anew, in words."""

    pages: tuple[str, ...]
    older: frozenset[str] = frozenset()
    """The units whose pages are older than their files, since errors leave nothing to draw."""


def watch(
    content: Path, saves: Iterable[list[Path]], out: Path, kept_in: Path
) -> Iterator[ProblemsFound | Written]:
    """Check the folder `content` and build its pages below `out`, then again after each save.

    `saves` gives the files of each save; what was read is kept beside the file `kept_in`. The
    problems come before the pages, since they are what the author waits for.
    """
    yield from _seen(content, out, kept_in)
    for _ in saves:
        yield from _seen(content, out, kept_in)


def _seen(content: Path, out: Path, kept_in: Path) -> Iterator[ProblemsFound | Written]:
    report = quick_check(content, kept_in)
    yield ProblemsFound(report.problems)
    yield rebuilt(content, report, out, kept_in.with_suffix(".site"))


def rebuilt(content: Path, report: QuickReport, out: Path, record: Path) -> Written:
    """Write anew below `out` what changed.

    Drafts are shown as if they were finished, and so are units with errors, since their author
    wants to see what she writes; where an error leaves nothing to draw, the last pages stand.
    """
    wrong = faulty_units(report.problems) & report.units.keys()
    wanted = wanted_of(report, content, sorted(report.units), faulty=wrong)
    if wanted is None:
        return Written((), wrong)
    try:
        built = build_site(wanted, out, record)
    except Misuse:
        # A file was saved again while it was read; that save comes next.
        return Written((), wrong)
    return Written(_in_words(built), built.behind)


def faulty_units(problems: Iterable[Problem]) -> frozenset[str]:
    """The units, by their folders, that have errors.

    A file that has no place in a unit's folder is told of, and is no error of what is written.
    """
    parts = (one.file.split("/") for one in problems if one.severity == "error" and one.rule != ODD)
    return frozenset(part[1] for part in parts if part[0] == "units" and len(part) > 1)


def _in_words(built: Built) -> tuple[str, ...]:
    parts = [name.split("/") for name in (*built.written, *built.gone)]
    slugs = sorted({part[1] for part in parts if part[0] == "units"})
    found = [part[:2] == ["assets", "find"] for part in parts]
    if any(part[0] == "assets" and not one for part, one in zip(parts, found, strict=True)):
        return ("every page",)
    lists = any(found) or any(len(part) == 1 for part in parts)
    return (*(f"the pages of {slug}" for slug in slugs), *(["the lists"] if lists else []))
