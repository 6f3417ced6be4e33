"""What was built last time into a folder: kept, so that the next build does only what changed.

A file whose size and time of change are as they were when it was put there is taken to hold what
it held. What cannot be read, or was kept by other software, counts as nothing.
"""

from __future__ import annotations

import hashlib
import io
import os
import pickle
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

from build_tools.building.kept_answers import KeptReader, read_kept, write_kept
from build_tools.disk.stray_files import is_stray

if TYPE_CHECKING:
    from build_tools.pages.assemble import Listed

MOST_KEPT = 8
"""Of so many folders it is kept; those built into longest ago make room."""
SUFFIX = ".site"

Stamp = tuple[int, int]
"""A file's size in bytes and its time of change in nanoseconds."""


@dataclass(frozen=True, slots=True)
class UnitMade:
    """One unit as it was published, by the digest of all it was made from."""

    key: str
    said: str
    """A digest of what lists say."""
    listed: bytes
    files: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SiteRecord:
    """What was built: each unit by its folder, the shared files' digest, each file's stamp."""

    units: Mapping[str, UnitMade] = field(default_factory=dict)
    shared_key: str = ""
    shared: tuple[str, ...] = ()
    stamps: Mapping[str, Stamp] = field(default_factory=dict)


def kept_listed(listed: Listed) -> bytes:
    """What lists say of a unit, to be kept; it is read again only where a list is drawn."""
    return pickle.dumps(listed, pickle.HIGHEST_PROTOCOL)


def read_listed(kept: bytes) -> Listed:
    """The same again."""
    from build_tools.pages.assemble import Listed

    read = KeptReader(io.BytesIO(kept)).load()
    if not isinstance(read, Listed):
        raise pickle.UnpicklingError("this is not what lists say of a unit")
    return read


def record_file(kept: Path, content: Path, out: Path) -> Path:
    """Where the record of building `content` into `out` is kept, below the folder `kept`."""
    said = f"{content}\0{out}".encode("utf-8", "surrogateescape")
    return kept / f"{hashlib.sha256(said).hexdigest()[:16]}{SUFFIX}"


def read_record(file: Path | None, software: str) -> SiteRecord:
    """The record in `file`; an empty one where there is none by this `software`."""
    if file is None:
        return SiteRecord()
    record = read_kept(file, software)
    return record if isinstance(record, SiteRecord) else SiteRecord()


def write_record(file: Path | None, software: str, record: SiteRecord) -> None:
    """Keep the record; a folder that cannot be written to only costs time."""
    if file is None:
        return
    write_kept(file, software, record)
    with suppress(OSError):
        for oldest in sorted(file.parent.glob(f"*{SUFFIX}"), key=_age)[MOST_KEPT:]:
            oldest.unlink()


def stamps_in(folder: Path) -> dict[str, Stamp]:
    """The stamp of each file below `folder` by its path with `/`, without what nobody wrote."""
    found: dict[str, Stamp] = {}
    waiting = [("", str(folder))]
    while waiting:
        inside, path = waiting.pop()
        with suppress(OSError), os.scandir(path) as entries:
            for entry in entries:
                if is_stray(entry.name):
                    continue
                if entry.is_dir(follow_symlinks=False):
                    waiting.append((f"{inside}{entry.name}/", entry.path))
                    continue
                stat = entry.stat(follow_symlinks=False)
                found[inside + entry.name] = (stat.st_size, stat.st_mtime_ns)
    return found


def _age(path: Path) -> float:
    return -path.stat().st_mtime
