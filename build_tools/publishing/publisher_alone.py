"""One publisher at a time in a folder, and what stops it told in words."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path

from filelock import FileLock, Timeout

from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.shared_folder import HeldFolder, held, refuse_link
from build_tools.publishing.trouble import CannotPublishError, told

LOCK = ".publishing.lock"
LOCK_SECONDS = 2.0


def told_there(target: Path) -> AbstractContextManager[None]:
    """Faults of the disk in words, with the edition that readers have by then."""

    def current() -> str | None:
        pointer = read_pointer(target)
        return pointer.current if pointer else None

    return told(target, current)


@contextmanager
def alone_in(target: Path) -> Iterator[HeldFolder]:
    """Hold the folder against a second publisher; the system lets go when a process dies."""
    if not target.is_dir():
        if target.exists():
            raise CannotPublishError(f"{target} is a file; give the name of a folder")
        target.mkdir()
    refuse_link(target / LOCK)
    try:
        with FileLock(target / LOCK, timeout=LOCK_SECONDS):
            yield held(target)
    except Timeout as error:
        raise CannotPublishError(
            f"{target}: somebody else is publishing there just now; nothing was changed. "
            "Try again in a minute"
        ) from error
