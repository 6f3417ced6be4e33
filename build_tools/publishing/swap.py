"""Put a finished folder in the place of an old one, so that one of the two always stands."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path


@contextmanager
def staged(target: Path) -> Iterator[Path]:
    """Give a new folder beside `target`; when the work inside ends well, it becomes `target`.

    When the work fails, `target` is left as it was and the new folder is removed.
    """
    target.parent.mkdir(parents=True, exist_ok=True)
    room = Path(tempfile.mkdtemp(prefix=f".{target.name}-", dir=target.parent))
    fresh, old = room / "fresh", room / "old"
    fresh.mkdir()
    try:
        yield fresh
        if target.exists():
            target.replace(old)
        try:
            fresh.replace(target)
        except OSError:
            with suppress(OSError):
                old.replace(target)
            raise
    finally:
        shutil.rmtree(room, ignore_errors=True)
