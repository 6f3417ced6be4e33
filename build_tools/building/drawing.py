"""Drawing the pages of many units, on every core, a unit at a time.

A unit is read, drawn and written in one process and forgotten there; what comes back is small.
"""

from __future__ import annotations

import gc
import os
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from build_tools.building.input_keys import digest_of
from build_tools.building.progress import Progress
from build_tools.building.site_record import kept_listed, read_listed
from build_tools.building.unit_files import unit_files
from build_tools.checking.check_bank import check_shape
from build_tools.disk.in_place import FRESH, write_changed
from build_tools.disk.scratch import scratch
from build_tools.lifeline.walls import FellError, WallError, within_walls
from build_tools.misuse import Misuse
from build_tools.model.bank import Bank
from build_tools.model.build import build_unit
from build_tools.model.unit import Unit
from build_tools.pages.assemble import listed
from build_tools.source.file_names import ODD
from build_tools.source.folder import read_unit_folder

FEW = 3
"""So few units are drawn sooner on one core than others can be started."""
BETWEEN_COLLECTIONS = 100_000


@dataclass(frozen=True, slots=True)
class Place:
    """Where a unit comes from and goes to: the content, the published folder, its new files.

    `keep` adds each lesson as one file, and as a word-processor file.
    """

    content: Path
    out: Path
    fresh: Path
    keep: bool = False


@dataclass(frozen=True, slots=True)
class Drawn:
    """One unit drawn: what lists say of it, its files, and which of them differ from `out`."""

    slug: str
    said: str
    listed: bytes
    """As it is kept; `said` is its digest."""
    files: tuple[str, ...]
    changed: tuple[str, ...]


class UnitGoneError(Misuse):
    """A unit could not be read though checking found it sound: somebody changes it just now."""


def draw_units(
    bank: Bank, wanted: Mapping[str, Sequence[str]], place: Place, progress: Progress
) -> Iterator[Drawn]:
    """Draw the units `wanted`, each with the units its pages may lead to, in their order.

    `bank` has the settings; its units are not looked at.
    """
    work = partial(_draw_one, bank, place)
    cores = os.cpu_count() or 1
    jobs = list(wanted.items())
    if len(jobs) <= FEW or cores == 1:
        results = map(work, jobs)
        yield from _counted(results, len(jobs), progress)
        return
    from concurrent.futures import ProcessPoolExecutor

    with ProcessPoolExecutor(cores, initializer=_start) as pool:
        yield from _counted(pool.map(work, jobs, chunksize=2), len(jobs), progress)


def draw_faulty(
    bank: Bank, wanted: Mapping[str, Sequence[str]], place: Place, progress: Progress
) -> Iterator[Drawn]:
    """Draw those of the units `wanted` that can be drawn though they have errors.

    What an error leaves to draw nobody knows before it is tried, so each is drawn within walls:
    whatever becomes of it, the others and the author go on. Nothing is left of one that fails.
    """
    for done, job in enumerate(wanted.items(), 1):
        with scratch("faulty", beside=place.fresh.parent) as room:
            apart = replace(place, fresh=room / FRESH)
            try:
                one = within_walls(_draw_and_list, bank, apart, job, room=room, often=True)
            except (FellError, WallError):
                continue
            for name in one.changed:
                goal = place.fresh / name
                goal.parent.mkdir(parents=True, exist_ok=True)
                (apart.fresh / name).replace(goal)
        progress(done, len(wanted))
        yield one


def _draw_and_list(bank: Bank, place: Place, job: tuple[str, Sequence[str]]) -> Drawn:
    """A unit drawn; one that is out of shape, only if the bank's own pages can list it."""
    from build_tools.building.shared_files import shared_files

    one = _draw_one(bank, place, job)
    if check_shape(read_unit_folder(place.content, job[0])):
        shared_files(bank, [read_listed(one.listed)])
    return one


def read_unit(content: Path, slug: str) -> Unit:
    """The unit in the folder `slug`, which checking found sound."""
    folder = read_unit_folder(content, slug)
    if folder.unit is None or any(one.rule != ODD for one in folder.problems):
        raise UnitGoneError(f"units/{slug} was changed while it was read; run this again")
    return build_unit(slug, folder.unit, folder.lessons, folder.media)


def _counted(results: Iterator[Drawn], total: int, progress: Progress) -> Iterator[Drawn]:
    for done, one in enumerate(results, 1):
        progress(done, total)
        yield one


def _draw_one(bank: Bank, place: Place, job: tuple[str, Sequence[str]]) -> Drawn:
    slug, leads = job
    unit = read_unit(place.content, slug)
    files = unit_files(bank, unit, place.content, leads, keep=place.keep)
    changed = write_changed(files, place.out, place.fresh)
    said = listed(bank, unit)
    return Drawn(slug, digest_of(said), kept_listed(said), tuple(files), changed)


def _start() -> None:
    """What was loaded before a worker started is no rubbish, and is never searched again."""
    from build_tools.lifeline.workers import end_with_parent

    end_with_parent()
    gc.freeze()
    gc.set_threshold(BETWEEN_COLLECTIONS)
