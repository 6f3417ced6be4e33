"""Going back to an earlier edition in a folder that others read."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from build_tools.publishing.digests import faults
from build_tools.publishing.edition_folders import EDITIONS, editions_in, order_of
from build_tools.publishing.pages_known import known_pages
from build_tools.publishing.pointer import read_copy, read_pointer
from build_tools.publishing.publisher_alone import alone_in, told_there
from build_tools.publishing.trouble import CannotPublishError
from build_tools.publishing.turning import turn


def roll_back(target: Path, to: str | None = None, now: datetime | None = None) -> str:
    """Turn the pointer to the edition before the current one, or to the one named `to`."""
    with told_there(target), alone_in(target) as folder:
        pointer = read_pointer(target) or read_copy(target)
        kept = editions_in(target)
        if pointer is None and kept:
            raise CannotPublishError(
                f"{target}: which edition readers have cannot be read. Run `mend {target}`, which "
                "gives them the newest whole one, then run this again"
            )
        if pointer is None:
            raise CannotPublishError(f"{target}: nothing has been published there yet")
        if to is None:
            before = [name for name in kept if order_of(name) < order_of(pointer.current)]
            if not before:
                raise CannotPublishError(
                    f"{target}: {pointer.current} is the oldest edition kept there, "
                    "so there is none to go back to"
                )
            to = before[-1]
        if to not in kept:
            raise CannotPublishError(
                f"{target}: there is no edition {to}; those kept are {', '.join(kept)}"
            )
        if wrong := faults(target / EDITIONS / to):
            raise CannotPublishError(f"{target}: the edition {to} is not whole: {wrong[0]}")
        turn(folder, to, pointer.title, known_pages(target), now or datetime.now(UTC))
        folder.sure()
        return to
