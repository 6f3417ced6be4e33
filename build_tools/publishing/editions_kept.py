"""Which editions stay in the folder that others read, and for how long."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

from build_tools.publishing.digests import MANIFEST
from build_tools.publishing.edition_folders import EDITIONS, editions_in
from build_tools.publishing.pointer import Pointer

KEEP = 5
"""So many editions stay at least, the newest, unless the publisher asks for another number."""
DAYS = 14
"""An edition that readers had is kept so long at least: pages that are open stay whole."""
_FORM = "%Y-%m-%dT%H:%M:%SZ"


def to_take_out(
    target: Path, pointer: Pointer, keep: int, before: str | None, now: datetime, days: int = DAYS
) -> tuple[str, ...]:
    """The editions that can go: not among the newest `keep`, and left `days` ago or more.

    Neither the current edition goes nor the one that readers had `before` this publication.
    """
    others = [name for name in editions_in(target) if name not in (pointer.current, before)]
    kept = 1 + (before is not None and before != pointer.current)
    spare = others[: max(0, len(others) - max(0, keep - kept))]
    since = timedelta(days=days)
    return tuple(name for name in spare if now - _left(target, name, pointer) >= since)


def in_words(moment: datetime) -> str:
    """A moment as the pointer keeps it."""
    return moment.astimezone(UTC).strftime(_FORM)


def _left(target: Path, name: str, pointer: Pointer) -> datetime:
    """When readers last had an edition; where nobody wrote it down, when it was copied in."""
    try:
        said = datetime.strptime(pointer.left.get(name, ""), _FORM)
    except ValueError:
        manifest = target / EDITIONS / name / MANIFEST
        return datetime.fromtimestamp(manifest.stat().st_mtime, UTC)
    return said.replace(tzinfo=UTC)
