"""Publishing a bank without errors as the next edition in a folder that others read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from build_tools.building.progress import Progress, no_progress
from build_tools.building.site import Wanted, build_site
from build_tools.comparing.change import WrittenUnit
from build_tools.disk.scratch import scratch
from build_tools.misuse import Misuse
from build_tools.publishing.edition_folders import editions_in
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import Published, publish
from build_tools.unit_editions.kept_with_pages import as_kept, place_of
from build_tools.unit_editions.next_number import WrongNumber, wrong_number
from build_tools.unit_editions.unit_texts import text_of_folder


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


def units_as_written(wanted: Wanted) -> dict[str, WrittenUnit]:
    """Each unit that is to be published, by its folder, as it is written."""
    read = {slug: text_of_folder(wanted.content / "units" / slug) for slug in wanted.units}
    # a unit whose files somebody changes at this moment is told of where the site is built
    return {slug: unit for slug, unit in read.items() if isinstance(unit, WrittenUnit)}


def wrong_numbers(
    content: Path, units: Mapping[str, WrittenUnit], target: Path
) -> tuple[WrongNumber, ...]:
    """Of the `units`, those whose changes call for another edition number than they carry."""
    found = (wrong_number(content, slug, unit, target) for slug, unit in units.items())
    return tuple(one for one in found if one is not None)


def publish_site(
    wanted: Wanted,
    units: Mapping[str, WrittenUnit],
    target: Path,
    keep: int,
    progress: Progress = no_progress,
) -> Published:
    """Build the site that is `wanted` and publish it in `target`.

    The `units` are kept beside their pages as they are written, for the next edition to be
    compared with. Raises CannotPublishError with readers still at the edition they had.
    """
    with scratch("edition") as room:
        site = room / "site"
        kept = {place_of(slug): as_kept(unit) for slug, unit in units.items()}
        build_site(replace(wanted, more={**wanted.more, **kept}), site, None, progress)
        return publish(site, target, wanted.settings.as_of, wanted.settings.name, keep)


def kept_in(target: Path) -> Kept | None:
    """What is kept in the folder `target`; None where nothing has been published there yet."""
    pointer, editions = read_pointer(target), editions_in(target)
    return Kept(tuple(editions), pointer.current) if pointer and editions else None
