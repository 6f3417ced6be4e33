"""Publishing a bank without errors as the next edition in a folder that others read."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from build_tools.building.progress import Progress, no_progress
from build_tools.building.site import Wanted, build_site
from build_tools.disk.scratch import scratch
from build_tools.misuse import Misuse
from build_tools.publishing.edition_folders import editions_in
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import Published, publish


@dataclass(frozen=True, slots=True)
class Kept:
    """The editions kept in a folder, oldest first, and the one that readers get."""

    editions: tuple[str, ...]
    current: str


def refuse_folder(content: Path, target: Path, keep: int) -> None:
    """Raise Misuse where the folders lie in one another, or too few editions would be kept."""
    if content.is_relative_to(target) or target.is_relative_to(content):
        raise Misuse(f"{target} and {content} lie in one another; publish into another folder")
    if keep < 2:
        raise Misuse("keep at least 2 editions, so that readers of the last one can finish")


def publish_site(
    wanted: Wanted, target: Path, keep: int, progress: Progress = no_progress
) -> Published:
    """Build the site that is `wanted` and publish it in `target`.

    Raises CannotPublishError with readers still at the edition they had.
    """
    with scratch("edition") as room:
        site = room / "site"
        build_site(wanted, site, None, progress)
        return publish(site, target, wanted.settings.as_of, wanted.settings.name, keep)


def kept_in(target: Path) -> Kept | None:
    """What is kept in the folder `target`; None where nothing has been published there yet."""
    pointer, editions = read_pointer(target), editions_in(target)
    return Kept(tuple(editions), pointer.current) if pointer and editions else None
