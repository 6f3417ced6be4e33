"""The same check for a large bank: on every core, and only what changed since the last time.

What each unit's files said is kept with their sizes and times; a file whose size and times are
as they were is not read again. Where there is doubt, its digest decides. Besides the time that
programs may set, as those do that copy a file with its time, the system's own time of the last
change is compared; Windows has none that costs as little, so there a file put in the place of
another of the same size and time is only seen by what reads every file, as `site` does. What is
kept is thrown away when the bank's software, its schemas or its grades change, and whenever it
cannot be read.
"""

from __future__ import annotations

import gc
import hashlib
import json
import os
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager, suppress
from dataclasses import astuple, dataclass, field
from functools import partial
from pathlib import Path
from typing import Any

from build_tools.checking.check_bank import check_bank_files, check_together, check_unit
from build_tools.checking.stamps import (
    SHARES,
    Stamp,
    files_of,
    shared_files_of,
    stamp_of,
    unchanged,
)
from build_tools.disk.digests import DOUBT_NANOSECONDS, digest_of_files, digest_once, files_below
from build_tools.disk.places import PACKAGE, PROJECT
from build_tools.model.bank import Bank, UnitOutline
from build_tools.model.build_bank import build_bank
from build_tools.model.unit import Neighbours, SchoolYears
from build_tools.problem import Grade, Problem
from build_tools.shapes.schemas import SCHEMA_FOLDER
from build_tools.source.folder import unit_slugs

FEW = 24
"""So few units are checked sooner on one core than others can be started."""
BATCH = 8
MOST_KEPT = 8
"""Of so many banks results are kept; those checked longest ago make room."""
BETWEEN_COLLECTIONS = 100_000
"""New objects between two searches for rubbish: units are many objects, and few go in circles."""

Plain = list[Any]
"""What one unit's files said as it is kept and handed over: stamp, problems, skipped, outline."""


@dataclass(frozen=True, slots=True)
class UnitSeen:
    """A unit as the check saw it: a digest of its files, and its outline if it is sound."""

    digest: str
    outline: UnitOutline | None


@dataclass(frozen=True, slots=True)
class QuickReport:
    """The problems of a whole bank, how many rules were not run, and its units by their folders."""

    problems: tuple[Problem, ...]
    skipped: int
    units: Mapping[str, UnitSeen] = field(default_factory=dict)
    settings: Bank | None = None
    """The bank without units; None where its own files cannot be read or have another shape."""


@dataclass(frozen=True, slots=True)
class _Kept:
    """What is kept of one unit, and the same as `plain` data."""

    files: Stamp
    problems: tuple[Problem, ...]
    skipped: int
    outline: UnitOutline | None
    plain: Plain


def quick_check(root: Path, kept_file: Path | None) -> QuickReport:
    """Check the content folder `root`; `kept_file` is where results are kept, if anywhere."""
    with _few_collections():
        return _quick_check(root, kept_file)


@contextmanager
def _few_collections() -> Iterator[None]:
    before = gc.get_threshold()
    gc.set_threshold(BETWEEN_COLLECTIONS, *before[1:])
    try:
        yield
    finally:
        gc.set_threshold(*before)


def quick_outlines(root: Path, kept_file: Path | None) -> tuple[UnitOutline, ...]:
    """What the rules for the whole bank know of each sound unit in the folder `root`."""
    with _few_collections():
        kept = _each_unit(root, unit_slugs(root)[0], check_bank_files(root).grades, kept_file)
    return tuple(one.outline for one in kept.values() if one.outline is not None)


def _quick_check(root: Path, kept_file: Path | None) -> QuickReport:
    files = check_bank_files(root)
    slugs, problems = unit_slugs(root)
    units = _each_unit(root, slugs, files.grades, kept_file)
    ordered = units.values()
    found = [*files.problems, *problems, *(p for one in ordered for p in one.problems)]
    outlines = [one.outline for one in ordered if one.outline is not None]
    found += check_together(root, files, slugs, outlines).problems
    return QuickReport(
        tuple(sorted(set(found))),
        sum(one.skipped for one in ordered),
        {slug: UnitSeen(_digest_of(one.files), one.outline) for slug, one in units.items()},
        build_bank(files.documents, ()) if files.sound else None,
    )


def _digest_of(files: Stamp) -> str:
    said = sorted((name, one[-1]) for name, one in files.items())
    return hashlib.sha256(json.dumps(said).encode()).hexdigest()


def _each_unit(
    root: Path, slugs: list[str], grades: Mapping[str, Grade], kept_file: Path | None
) -> dict[str, _Kept]:
    """What each unit's files say, in the order of `slugs`."""
    version = _version(grades)
    old = _load(kept_file, version) if kept_file else {}
    now = _newest_trusted(kept_file)
    kept: dict[str, _Kept] = {}
    waiting: list[str] = []
    for slug in slugs:
        stamp = unchanged(root / "units" / slug, old[slug].files, now) if slug in old else None
        if stamp is None:
            waiting.append(slug)
        else:
            same = stamp == old[slug].files
            kept[slug] = old[slug] if same else _read_kept([stamp, *old[slug].plain[1:]])
    checked = _check_units(root, waiting, grades)
    kept |= {slug: _read_kept(plain) for slug, plain in zip(waiting, checked, strict=True)}
    if kept_file and kept != old:
        _save(kept_file, version, kept)
    return {slug: kept[slug] for slug in slugs}


def _check_units(root: Path, slugs: list[str], grades: Mapping[str, Grade]) -> Iterable[Plain]:
    work = partial(_check_one, root, dict(grades))
    cores = os.cpu_count() or 1
    if len(slugs) <= FEW or cores == 1:
        return [work(slug) for slug in slugs]
    # loading this takes longer than checking a unit, and mostly only one has changed
    from concurrent.futures import ProcessPoolExecutor

    with ProcessPoolExecutor(cores, initializer=_start) as pool:
        return list(pool.map(work, slugs, chunksize=BATCH))


def _start() -> None:
    """What was loaded before a worker started is no rubbish, and is never searched again."""
    from build_tools.lifeline.workers import end_with_parent

    end_with_parent()
    gc.freeze()
    gc.set_threshold(BETWEEN_COLLECTIONS)


def _check_one(root: Path, grades: Mapping[str, Grade], slug: str) -> Plain:
    folder = root / "units" / slug
    stamp = stamp_of(files_of(folder))
    check = check_unit(root, slug, grades)
    if check.shares:
        stamp |= {SHARES: [0, 0, 0, ""], **stamp_of(shared_files_of(folder))}
    outline = astuple(check.outline) if check.outline else None
    return [stamp, [astuple(problem) for problem in check.problems], check.skipped, outline]


def _newest_trusted(kept_file: Path | None) -> int:
    """Files younger than this, in nanoseconds, may have changed again within the same tick."""
    try:
        return kept_file.stat().st_mtime_ns - DOUBT_NANOSECONDS if kept_file else 0
    except OSError:
        return 0


def _version(grades: Mapping[str, Grade]) -> str:
    """A digest of everything but the content that a result depends on."""
    ours = [path for path in files_below(PACKAGE) if path.suffix in (".py", ".po")]
    files = digest_of_files([*ours, *SCHEMA_FOLDER.glob("*.json")], PROJECT, digest_once)
    return hashlib.sha256(json.dumps([files, *sorted(grades.items())]).encode()).hexdigest()


def _save(kept_file: Path, version: str, kept: Mapping[str, _Kept]) -> None:
    """Keep what was found; a folder that cannot be written to only costs time."""
    units = {slug: one.plain for slug, one in kept.items()}
    fresh = kept_file.with_name(f"{kept_file.name}.{os.getpid()}")
    with suppress(OSError):
        kept_file.parent.mkdir(parents=True, exist_ok=True)
        fresh.write_text(json.dumps({"version": version, "units": units}), encoding="utf-8")
        fresh.replace(kept_file)
        for oldest in sorted(kept_file.parent.glob("*.json"), key=_age)[MOST_KEPT:]:
            oldest.unlink()


def _age(path: Path) -> float:
    return -path.stat().st_mtime


def _load(kept_file: Path, version: str) -> dict[str, _Kept]:
    try:
        data = json.loads(kept_file.read_text(encoding="utf-8"))
        if data["version"] != version:
            return {}
        return {slug: _read_kept(one) for slug, one in data["units"].items()}
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return {}


def _read_kept(plain: Plain) -> _Kept:
    files, problems, skipped, outline = plain
    return _Kept(
        files,
        tuple(Problem(*problem) for problem in problems),
        skipped,
        _read_outline(*outline) if outline else None,
        plain,
    )


def _read_outline(
    slug: str,
    file: str,
    title: str,
    issued: str,
    draft: bool,
    years: Iterable[tuple[str, Iterable[str]]],
    topics: Iterable[str],
    builds_on: tuple[str, Iterable[str]],
    leads_to: tuple[str, Iterable[str]],
    allow: Mapping[str, str],
    starts_with: Iterable[str],
    shared: Iterable[str],
    pictured: int,
    recorded: int,
) -> UnitOutline:
    return UnitOutline(
        slug=slug,
        file=file,
        title=title,
        issued=issued,
        draft=draft,
        years=tuple(SchoolYears(nation, tuple(ages)) for nation, ages in years),
        topics=tuple(topics),
        builds_on=_read_neighbours(*builds_on),
        leads_to=_read_neighbours(*leads_to),
        allow=allow,
        starts_with=tuple(starts_with),
        shared=tuple(shared),
        pictured=pictured,
        recorded=recorded,
    )


def _read_neighbours(in_words: str, units: Iterable[str]) -> Neighbours:
    return Neighbours(in_words, tuple(units))
