"""What each unit of a bank covers, kept, so that only units that changed are read."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from functools import partial
from pathlib import Path

from build_tools.building.drawing import FEW, read_unit
from build_tools.building.input_keys import software_digest
from build_tools.building.kept_answers import read_kept, write_kept
from build_tools.views.teaching.covers import Covers, covers

_Kept = dict[str, tuple[str, Covers]]
"""By its folder, a unit's digest and what it covers."""


def kept_covers(content: Path, digests: Mapping[str, str], file: Path) -> tuple[Covers, ...]:
    """What each unit of `digests` covers; the answers are kept in `file` for the next time."""
    software = software_digest()
    kept = read_kept(file, software)
    before: _Kept = kept if isinstance(kept, dict) else {}
    stands = {s: before[s] for s, digest in digests.items() if before.get(s, ("",))[0] == digest}
    fresh = [slug for slug in digests if slug not in stands]
    found = stands | {one.slug: (digests[one.slug], one) for one in _covers_of(content, fresh)}
    if fresh or stands.keys() != before.keys():
        write_kept(file, software, found)
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
