"""Publishing an edition into a folder that others read, and going back to an earlier one.

The order of the steps is what keeps readers safe. What is damaged is mended first. A new edition is
copied in whole beside the old; then the addresses of its new pages are announced as not there yet;
then their entry pages are written; then the pointer turns, in one step. Wherever a run is killed,
the pointer names a whole edition, and every entry page leads to a page of it or says that it does
not.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from filelock import FileLock, Timeout

from build_tools.disk.stray_files import is_stray
from build_tools.publishing.digests import digests_of, faults, read_manifest
from build_tools.publishing.edition_folders import (
    EDITIONS,
    copy_in,
    editions_in,
    gone_in,
    next_name,
    order_of,
    sweep_never_had,
)
from build_tools.publishing.entry_pages import (
    entries_in,
    is_entry_page,
    pages_listed,
    pages_of,
    write_entries,
    write_plain,
)
from build_tools.publishing.mend import Mended, look, mend
from build_tools.publishing.pointer import Pointer, read_copy, read_pointer, replace_pointer
from build_tools.publishing.shared_folder import HeldFolder, held, refuse_link
from build_tools.publishing.signposts import DAYS, in_words, pages_gone, take_out, to_take_out
from build_tools.publishing.trouble import CannotPublishError, told

LOCK = ".publishing.lock"
LOCK_SECONDS = 2.0
KEEP = 5


@dataclass(frozen=True, slots=True)
class Published:
    """What a publication did: the current edition, whether it is new, and what was taken out."""

    edition: str
    new: bool
    taken_out: tuple[str, ...] = ()
    mended: tuple[str, ...] = ()
    """What was damaged in the folder and is whole again, a line each."""


def publish(
    site: Path,
    target: Path,
    dated: str,
    title: str,
    keep: int = KEEP,
    *,
    days: int = DAYS,
    now: datetime | None = None,
) -> Published:
    """Publish the built `site` in `target` as the next edition, and turn the pointer to it.

    `dated` is the date that the bank gives itself, `title` the bank's name. The newest `keep`
    editions stay, the one that readers had until `now`, and each that they had in the last `days`
    days. Raises CannotPublishError with readers still at the edition they had.
    """
    with _told(target), _alone_in(target) as folder:
        _refuse_strange(target, pages_of(site))
        digests = digests_of(site)
        mended = mend(folder, site, title).done if (target / EDITIONS).is_dir() else ()
        pointer = read_pointer(target)
        ready = _ready(target, digests)
        name = ready or next_name(target, dated, _last(target))
        if pointer:
            sweep_never_had(folder, pointer.last, ready)
        if pointer and read_manifest(target / EDITIONS / pointer.current) == digests:
            _retitle(folder, pointer, title)
            folder.sure()
            return Published(pointer.current, new=False, mended=mended)
        if ready is None:
            copy_in(site, folder, name, digests)
        pages = pages_listed(digests)
        known = _known(target) | set(pages)
        if pointer:
            replace_pointer(
                folder, replace(pointer, coming=tuple(set(pages) - _known_now(pointer, target)))
            )
        write_entries(folder, known, title)
        before = pointer.current if pointer else None
        moment = now or datetime.now(UTC)
        turned = _turn(folder, name, title, known, moment)
        gone = to_take_out(target, turned, keep, before, moment, days)
        taken_out = take_out(folder, gone, title)
        folder.sure()
        return Published(name, new=True, taken_out=taken_out, mended=mended)


def roll_back(target: Path, to: str | None = None, now: datetime | None = None) -> str:
    """Turn the pointer to the edition before the current one, or to the one named `to`."""
    with _told(target), _alone_in(target) as folder:
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
        _turn(folder, to, pointer.title, _known(target), now or datetime.now(UTC))
        folder.sure()
        return to


def verify(target: Path) -> list[str]:
    """What is wrong in a published folder, a line each; empty where readers get whole pages."""
    with _told(target):
        return look(target)


def mend_folder(target: Path) -> Mended:
    """Mend a published folder from what is whole in it, without new pages."""
    with _told(target), _alone_in(target) as folder:
        if not editions_in(target) and not gone_in(target):
            raise CannotPublishError(f"{target}: nothing has been published there yet")
        mended = mend(folder)
        folder.sure()
        return mended


def _told(target: Path) -> AbstractContextManager[None]:
    """Faults of the disk in words, with the edition that readers have by then."""

    def current() -> str | None:
        pointer = read_pointer(target)
        return pointer.current if pointer else None

    return told(target, current)


def _turn(target: HeldFolder, name: str, title: str, known: set[str], moment: datetime) -> Pointer:
    """Point to the edition `name`; `known` are all the pages that have an entry page."""
    before = read_pointer(target.path)
    left = {**(before.left if before else {})}
    if before and before.current != name:
        left[before.current] = in_words(moment)
    left.pop(name, None)
    kept = editions_in(target.path)
    pages = set(pages_listed(read_manifest(target.path / EDITIONS / name) or ()))
    turned = Pointer(
        name,
        title,
        tuple(sorted(known - pages)),
        (),
        max(_last(target.path), order_of(name)[0]),
        {edition: day for edition, day in left.items() if edition in kept},
    )
    replace_pointer(target, turned)
    write_plain(target, name, title)
    return turned


def _retitle(target: HeldFolder, pointer: Pointer, title: str) -> None:
    """Where only the bank's name changed, the pages that lead to the edition say the new one."""
    if pointer.title == title:
        return
    write_entries(target, _known(target.path), title)
    replace_pointer(target, replace(pointer, title=title))
    write_plain(target, pointer.current, title)


def _ready(target: Path, digests: dict[str, str]) -> str | None:
    """An edition with these very files that a killed run copied in and never turned to."""
    kept, pointer = editions_in(target), read_pointer(target)
    if not kept or pointer is None or order_of(kept[-1])[0] <= pointer.last:
        return None
    return kept[-1] if read_manifest(target / EDITIONS / kept[-1]) == digests else None


def _last(target: Path) -> int:
    """The highest number that the pointer or its copy knows of."""
    return max((one.last for one in (read_pointer(target), read_copy(target)) if one), default=0)


def _known(target: Path) -> set[str]:
    """Every page that has an entry page, or had one."""
    pages = set(entries_in(target))
    for name in editions_in(target):
        pages |= set(pages_listed(read_manifest(target / EDITIONS / name) or ()))
    for name in gone_in(target):
        pages |= set(pages_gone(target / EDITIONS / name))
    return pages


def _known_now(pointer: Pointer, target: Path) -> set[str]:
    """The pages that readers can be led to, or are told of, as the pointer stands."""
    return set(pages_listed(read_manifest(target / EDITIONS / pointer.current) or ())) | {
        *pointer.missing
    }


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
    known = _known(target)
    for page in pages:
        path = target / page
        if path.exists() and page not in known and not is_entry_page(path):
            raise CannotPublishError(
                f"{path} is somebody else's page and stands where {page} wants its entry page; "
                "move it, or publish into another folder"
            )


@contextmanager
def _alone_in(target: Path) -> Iterator[HeldFolder]:
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
