"""Each file of a published folder damaged in each way, and what became of it: a table.

    python -m tests.publishing.damages

The ways are those in which shares and sticks fail and people slip: common practice, no source.
"""

from __future__ import annotations

import re
import shutil
import tempfile
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from build_tools.publishing.digests import faults
from build_tools.publishing.edition_folders import editions_in
from build_tools.publishing.mend import mend_folder
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import publish
from build_tools.publishing.verify import verify
from tests.publishing.folders import DAY, TITLE, Walk, make_site

NUMBERS = ("1", "3", "6", "3 and 1 gone")
"""How many editions are kept, and how many more were taken out."""
Which = Literal["every", "of each kind", "one of each kind"]
_PAGE = re.compile(r'data-page="([^"]+)"')


def deleted(path: Path, _other: Path) -> None:
    path.unlink()


def emptied(path: Path, _other: Path) -> None:
    path.write_bytes(b"")


def cut(path: Path, _other: Path) -> None:
    path.write_bytes(path.read_bytes()[: path.stat().st_size // 2])


def swapped(path: Path, other: Path) -> None:
    path_bytes, other_bytes = path.read_bytes(), other.read_bytes()
    path.write_bytes(other_bytes)
    other.write_bytes(path_bytes)


def changed(path: Path, _other: Path) -> None:
    data = bytearray(path.read_bytes())
    data[len(data) // 2] ^= 1
    path.write_bytes(bytes(data))


WAYS: dict[str, Callable[[Path, Path], None]] = {
    f.__name__: f for f in (deleted, emptied, cut, swapped, changed)
}


@dataclass(frozen=True, slots=True)
class Before:
    """A published folder before it is damaged, and the site of its current edition."""

    folder: Path
    site: Path
    newest: int
    """The number of the current edition."""


@dataclass(frozen=True, slots=True)
class Damage:
    """One damaged copy: what was done, and the editions that are whole in it still."""

    way: str
    file: str
    folder: Path
    whole: frozenset[str]

    def __str__(self) -> str:
        return f"{self.way}: {self.file}"


def made_before(room: Path, number: str) -> Before:
    """A folder with so many editions as `number` says, in the words of NUMBERS."""
    kept, _, gone = number.partition(" and ")
    folder = room / "share"
    newest = int(kept) + int(gone.split()[0] if gone else 0)
    for version in range(newest):
        site = make_site(room / f"site-{version}", 2 * version, units=1)
        publish(site, folder, DAY, TITLE, keep=int(kept) if gone else 9, days=0)
    assert verify(folder) == []
    return Before(folder, site, newest)


def files_of(folder: Path) -> list[Path]:
    found = (path.relative_to(folder) for path in sorted(folder.rglob("*")) if path.is_file())
    return [path for path in found if path.name != ".publishing.lock"]


def damages(before: Before, room: Path, which: Which = "every") -> Iterator[Damage]:
    """Each file in each way, one at a time; a file is swapped with the one before it.

    Of each kind of files, the ways take turns: each file is damaged in one, or in more of them
    where there are fewer files of its kind than ways. One of each kind is the first that is met,
    in one way, of which one kind has one and the next the next.
    """
    files = files_of(before.folder)
    kinds = Counter(_kind(before, file) for file in files)
    met: Counter[str] = Counter()
    for n, file in enumerate(files):
        kind = _kind(before, file)
        turns = {
            "every": range(len(WAYS)),
            "of each kind": range(met[kind], len(WAYS), kinds[kind]) or [met[kind]],
            "one of each kind": [] if met[kind] else [len(met)],
        }
        for turn in turns[which]:
            way, do = tuple(WAYS.items())[turn % len(WAYS)]
            folder = room / f"{n}-{way}"
            shutil.copytree(before.folder, folder)
            do(folder / file, folder / files[n - 1])
            whole = {name for name in editions_in(folder) if not faults(folder / "editions" / name)}
            yield Damage(way, file.as_posix(), folder, frozenset(whole))
            shutil.rmtree(folder)
        met[kind] += 1


def _kind(before: Before, file: Path) -> str:
    return kind_of(file.as_posix(), f"{DAY}-{before.newest}")


def lost_readers(before: Path, folder: Path) -> list[str]:
    """The addresses of pages, open or kept as bookmarks before, that do not arrive any more.

    A page arrives that is there, or leads to a page of the current edition, or says that the
    current edition lacks it.
    """
    pointer = read_pointer(folder)
    assert pointer is not None
    current = folder / "editions" / pointer.current
    lost = []
    for file in files_of(before):
        if file.suffix != ".html" or file.name == "current.html":
            continue
        here = folder / file
        text = here.read_text(encoding="utf-8", errors="replace") if here.is_file() else ""
        leads = _PAGE.search(text)
        if leads and not (current / leads[1]).is_file() and leads[1] not in pointer.missing:
            lost.append(f"{file.as_posix()} leads to {leads[1]}")
        elif not leads and not text.endswith("</p>"):
            lost.append(file.as_posix())
    return lost


def kind_of(file: str, current: str) -> str:
    """What a file of a published folder is, in words."""
    named = {
        "current.js": "the pointer",
        "editions/current.json": "the pointer's copy",
        "go.js": "go.js",
        "current.html": "current.html",
    }
    if file in named:
        return named[file]
    if not file.startswith("editions/"):
        return "entry pages"
    if file.startswith("editions/manifests/"):
        return "copies of lists of files"
    edition = file.split("/")[1]
    if file.endswith("manifest-sha512.txt"):
        return "lists of files"
    if file.endswith("gone.txt"):
        return "lists of gone pages"
    return "the current edition" if edition == current else "other editions, and signposts"


def table(number: str) -> str:
    """What became of each damage in a folder of so many editions, by kind of file and way."""
    seen: Counter[tuple[str, str]] = Counter()
    of: Counter[tuple[str, str]] = Counter()
    published: Counter[tuple[str, str]] = Counter()
    alone: Counter[tuple[str, str]] = Counter()
    new_pages = editions_lost = readers_lost = 0
    with tempfile.TemporaryDirectory() as scratch:
        room = Path(scratch)
        before = made_before(room, number)
        for damage in damages(before, room):
            cell = kind_of(damage.file, f"{DAY}-{before.newest}"), damage.way
            of[cell] += 1
            seen[cell] += verify(damage.folder) != []
            other = room / "other"
            shutil.copytree(damage.folder, other)
            mended = mend_folder(other)
            alone[cell] += verify(other) == []
            new_pages += bool(mended.left)
            publish(before.site, damage.folder, DAY, TITLE, keep=9)
            walk = Walk()
            walk.once(damage.folder)
            published[cell] += verify(damage.folder) == [] and not walk.broken
            for folder in (other, damage.folder):
                editions_lost += len(damage.whole - set(editions_in(folder)))
            readers_lost += len(lost_readers(before.folder, damage.folder))
            shutil.rmtree(other)
    lines = [f"{number} editions: seen, mended by publish, mended by mend alone, of how many"]
    lines.append(f"{'':32}" + "".join(f"{way:>16}" for way in WAYS))
    for kind in sorted({kind for kind, _ in of}):
        cells = ((kind, way) for way in WAYS)
        told = (f"{seen[c]} {published[c]} {alone[c]} / {of[c]}" for c in cells)
        lines.append(f"{kind:32}" + "".join(f"{one:>16}" for one in told))
    lines.append(
        f"{sum(of.values())} damages; mend alone asked for new pages {new_pages} times; whole "
        f"editions lost: {editions_lost}; open pages and bookmarks that do not arrive: "
        f"{readers_lost}"
    )
    return "\n".join(lines)


if __name__ == "__main__":
    for one in NUMBERS:
        print(table(one), end="\n\n", flush=True)
