"""Publishing an edition into a folder that others read.

The order of the steps is what keeps readers safe. What is damaged is mended first. A new edition is
copied in whole beside the old; then the addresses of its new pages are announced as not there yet;
then their entry pages are written; then the pointer turns, in one step. Wherever a run is killed,
the pointer names a whole edition, and every entry page leads to a page of it or says that it does
not.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from build_tools.disk.stray_files import is_stray
from build_tools.publishing.digests import digests_of, read_manifest
from build_tools.publishing.edition_folders import (
    EDITIONS,
    copy_in,
    editions_in,
    next_name,
    order_of,
    sweep_never_had,
)
from build_tools.publishing.editions_kept import DAYS, KEEP, to_take_out
from build_tools.publishing.entry_pages import (
    is_entry_page,
    pages_listed,
    pages_of,
    write_entries,
    write_plain,
)
from build_tools.publishing.mend import mend
from build_tools.publishing.pages_known import known_pages
from build_tools.publishing.pointer import Pointer, read_pointer, replace_pointer
from build_tools.publishing.publisher_alone import LOCK, alone_in, told_there
from build_tools.publishing.shared_folder import HeldFolder
from build_tools.publishing.signposts import take_out
from build_tools.publishing.trouble import CannotPublishError
from build_tools.publishing.turning import last_number, turn


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
    with told_there(target), alone_in(target) as folder:
        _refuse_strange(target, pages_of(site))
        digests = digests_of(site)
        mended = mend(folder, site, title).done if (target / EDITIONS).is_dir() else ()
        pointer = read_pointer(target)
        ready = _ready(target, digests)
        name = ready or next_name(target, dated, last_number(target))
        if pointer:
            sweep_never_had(folder, pointer.last, ready)
        if pointer and read_manifest(target / EDITIONS / pointer.current) == digests:
            _retitle(folder, pointer, title)
            folder.sure()
            return Published(pointer.current, new=False, mended=mended)
        if ready is None:
            copy_in(site, folder, name, digests)
        pages = pages_listed(digests)
        known = known_pages(target) | set(pages)
        if pointer:
            replace_pointer(
                folder, replace(pointer, coming=tuple(set(pages) - _known_now(pointer, target)))
            )
        write_entries(folder, known, title)
        before = pointer.current if pointer else None
        moment = now or datetime.now(UTC)
        turned = turn(folder, name, title, known, moment)
        gone = to_take_out(target, turned, keep, before, moment, days)
        taken_out = take_out(folder, gone, title)
        folder.sure()
        return Published(name, new=True, taken_out=taken_out, mended=mended)


def _retitle(target: HeldFolder, pointer: Pointer, title: str) -> None:
    """Where only the bank's name changed, the pages that lead to the edition say the new one."""
    if pointer.title == title:
        return
    write_entries(target, known_pages(target.path), title)
    replace_pointer(target, replace(pointer, title=title))
    write_plain(target, pointer.current, title)


def _ready(target: Path, digests: dict[str, str]) -> str | None:
    """An edition with these very files that a killed run copied in and never turned to."""
    kept, pointer = editions_in(target), read_pointer(target)
    if not kept or pointer is None or order_of(kept[-1])[0] <= pointer.last:
        return None
    return kept[-1] if read_manifest(target / EDITIONS / kept[-1]) == digests else None


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
    known = known_pages(target)
    for page in pages:
        path = target / page
        if path.exists() and page not in known and not is_entry_page(path):
            raise CannotPublishError(
                f"{path} is somebody else's page and stands where {page} wants its entry page; "
                "move it, or publish into another folder"
            )
