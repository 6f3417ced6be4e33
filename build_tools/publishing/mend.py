"""Mending a published folder from what is whole in it.

Nothing is believed that can be looked at: what the pointer or a list of files says is held against
the files themselves. A damaged file is taken from another edition, or from a site just built, that
has one of the same digest.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from build_tools.publishing.digests import (
    MANIFEST,
    differences,
    digest,
    faults,
    files_in,
    read_list,
    read_manifest,
    written,
)
from build_tools.publishing.edition_folders import (
    EDITIONS,
    GONE,
    MANIFESTS,
    editions_in,
    gone_in,
    order_of,
    sweep,
)
from build_tools.publishing.entry_pages import (
    entries_in,
    is_entry_page,
    stable_files,
)
from build_tools.publishing.pages_known import edition_pages, pages_ever
from build_tools.publishing.pointer import (
    Pointer,
    read_copy,
    read_pointer,
    replace_pointer,
)
from build_tools.publishing.pointer import written as pointer_files
from build_tools.publishing.publisher_alone import alone_in, told_there
from build_tools.publishing.shared_folder import HeldFolder, is_link, read_file
from build_tools.publishing.signposts import (
    finish,
    gone_list,
    pages_gone,
    take_out,
)
from build_tools.publishing.trouble import CannotPublishError


@dataclass(frozen=True, slots=True)
class Mended:
    """What was done, a line each, and what could not be mended, with the way to mend it."""

    done: tuple[str, ...]
    left: tuple[str, ...]


def mend(target: HeldFolder, source: Path | None = None, title: str | None = None) -> Mended:
    """Mend what can be mended without new pages; `source` is a site just built, if there is one.

    No whole edition is lost by it. Readers keep the edition that they have where that is whole;
    else they get the newest whole one. `title` is the bank's name, where nothing here tells it.
    """
    here = target.path
    sweep(target)
    done, left = _lists_mended(target)
    copies = _Copies(here, source)
    damaged = []
    for name in editions_in(here):
        mended, remaining = _edition_mended(target, name, copies)
        done += mended
        damaged += [name] if remaining else []
    whole = [name for name in editions_in(here) if name not in damaged]
    if not whole:
        left += [
            f"the edition {name} is damaged, and nothing here has its lost files: publish again"
            for name in damaged
        ]
        return Mended(tuple(done), tuple(left))
    said = read_pointer(here)
    pointer = _pointer(here, said, whole, title or "")
    # What no copy can mend leads its readers on.
    for name in take_out(target, damaged, pointer.title):
        done.append(f"the edition {name} could not be mended; its pages lead to the current one")
    for name in gone_in(here):
        done += finish(target, name, pointer.title)
    pages = set(edition_pages(here, pointer.current))
    known = pages | set(pointer.missing) | {*entries_in(here)} | pages_ever(here)
    pointer = Pointer(
        pointer.current,
        pointer.title,
        tuple(sorted(known - pages)),
        (),
        _last(here, said, pointer),
        pointer.left,
    )
    for name, data in stable_files(known, pointer.current, pointer.title).items():
        if (here / name).exists() and name in known and not _ours(here, name):
            left.append(f"{name} is somebody else's page; move it, then run the same command again")
        elif target.write_new(name, data):
            done.append(f"{name} was written anew")
    if said is None or said.current != pointer.current:
        done.append(f"the pointer leads readers to {pointer.current}")
    if any(read_file(here / name) != data for name, data in pointer_files(pointer).items()):
        replace_pointer(target, pointer)
        if said is not None and said.current == pointer.current:
            done.append("the pointer was written anew")
    return Mended(tuple(done), tuple(left))


def mend_folder(target: Path) -> Mended:
    """Mend a published folder from what is whole in it, without new pages."""
    with told_there(target), alone_in(target) as folder:
        if not editions_in(target) and not gone_in(target):
            raise CannotPublishError(f"{target}: nothing has been published there yet")
        mended = mend(folder)
        folder.sure()
        return mended


class _Copies:
    """Where a file with a certain digest can be had; found when the first is wanted."""

    def __init__(self, target: Path, source: Path | None) -> None:
        self._target, self._source = target, source
        self._found: dict[str, list[Path]] | None = None

    def of(self, wanted: str) -> bytes | None:
        """The bytes of a file whose digest is `wanted`; None where there is none."""
        if self._found is None:
            self._found = {}
            for name in editions_in(self._target):
                folder = self._target / EDITIONS / name
                for file, said in (read_manifest(folder) or {}).items():
                    self._found.setdefault(said, []).append(folder / file)
            if self._source is not None:
                for path in files_in(self._source).values():
                    self._found.setdefault(digest(path.read_bytes()), []).append(path)
        for path in self._found.get(wanted, []):
            data = read_file(path)
            if data is not None and digest(data) == wanted:
                return data
        return None


def _edition_mended(target: HeldFolder, name: str, copies: _Copies) -> tuple[list[str], bool]:
    """What was mended in an edition, and whether something is still wrong in it."""
    folder = target.path / EDITIONS / name
    listed = read_manifest(folder)
    if listed is None:
        return [], True
    done, remaining = [], False
    missing, added, changed = differences(folder, listed)
    for file in added:
        target.sure()
        (folder / file).unlink()
        done.append(f"{EDITIONS}/{name}/{file} was no part of it and was taken away")
    for file in (*missing, *changed):
        data = copies.of(listed[file])
        if data is None:
            remaining = True
            continue
        if is_link(folder / file):
            (folder / file).unlink()
        target.write(f"{EDITIONS}/{name}/{file}", data)
        done.append(f"{EDITIONS}/{name}/{file} was taken from an equal file")
    return done, remaining


def _lists_mended(target: HeldFolder) -> tuple[list[str], list[str]]:
    """Each edition's list of files and its copy: where one is lost, the other is written again."""
    done = []
    for name in editions_in(target.path):
        folder = target.path / EDITIONS / name
        own = read_manifest(folder)
        copy = read_list(target.path / MANIFESTS / f"{name}.txt")
        if own is not None and (copy is None or (own != copy and not faults(folder))):
            target.write(f"{MANIFESTS}/{name}.txt", written(own))
            done.append(f"the copy of the list of files of {name} was written anew")
        elif copy is not None and own != copy:
            target.write(f"{EDITIONS}/{name}/{MANIFEST}", written(copy))
            done.append(f"the list of files of {name} was written anew")
        elif own is None and _only_signposts(folder):
            target.write(f"{EDITIONS}/{name}/{GONE}", gone_list(pages_gone(folder)))
            done.append(f"{name} was taken out before; its list of pages was written anew")
    return done, []


def _only_signposts(folder: Path) -> bool:
    files = files_in(folder)
    return bool(files) and all(is_entry_page(path) for path in files.values())


def _pointer(target: Path, said: Pointer | None, whole: list[str], title: str) -> Pointer:
    """The pointer as it should be: to the edition readers had, where that is whole."""
    copy = read_copy(target)
    for one in (said, copy):
        if one is not None and one.current in whole:
            return one
    known = said or copy
    left: Mapping[str, str] = known.left if known else {}
    last = known.last if known else 0
    return Pointer(
        whole[-1],
        (known.title if known else title) or _title(target, whole[-1]),
        (),
        (),
        last,
        left,
    )


def _last(target: Path, said: Pointer | None, pointer: Pointer) -> int:
    """The highest number readers have had; where no pointer tells it, the highest there is."""
    if said is not None and said.last:
        return max(said.last, order_of(pointer.current)[0])
    names = (*editions_in(target), *gone_in(target))
    return max(pointer.last, *(order_of(name)[0] for name in names))


def _title(target: Path, name: str) -> str:
    """What the whole is called, read off the front page of an edition."""
    page = (read_file(target / EDITIONS / name / "index.html") or b"").decode("utf-8", "replace")
    start, end = page.find("<title>"), page.find("</title>")
    return page[start + 7 : end].strip() if 0 <= start < end else "Units"


def _ours(target: Path, name: str) -> bool:
    """Whether a file at a page's address may be written over: it is an entry page, or what became
    of one, since its address is that of a page of an edition here."""
    return is_entry_page(target / name) or name in pages_ever(target)
