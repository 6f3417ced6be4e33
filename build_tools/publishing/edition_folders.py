"""The editions in a published folder: what there is, and copying a new one in."""

from __future__ import annotations

import re
import shutil
from collections.abc import Mapping
from pathlib import Path

from build_tools.disk.sure_files import (
    PART,
    make_folder,
    patiently,
    settle,
    settle_all,
    write_down,
)
from build_tools.publishing.digests import MANIFEST, faults, files_in, written
from build_tools.publishing.shared_folder import HeldFolder, is_link
from build_tools.publishing.trouble import CannotPublishError

EDITIONS = "editions"
GONE = "gone.txt"
"""In the folder of an edition that was taken out: its pages, whose addresses stay."""
MANIFESTS = "editions/manifests"
"""A second copy of each edition's list of files: a lost list does not cost an edition."""
_ID = re.compile(r"(\d{4}-\d{2}-\d{2})-([1-9]\d{0,8})")


def is_edition_name(name: str) -> bool:
    """Whether `name` is one that an edition can have: a day and a number."""
    return _ID.fullmatch(name) is not None


def editions_in(target: Path) -> tuple[str, ...]:
    """The names of the editions kept in a published folder, oldest first."""
    folders = _folders(target)
    return tuple(name for name in folders if not (target / EDITIONS / name / GONE).exists())


def gone_in(target: Path) -> tuple[str, ...]:
    """The names of the editions taken out, whose addresses lead to the current one."""
    return tuple(name for name in _folders(target) if (target / EDITIONS / name / GONE).exists())


def order_of(name: str) -> tuple[int, str]:
    """What editions are sorted by: the number at the end, which only ever grows."""
    match = _ID.fullmatch(name)
    return (int(match[2]), match[1]) if match else (0, name)


def next_name(target: Path, dated: str, last: int) -> str:
    """The name of the next edition: the date the bank gives itself, and a number never used.

    `last` is the highest number that the pointer knows of.
    """
    here = (order_of(name)[0] for name in (*_folders(target), *_manifests(target)))
    return f"{dated}-{max((last, *here)) + 1}"


def copy_in(site: Path, target: HeldFolder, name: str, digests: Mapping[str, str]) -> None:
    """Copy a built site in as the edition `name`: whole and read back, or not there at all.

    `digests` holds the digest of each of its files.
    """
    part = target.inside(f"{EDITIONS}/{name}{PART}")
    try:
        make_folder(target.path / EDITIONS)
        part.mkdir()
        for path, source in files_in(site).items():
            target.sure()
            goal = part / path
            goal.parent.mkdir(parents=True, exist_ok=True)
            write_down(goal, source.read_bytes())
        write_down(part / MANIFEST, written(digests))
        # Waiting once all is written costs far less than waiting for each file.
        for path in (*digests, MANIFEST):
            settle(part / path)
        settle_all(part)
        target.sure()
        if wrong := faults(part):
            raise CannotPublishError(
                f"{target.path}: the copy differs from what was built ({wrong[0]}); readers still "
                "have the edition they had. To mend it, look at the disk, then run this again"
            )
        target.write(f"{MANIFESTS}/{name}.txt", written(digests))
        final = part.with_name(name)
        target.sure()
        patiently(lambda: part.replace(final))
        settle(part.parent)
    finally:
        # Once it has its name there is nothing left here to remove.
        shutil.rmtree(part, ignore_errors=True)


def sweep(target: HeldFolder) -> None:
    """Remove what an earlier run left unfinished."""
    folder = target.path / EDITIONS
    for path in folder.glob(f"*{PART}"):
        shutil.rmtree(path, ignore_errors=True)
    for path in target.path.rglob(f".*{PART}"):
        path.unlink(missing_ok=True)


def sweep_never_had(target: HeldFolder, last: int, but: str | None) -> None:
    """Remove editions copied in by runs that were cut off before readers had them, except `but`.

    `last` is the highest number that readers have had.
    """
    for name in editions_in(target.path):
        if order_of(name)[0] > last and name != but:
            target.sure()
            part = target.inside(f"{EDITIONS}/{name}{PART}")
            target.inside(f"{EDITIONS}/{name}").replace(part)
            shutil.rmtree(part, ignore_errors=True)
            (target.path / MANIFESTS / f"{name}.txt").unlink(missing_ok=True)


def _folders(target: Path) -> tuple[str, ...]:
    folder = target / EDITIONS
    if not folder.is_dir() or is_link(folder):
        return ()
    names = [
        path.name
        for path in folder.iterdir()
        if is_edition_name(path.name) and path.is_dir() and not is_link(path)
    ]
    return tuple(sorted(names, key=order_of))


def _manifests(target: Path) -> tuple[str, ...]:
    folder = target / MANIFESTS
    names = [path.stem for path in folder.glob("*.txt")] if folder.is_dir() else []
    return tuple(name for name in names if is_edition_name(name))
