"""A pack's file to its unit, or why not."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from pathlib import Path

from build_tools.packs.limits import MOST_PACK
from build_tools.packs.reading.bag_check import payload_of
from build_tools.packs.reading.contents import Pack, contents_of, refuse_strange_tags
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.unzipping import unzipped


def verified(path: Path) -> Pack:
    """The unit in the pack at `path`, nothing of it written.

    Raises RefusedError in a reader's words.
    """
    data = [_bytes_of(path)]
    digest = hashlib.sha512(data[0]).hexdigest()
    # What comes before each step has no name there, so that it is let go of.
    return replace(contents_of(_payload(unzipped(data.pop()))), sha512=digest)


def _payload(files: dict[str, bytes]) -> dict[str, bytes]:
    payload = payload_of(files)
    refuse_strange_tags(files)
    return payload


def _bytes_of(path: Path) -> bytes:
    try:
        with path.open("rb") as file:
            return file.read(MOST_PACK + 1)
    except OSError as error:
        raise RefusedError(f"it cannot be opened ({error.strerror})") from None
