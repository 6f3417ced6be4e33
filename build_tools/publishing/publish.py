"""Publishing an edition into a folder that others read, going back, and looking at what is there.

The order of the steps is what keeps readers safe. A new edition is copied in whole beside the
old; then the addresses of its new pages are announced as not there yet; then their entry pages
are written; then the pointer turns, in one step. Wherever a run is killed, the pointer names a
whole edition, and every entry page leads to a page of it or says that it does not.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from filelock import FileLock, Timeout

from build_tools.publishing.digests import digests_of, faults, read_manifest
from build_tools.publishing.editions import (
    copy_in,
    editions_in,
    keep_newest,
    next_name,
    order_of,
    sweep,
)
from build_tools.publishing.entry_pages import (
    EDITIONS,
    entries_in,
    is_entry_page,
    pages_of,
    write_entries,
    write_plain,
)
from build_tools.publishing.pointer import Pointer, read_pointer, replace_pointer
from build_tools.publishing.trouble import CannotPublishError, told
from build_tools.stray_files import is_stray

LOCK = ".publishing.lock"
LOCK_SECONDS = 2.0
KEEP = 5


@dataclass(frozen=True, slots=True)
class Published:
    """What a publication did: the current edition, whether it is new, and what was taken out."""

    edition: str
    new: bool
    taken_out: tuple[str, ...] = ()


def publish(site: Path, target: Path, dated: str, title: str, keep: int = KEEP) -> Published:
    """Publish the built `site` in `target` as the next edition, and turn the pointer to it.

    `dated` is the date that the bank gives itself, `title` the bank's name, `keep` how many
    editions stay. Raises CannotPublishError with readers still at the edition they had.
    """
    with told(target), _alone_in(target):
        _refuse_strange(target, pages_of(site))
        pointer = read_pointer(target)
        had = pointer.had if pointer else ()
        sweep(target, had)
        digests = digests_of(site)
        if pointer and read_manifest(target / EDITIONS / pointer.current) == digests:
            write_plain(target, pointer.current, title)
            return Published(pointer.current, new=False)
        name = next_name(target, dated)
        copy_in(site, target, name, digests)
        pages = pages_of(target / EDITIONS / name)
        known = set(entries_in(target))
        if pointer:
            later = set(pages) - known
            announced = tuple({*pointer.missing, *later})
            replace_pointer(target, replace(pointer, missing=announced))
        write_entries(target, pages, title)
        _turn(target, name, title, (*had, name), known | set(pages))
        return Published(name, new=True, taken_out=keep_newest(target, keep, name))


def roll_back(target: Path, to: str | None = None) -> str:
    """Turn the pointer to the edition before the current one, or to the one named `to`."""
    with told(target), _alone_in(target):
        pointer = read_pointer(target)
        kept = editions_in(target)
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
        _turn(target, to, pointer.title, pointer.had, set(entries_in(target)))
        return to


def verify(target: Path) -> list[str]:
    """What is wrong in a published folder, a line each; empty where readers get whole pages."""
    with told(target):
        pointer = read_pointer(target)
        if pointer is None:
            return [f"{target}: the pointer current.js is missing or cannot be read"]
        kept = editions_in(target)
        found = [line for name in kept for line in faults(target / EDITIONS / name)]
        if pointer.current not in kept:
            return [*found, f"{target}: the current edition {pointer.current} is not there"]
        held = set(pages_of(target / EDITIONS / pointer.current))
        entries = set(entries_in(target))
        found += [f"{page} has no entry page" for page in sorted(held - entries)]
        lost = entries - held - set(pointer.missing)
        found += [f"{page} leads to no page of the current edition" for page in sorted(lost)]
        return found


def _turn(target: Path, name: str, title: str, had: tuple[str, ...], entries: set[str]) -> None:
    """Point to the edition `name`; `entries` are all the pages that have an entry page."""
    missing = entries - set(pages_of(target / EDITIONS / name))
    kept = {*had} & {*editions_in(target)}
    replace_pointer(target, Pointer(name, title, tuple(kept), tuple(missing)))
    write_plain(target, name, title)


def _refuse_strange(target: Path, pages: tuple[str, ...]) -> None:
    """Stop before anything is written where the folder holds something other than editions."""
    ours = (target / EDITIONS).is_dir()
    here = (path.name for path in target.iterdir() if path.name != LOCK)
    others = [name for name in here if not is_stray(name)]
    if others and not ours:
        raise CannotPublishError(
            f"{target} holds other things, such as {sorted(others)[0]}; publish into an empty "
            "folder, or into a folder inside it"
        )
    for page in pages:
        path = target / page
        if path.exists() and not is_entry_page(path):
            raise CannotPublishError(
                f"{path} is somebody else's page and stands where {page} wants its entry page; "
                "move it, or publish into another folder"
            )


@contextmanager
def _alone_in(target: Path) -> Iterator[None]:
    """Hold the folder against a second publisher; the system lets go when a process dies."""
    if not target.is_dir():
        if target.exists():
            raise CannotPublishError(f"{target} is a file; give the name of a folder")
        target.mkdir()
    try:
        with FileLock(target / LOCK, timeout=LOCK_SECONDS):
            yield
    except Timeout as error:
        raise CannotPublishError(
            f"{target}: somebody else is publishing there just now; nothing was changed. "
            "Try again in a minute"
        ) from error
