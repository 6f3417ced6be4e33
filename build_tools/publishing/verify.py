"""Looking at a published folder: whether every file is as it was published.

Nothing is believed that can be looked at: what the pointer or a list of files says is held against
the files themselves.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from build_tools.publishing.digests import faults, read_list, read_manifest
from build_tools.publishing.edition_folders import EDITIONS, MANIFESTS, editions_in
from build_tools.publishing.entry_pages import PLAIN, entries_in, plain_page, stable_files
from build_tools.publishing.pages_known import edition_pages
from build_tools.publishing.pointer import COPY, POINTER, read_copy, read_pointer
from build_tools.publishing.publisher_alone import told_there
from build_tools.publishing.shared_folder import is_link, read_file
from build_tools.publishing.signposts import faults_gone


def verify(target: Path) -> list[str]:
    """What is wrong in a published folder, a line each; empty where readers get whole pages."""
    with told_there(target):
        return _faults_in(target)


def _faults_in(target: Path) -> list[str]:
    found = [f"{name} is a link to another place" for name in _links(target)]
    pointer = read_pointer(target)
    kept = editions_in(target)
    found += [line for name in kept for line in faults(target / EDITIONS / name)]
    found += _faults_of_lists(target, kept)
    if pointer is None:
        return [*found, f"{target}: the pointer {POINTER} is missing or cannot be read"]
    found += faults_gone(target, pointer.title)
    if pointer.current not in kept:
        return [*found, f"{target}: the current edition {pointer.current} is not there"]
    held = set(edition_pages(target, pointer.current))
    wanted = held | set(pointer.missing)
    # A run that was cut off as it turned the pointer left the way without script as it was.
    plain = [plain_page(name, pointer.title) for name in kept]
    for name, data in stable_files(wanted, pointer.current, pointer.title).items():
        here = read_file(target / name)
        if here is None:
            fault = "has no entry page" if name in wanted else "is missing"
            found.append(f"{name} {fault}")
        elif here != data and here not in (plain if name == PLAIN else ()):
            found.append(f"{name} was changed")
    lost = {*entries_in(target)} - wanted - set(pointer.coming)
    found += [f"{page} leads to no page of the current edition" for page in sorted(lost)]
    if read_copy(target) is None:
        found.append(f"{COPY}, the copy of the pointer, is missing or cannot be read")
    return found


def _faults_of_lists(target: Path, kept: Iterable[str]) -> list[str]:
    found = []
    for name in kept:
        copy = read_list(target / MANIFESTS / f"{name}.txt")
        if copy is None or copy != read_manifest(target / EDITIONS / name):
            found.append(
                f"{MANIFESTS}/{name}.txt, the copy of its list of files, is lost or differs"
            )
    return found


def _links(target: Path) -> list[str]:
    """Links among what is ours; what else lies in the folder is not looked at."""
    names = [POINTER, COPY, EDITIONS, MANIFESTS, *entries_in(target)]
    return [name for name in names if is_link(target / name)]
