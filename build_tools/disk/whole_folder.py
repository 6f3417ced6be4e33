"""Put a finished folder in the place of an old one, so that one of the two always stands."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from build_tools.disk.scratch import WITHIN, left_behind, scratch

_OLD = "old"


@contextmanager
def staged(target: Path) -> Iterator[Path]:
    """Give a new folder beside `target`; when the work inside ends well, it becomes `target`.

    When the work fails, `target` is left as it was and the new folder is removed.
    """
    target.parent.mkdir(parents=True, exist_ok=True)
    _bring_back(target)
    with scratch(target.name, beside=target.parent) as room:
        fresh, old = room / "fresh", room / _OLD
        fresh.mkdir()
        yield fresh
        if target.exists():
            target.replace(old)
        try:
            fresh.replace(target)
        except OSError:
            with suppress(OSError):
                old.replace(target)
            raise


def _bring_back(target: Path) -> None:
    """Where a run was killed between its two renames, the old folder has its name again."""
    for old in target.parent.glob(f"{left_behind(target.name)}*/{WITHIN}/{_OLD}"):
        if not target.exists():
            old.replace(target)
