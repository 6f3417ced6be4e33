"""What can stop a publication, in a reader's words."""

from __future__ import annotations

import errno
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

_FULL = {errno.ENOSPC, errno.EDQUOT} if hasattr(errno, "EDQUOT") else {errno.ENOSPC}
_REFUSED = {errno.EACCES, errno.EPERM, errno.EROFS}
_GONE = {errno.ENOENT, errno.ENOTDIR, errno.ENODEV, errno.ENXIO, errno.ESTALE, errno.EHOSTDOWN}


class CannotPublishError(Exception):
    """Publishing stopped, and readers have a whole edition; the text says which and what to do."""


@contextmanager
def told(folder: Path, current: Callable[[], str | None]) -> Iterator[None]:
    """Turn a fault of the disk or the network inside the block into words about `folder`.

    `current` gives the edition that readers have, and None where it cannot be read.
    """
    before = current()
    try:
        yield
    except OSError as error:
        words = in_words(error, folder, readers_have(before, current()))
        raise CannotPublishError(words) from error


def readers_have(before: str | None, now: str | None) -> str:
    """What readers have after a run that stopped, by the edition before it and the one now."""
    if before is None and now is None:
        return "there is no edition for readers yet"
    if now == before:
        return "readers still have the edition they had"
    if now is None:
        return "readers have a whole edition, the one they had or the next"
    return f"readers have the edition {now} already, whole, and what comes after it was left undone"


def in_words(error: OSError, folder: Path, readers: str) -> str:
    """What happened, what `readers` have, and what to do."""
    if error.errno in _FULL:
        happened, mend = "the disk is full", "make room there, or keep fewer editions with --keep"
    elif error.errno in _REFUSED:
        happened = f"writing is not allowed ({error.filename})"
        mend = "ask for the right to write there, or close the program that holds the file"
    elif error.errno in _GONE:
        happened = f"a folder or file went away ({error.filename})"
        mend = "connect the share or the stick again"
    elif error.errno == errno.ENAMETOOLONG:
        happened, mend = f"a name is too long ({error.filename})", "publish into a shorter path"
    else:
        happened, mend = f"the disk or network said: {error}", "look at the disk or the network"
    return f"{folder}: {happened}; {readers}. To mend it, {mend}, then run the same command again"
