"""A site built into a folder by doing what changed: the same bytes as building it anew.

What a unit's pages are made from is the software, the bank's settings, the unit's own files, and
which of its neighbours are published; the shared pages, from all that lists say of the units. A
digest of each is kept with what was made from it. Where it is the same, and the files that were
made lie there as they were put, nothing is read, drawn or written.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from itertools import chain
from pathlib import Path
from typing import TYPE_CHECKING

from build_tools.building.input_keys import digest_of, settings_digest, software_digest
from build_tools.building.progress import Progress, no_progress
from build_tools.building.site_record import (
    SiteRecord,
    Stamp,
    UnitMade,
    read_listed,
    read_record,
    stamps_in,
    write_record,
)
from build_tools.disk.in_place import FRESH, changing, finish_left, put, write_changed
from build_tools.model.bank import Bank

if TYPE_CHECKING:
    from build_tools.building.drawing import Drawn


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is to be in a site."""

    settings: Bank
    """The bank; its units are not looked at."""
    content: Path
    units: Mapping[str, str]
    """The units to publish by their folders, each with a digest of its files."""
    leads: Mapping[str, tuple[str, ...]]
    """For each of them, those among them that its pages lead to."""
    standing: frozenset[str] = frozenset()
    """Units whose pages of last time stay as they are, if there are any."""
    faulty: frozenset[str] = frozenset()
    """Those of `units` that have errors: where one cannot be drawn, its pages of last time stay."""
    keep: bool = False
    """Whether each lesson is there as one file to keep, and as a word-processor file to edit."""
    more: Mapping[str, bytes] = field(default_factory=dict)
    """Files besides, by their paths."""


@dataclass(frozen=True, slots=True)
class Built:
    """What was done: the files written and those taken away, by their paths in the site."""

    units: int
    written: tuple[str, ...]
    gone: tuple[str, ...]
    behind: frozenset[str] = frozenset()
    """The faulty units whose pages, if there are any, are those of last time."""


@dataclass(frozen=True, slots=True)
class _Plan:
    """What stands of last time, and what has to be drawn."""

    keys: Mapping[str, str]
    standing: Mapping[str, UnitMade]
    stale: Mapping[str, tuple[str, ...]]
    whole: Mapping[str, UnitMade]
    """All of last time whose files lie there as they were put."""


def build_site(
    wanted: Wanted, out: Path, record: Path | None = None, progress: Progress = no_progress
) -> Built:
    """Build what is `wanted` into the folder `out`; what is kept of it lies in the file `record`.

    Until all that is new is made, `out` stands as it was; a run killed after that is finished by
    the next. Raises Misuse where a unit is changed at the very moment.
    """
    finish_left(out)
    software = software_digest()
    before, here = read_record(record, software), stamps_in(out)
    settings = settings_digest(wanted.content)
    plan = _planned(wanted, settings, before, here)
    shared_key = _shared_key(settings, plan.standing.values())
    if not plan.stale and _stands(before, shared_key, here) and not _differ(wanted.more, out):
        names = _names(before.shared, plan.standing.values(), wanted.more)
        if names == here.keys():
            if plan.standing != before.units:
                again = SiteRecord(plan.standing, shared_key, before.shared, here)
                write_record(record, software, again)
            return Built(len(wanted.units), (), ())
    # Loading what draws takes longer than finding that nothing has to be drawn.
    from build_tools.building.drawing import Place, draw_faulty, draw_units
    from build_tools.building.shared_files import shared_files

    with changing(out) as room:
        fresh = room / FRESH
        place = Place(wanted.content, out, fresh, wanted.keep)
        made, written = dict(plan.standing), list[str]()
        sound = {slug: leads for slug, leads in plan.stale.items() if slug not in wanted.faulty}
        faulty = {slug: leads for slug, leads in plan.stale.items() if slug in wanted.faulty}
        for one in chain(
            draw_units(wanted.settings, sound, place, progress),
            draw_faulty(wanted.settings, faulty, place, progress),
        ):
            made[one.slug] = _made(one, plan.keys)
            written += one.changed
        behind = faulty.keys() - made.keys()
        made |= {slug: plan.whole[slug] for slug in behind if slug in plan.whole}
        made = {slug: made[slug] for slug in sorted(made)}
        shared_key = _shared_key(settings, made.values())
        shared = before.shared
        if not _stands(before, shared_key, here):
            files = shared_files(
                wanted.settings, [read_listed(one.listed) for one in made.values()]
            )
            shared = tuple(files)
            written += write_changed(files, out, fresh)
        written += write_changed(wanted.more, out, fresh)
        gone = tuple(sorted(here.keys() - _names(shared, made.values(), wanted.more)))
        stamps = _stamps(here, gone, written, fresh)
        put(room, out, gone)
    write_record(record, software, SiteRecord(made, shared_key, shared, stamps))
    return Built(len(wanted.units), tuple(written), gone, frozenset(behind))


def _planned(wanted: Wanted, settings: str, before: SiteRecord, here: Mapping[str, Stamp]) -> _Plan:
    keys = {
        slug: digest_of(settings, digest, wanted.leads.get(slug, ()), wanted.keep)
        for slug, digest in wanted.units.items()
    }
    whole = {
        slug: one
        for slug, one in before.units.items()
        if all(here.get(name) == before.stamps.get(name, ()) for name in one.files)
    }
    standing = {slug: one for slug, one in whole.items() if slug in wanted.standing}
    standing |= {slug: whole[slug] for slug, key in keys.items() if _key(whole, slug) == key}
    stale = {slug: wanted.leads.get(slug, ()) for slug in sorted(keys) if slug not in standing}
    return _Plan(keys, {slug: standing[slug] for slug in sorted(standing)}, stale, whole)


def _key(made: Mapping[str, UnitMade], slug: str) -> str:
    return made[slug].key if slug in made else ""


def _made(one: Drawn, keys: Mapping[str, str]) -> UnitMade:
    return UnitMade(keys[one.slug], one.said, one.listed, one.files)


def _shared_key(settings: str, units: Iterable[UnitMade]) -> str:
    return digest_of(settings, [one.said for one in units])


def _stands(before: SiteRecord, shared_key: str, here: Mapping[str, Stamp]) -> bool:
    """Whether the shared files are as they would be made now."""
    whole = all(here.get(name) == before.stamps.get(name, ()) for name in before.shared)
    return before.shared_key == shared_key and whole


def _names(shared: Iterable[str], units: Iterable[UnitMade], more: Mapping[str, bytes]) -> set[str]:
    return {*shared, *more, *(name for one in units for name in one.files)}


def _differ(files: Mapping[str, bytes], out: Path) -> bool:
    return any(not (out / n).is_file() or (out / n).read_bytes() != d for n, d in files.items())


def _stamps(
    here: Mapping[str, Stamp], gone: Iterable[str], written: Iterable[str], fresh: Path
) -> dict[str, Stamp]:
    """The stamp of each file once it is in its place: moving it keeps its time."""
    stamps = dict(here)
    for name in gone:
        del stamps[name]
    for name in written:
        stat = (fresh / name).stat()
        stamps[name] = (stat.st_size, stat.st_mtime_ns)
    return stamps
