"""What each unit of a bank covers, kept, so that only units that changed are read."""

from __future__ import annotations

import os
import pickle
from collections.abc import Iterable, Mapping
from contextlib import suppress
from functools import partial
from pathlib import Path

from build_tools.building.drawing import FEW, read_unit
from build_tools.building.input_keys import software_digest
from build_tools.building.site_record import KeptReader
from build_tools.views.teaching.covers import Covers, covers

_Kept = dict[str, tuple[str, Covers]]
"""By its folder, a unit's digest and what it covers."""


def kept_covers(content: Path, digests: Mapping[str, str], file: Path) -> tuple[Covers, ...]:
    """What each unit of `digests` covers; the answers are kept in `file` for the next time."""
    software = software_digest()
    before = _read(file, software)
    stands = {s: before[s] for s, digest in digests.items() if before.get(s, ("",))[0] == digest}
    fresh = [slug for slug in digests if slug not in stands]
    found = stands | {one.slug: (digests[one.slug], one) for one in _covers_of(content, fresh)}
    if fresh or stands.keys() != before.keys():
        _write(file, software, found)
    return tuple(found[slug][1] for slug in sorted(found))


def _covers_of(content: Path, slugs: list[str]) -> Iterable[Covers]:
    work, cores = partial(_one, content), os.cpu_count() or 1
    if len(slugs) <= FEW or cores == 1:
        return [work(slug) for slug in slugs]
    from concurrent.futures import ProcessPoolExecutor

    from build_tools.lifeline.workers import end_with_parent

    with ProcessPoolExecutor(cores, initializer=end_with_parent) as pool:
        return list(pool.map(work, slugs, chunksize=8))


def _one(content: Path, slug: str) -> Covers:
    return covers(read_unit(content, slug))


def _read(file: Path, software: str) -> _Kept:
    try:
        with file.open("rb") as opened:
            said, kept = KeptReader(opened).load()
    # what was cut short or changed may fail in any of these ways
    except (OSError, pickle.UnpicklingError, ValueError, TypeError, AttributeError, EOFError,
            ImportError, IndexError, KeyError):  # fmt: skip
        return {}
    return kept if said == software and isinstance(kept, dict) else {}


def _write(file: Path, software: str, kept: _Kept) -> None:
    """Keep them; a folder that cannot be written to only costs time."""
    fresh = file.with_name(f"{file.name}.{os.getpid()}")
    with suppress(OSError):
        file.parent.mkdir(parents=True, exist_ok=True)
        fresh.write_bytes(pickle.dumps((software, kept), pickle.HIGHEST_PROTOCOL))
        fresh.replace(file)
