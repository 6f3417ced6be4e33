"""`publish`, `roll-back`, `editions`, `verify`: editions in a folder that others read."""

from __future__ import annotations

import tempfile
from pathlib import Path

from build_tools.building.site import build_site
from build_tools.commands.bank_to_build import checked_for_building
from build_tools.misuse import Misuse
from build_tools.publishing.editions import editions_in
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import KEEP, publish, roll_back, verify
from build_tools.publishing.trouble import CannotPublishError


def run(content: Path, target: Path, keep: int = KEEP) -> int:
    """Build the bank in `content` and publish it in `target` as the next edition.

    Returns 0 when it is published or was already; 1 when errors in the bank, the disk or another
    publisher stand in the way, and then readers still have the edition they had.
    """
    _refuse_folders(content, target, keep)
    checked = checked_for_building(content, "nothing was published, and the last edition stands")
    if checked is None:
        return 1
    bank, _ = checked
    with tempfile.TemporaryDirectory(prefix="bank-edition-") as room:
        site = Path(room) / "site"
        site.mkdir()
        build_site(bank, content, site)
        try:
            done = publish(site, target, bank.as_of, bank.name, keep)
        except CannotPublishError as stopped:
            print(stopped)
            return 1
    if not done.new:
        print(f"the current edition {done.edition} has the same pages; nothing to publish")
        return 0
    print(f"published {done.edition}: give readers {(target / 'index.html').as_posix()}")
    if done.taken_out:
        print(f"taken out, since {keep} editions are kept: {', '.join(done.taken_out)}")
    return 0


def go_back(target: Path, to: str | None) -> int:
    """Turn readers back to the edition before the current one, or to the one named `to`."""
    try:
        edition = roll_back(_existing(target), to)
    except CannotPublishError as stopped:
        print(stopped)
        return 1
    print(f"readers now get {edition}")
    return 0


def list_editions(target: Path) -> int:
    """List the editions kept in `target`, oldest first, and say which readers get."""
    pointer = read_pointer(_existing(target))
    kept = editions_in(target)
    if pointer is None or not kept:
        print(f"{target}: nothing has been published there yet")
        return 1
    for name in kept:
        print(f"{name}  readers get this one" if name == pointer.current else name)
    return 0


def look(target: Path) -> int:
    """Read every file of every edition again and compare it with what was published."""
    try:
        wrong = verify(_existing(target))
    except CannotPublishError as stopped:
        wrong = [str(stopped)]
    for line in wrong:
        print(line)
    if wrong:
        print("publish again to get a whole edition, or roll-back to an earlier one")
        return 1
    kept = editions_in(target)
    print(f"{len(kept)} edition{'' if len(kept) == 1 else 's'}, every file as it was published")
    return 0


def _existing(target: Path) -> Path:
    if not target.is_dir():
        raise Misuse(f"{target} is not a folder; name the folder that readers open")
    return target


def _refuse_folders(content: Path, target: Path, keep: int) -> None:
    if content.is_relative_to(target) or target.is_relative_to(content):
        raise Misuse(f"{target} and {content} lie in one another; publish into another folder")
    if keep < 2:
        raise Misuse("keep at least 2 editions, so that readers of the last one can finish")
