"""The same check for a large bank: on every core, and only what changed since the last time.

What each unit's files said is kept with their sizes and times; a file whose size and time are
as they were is not read again. Where there is doubt, its digest decides. What is kept is thrown
away when the bank's software, its schemas or its grades change, and whenever it cannot be read.
"""

from __future__ import annotations

import hashlib
import json
import os
from collections.abc import Iterable, Mapping
from concurrent.futures import ProcessPoolExecutor
from contextlib import suppress
from dataclasses import asdict, dataclass
from functools import partial
from pathlib import Path
from typing import Any

from build_tools.model.bank import UnitOutline
from build_tools.model.unit import Neighbours, SchoolYears
from build_tools.pipeline import check_bank_files, check_together, check_unit
from build_tools.problem import Grade, Problem
from build_tools.schema_check.schemas import SCHEMA_FOLDER
from build_tools.source.folder import unit_slugs

FEW = 24
"""So few units are checked sooner on one core than others can be started."""
BATCH = 20
MOST_KEPT = 8
"""Of so many banks results are kept; those checked longest ago make room."""
DOUBT_NANOSECONDS = 2_000_000_000
"""Some file systems keep times in steps of two seconds; younger files may change unseen."""

Stamp = dict[str, list[Any]]
"""Each file of a unit: its size in bytes, its time in nanoseconds, its SHA-256."""


@dataclass(frozen=True, slots=True)
class QuickReport:
    """The problems of a whole bank, and how many rules were not run."""

    problems: tuple[Problem, ...]
    skipped: int


@dataclass(frozen=True, slots=True)
class _Kept:
    """What is kept of one unit."""

    files: Stamp
    problems: tuple[Problem, ...]
    skipped: int
    outline: UnitOutline | None


def quick_check(root: Path, kept_file: Path | None) -> QuickReport:
    """Check the content folder `root`; `kept_file` is where results are kept, if anywhere."""
    files = check_bank_files(root)
    slugs, problems = unit_slugs(root)
    version = _version(files.grades)
    old = _load(kept_file, version) if kept_file else {}
    now = _newest_trusted(kept_file)
    kept: dict[str, _Kept] = {}
    waiting: list[str] = []
    for slug in slugs:
        stamp = _unchanged(root / "units" / slug, old[slug], now) if slug in old else None
        if stamp is None:
            waiting.append(slug)
        else:
            kept[slug] = old[slug] if stamp == old[slug].files else _restamped(old[slug], stamp)
    kept |= dict(zip(waiting, _check_units(root, waiting, files.grades), strict=True))
    if kept_file and kept != old:
        _save(kept_file, version, kept)
    ordered = [kept[slug] for slug in slugs]
    found = [*files.problems, *problems, *(p for one in ordered for p in one.problems)]
    found += check_together(root, files, [o.outline for o in ordered if o.outline is not None])
    return QuickReport(tuple(sorted(set(found))), sum(one.skipped for one in ordered))


def _check_units(root: Path, slugs: list[str], grades: Mapping[str, Grade]) -> Iterable[_Kept]:
    work = partial(_check_one, root, dict(grades))
    cores = os.cpu_count() or 1
    if len(slugs) <= FEW or cores == 1:
        return [work(slug) for slug in slugs]
    with ProcessPoolExecutor(cores) as pool:
        return list(pool.map(work, slugs, chunksize=BATCH))


def _check_one(root: Path, grades: Mapping[str, Grade], slug: str) -> _Kept:
    stamp = _stamp(root / "units" / slug)
    check = check_unit(root, slug, grades)
    return _Kept(stamp, check.problems, check.skipped, check.outline)


def _stamp(folder: Path) -> Stamp:
    return {name: [*_size_and_time(path), _digest(path)] for name, path in _files(folder).items()}


def _files(folder: Path) -> dict[str, os.DirEntry[str]]:
    found: dict[str, os.DirEntry[str]] = {}
    for inner in ("", "media"):
        with suppress(OSError), os.scandir(folder / inner) as entries:
            found |= {f"{inner}/{e.name}" if inner else e.name: e for e in entries if e.is_file()}
    return found


def _size_and_time(entry: os.DirEntry[str]) -> tuple[int, int]:
    stat = entry.stat()
    return stat.st_size, stat.st_mtime_ns


def _digest(entry: os.DirEntry[str]) -> str:
    try:
        return hashlib.sha256(Path(entry.path).read_bytes()).hexdigest()
    except OSError:
        return ""


def _unchanged(folder: Path, old: _Kept, trusted: int) -> Stamp | None:
    """The stamp of `folder` now if its files hold what they held, else None."""
    files = _files(folder)
    if set(files) != set(old.files):
        return None
    stamp: Stamp = {}
    for name, entry in files.items():
        size, time, digest = old.files[name]
        now_size, now_time = _size_and_time(entry)
        if now_size != size:
            return None
        if (now_time != time or now_time > trusted) and _digest(entry) != digest:
            return None
        stamp[name] = [now_size, now_time, digest]
    return stamp


def _restamped(old: _Kept, stamp: Stamp) -> _Kept:
    return _Kept(stamp, old.problems, old.skipped, old.outline)


def _newest_trusted(kept_file: Path | None) -> int:
    """Files younger than this, in nanoseconds, may have changed again within the same tick."""
    try:
        return kept_file.stat().st_mtime_ns - DOUBT_NANOSECONDS if kept_file else 0
    except OSError:
        return 0


def _version(grades: Mapping[str, Grade]) -> str:
    """A digest of everything but the content that a result depends on."""
    digest = hashlib.sha256(json.dumps(sorted(grades.items())).encode())
    package = Path(__file__).parent
    for path in sorted([*package.rglob("*.py"), *SCHEMA_FOLDER.glob("*.json")]):
        digest.update(path.name.encode() + b"\0" + path.read_bytes())
    return digest.hexdigest()


def _save(kept_file: Path, version: str, kept: Mapping[str, _Kept]) -> None:
    """Keep what was found; a folder that cannot be written to only costs time."""
    units = {
        slug: [
            one.files,
            [list(asdict(p).values()) for p in one.problems],
            one.skipped,
            asdict(one.outline) if one.outline else None,
        ]
        for slug, one in kept.items()
    }
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
        return {slug: _read_kept(*one) for slug, one in data["units"].items()}
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return {}


def _read_kept(files: Stamp, problems: list[Any], skipped: int, outline: Any) -> _Kept:
    return _Kept(
        files,
        tuple(Problem(*p) for p in problems),
        skipped,
        _read_outline(outline) if outline else None,
    )


def _read_outline(data: dict[str, Any]) -> UnitOutline:
    return UnitOutline(
        slug=data["slug"],
        file=data["file"],
        title=data["title"],
        draft=data["draft"],
        years=tuple(SchoolYears(y["nation"], tuple(y["years"])) for y in data["years"]),
        topics=tuple(data["topics"]),
        builds_on=_read_neighbours(data["builds_on"]),
        leads_to=_read_neighbours(data["leads_to"]),
    )


def _read_neighbours(data: dict[str, Any]) -> Neighbours:
    return Neighbours(data["in_words"], tuple(data["units"]))
