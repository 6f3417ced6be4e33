"""A verified pack's unit laid out as files for a moment, so that what reads a bank can read it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from build_tools.disk.scratch import scratch
from build_tools.packs.reading.contents import Pack


@contextmanager
def laid_out(pack: Pack) -> Iterator[Path]:
    """A content folder with the unit of `pack` alone in `units/`; it is removed afterwards."""
    with scratch("pack-read") as room:
        folder = room / "units" / pack.slug
        for name, data in pack.unit_files.items():
            path = folder / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(data)
        yield room
