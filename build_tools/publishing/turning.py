"""Turning the pointer: from then on readers get another edition."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from build_tools.publishing.digests import read_manifest
from build_tools.publishing.edition_folders import EDITIONS, editions_in, order_of
from build_tools.publishing.editions_kept import in_words
from build_tools.publishing.entry_pages import pages_listed, write_plain
from build_tools.publishing.pointer import Pointer, read_copy, read_pointer, replace_pointer
from build_tools.publishing.shared_folder import HeldFolder


def turn(target: HeldFolder, name: str, title: str, known: set[str], moment: datetime) -> Pointer:
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
        max(last_number(target.path), order_of(name)[0]),
        {edition: day for edition, day in left.items() if edition in kept},
    )
    replace_pointer(target, turned)
    write_plain(target, name, title)
    return turned


def last_number(target: Path) -> int:
    """The highest number that the pointer or its copy knows of."""
    return max((one.last for one in (read_pointer(target), read_copy(target)) if one), default=0)
