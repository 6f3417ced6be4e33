"""What can stop a publication, in a reader's words."""

from __future__ import annotations

import errno
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

_FULL = {errno.ENOSPC, errno.EDQUOT} if hasattr(errno, "EDQUOT") else {errno.ENOSPC}
_REFUSED = {errno.EACCES, errno.EPERM, errno.EROFS}
_GONE = {errno.ENOENT, errno.ENOTDIR, errno.ENODEV, errno.ENXIO, errno.ESTALE, errno.EHOSTDOWN}


class CannotPublishError(Exception):
    """Publishing stopped before anything that readers see had changed; the text says what to do."""


@contextmanager
def told(folder: Path) -> Iterator[None]:
    """Turn a fault of the disk or the network inside the block into words about `folder`."""
    try:
        yield
    except OSError as error:
        raise CannotPublishError(in_words(error, folder)) from error


def in_words(error: OSError, folder: Path) -> str:
    """What happened, that readers still have the edition they had, and what to do."""
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
    return (
        f"{folder}: {happened}; readers still have the edition they had. To mend it, {mend}, "
        "then run the same command again"
    )
