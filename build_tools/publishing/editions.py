"""The editions in a published folder: what there is, copying a new one in, taking old ones out."""

from __future__ import annotations

import re
import shutil
from collections.abc import Mapping
from pathlib import Path

from build_tools.publishing.digests import MANIFEST, faults, files_in, written
from build_tools.publishing.entry_pages import EDITIONS
from build_tools.publishing.trouble import CannotPublishError
from build_tools.sure_files import PART, patiently, settle, write_down

_ID = re.compile(r"(\d{4}-\d{2}-\d{2})-(\d+)")
OLD = ".old"


def editions_in(target: Path) -> tuple[str, ...]:
    """The names of the editions kept in a published folder, oldest first."""
    folder = target / EDITIONS
    names = [path.name for path in folder.iterdir()] if folder.is_dir() else []
    return tuple(sorted((name for name in names if _ID.fullmatch(name)), key=order_of))


def order_of(name: str) -> tuple[int, str]:
    """What editions are sorted by: the number at the end, which only ever grows."""
    match = _ID.fullmatch(name)
    return (int(match[2]), match[1]) if match else (0, name)


def next_name(target: Path, dated: str) -> str:
    """The name of the next edition: the date the bank gives itself, and the next number."""
    return f"{dated}-{max((order_of(n)[0] for n in editions_in(target)), default=0) + 1}"


def copy_in(site: Path, target: Path, name: str, digests: Mapping[str, str]) -> None:
    """Copy a built site in as the edition `name`: whole and read back, or not there at all.

    `digests` holds the digest of each of its files.
    """
    part = target / EDITIONS / f"{name}{PART}"
    try:
        part.mkdir(parents=True)
        for path, source in files_in(site).items():
            goal = part / path
            goal.parent.mkdir(parents=True, exist_ok=True)
            write_down(goal, source.read_bytes())
        write_down(part / MANIFEST, written(digests))
        # Waiting once all is written costs far less than waiting for each file.
        for path in (*digests, MANIFEST):
            settle(part / path)
        if wrong := faults(part):
            raise CannotPublishError(
                f"{target}: the copy differs from what was built ({wrong[0]}); readers still have "
                "the edition they had. To mend it, look at the disk, then run this again"
            )
        final = part.with_name(name)
        patiently(lambda: part.replace(final))
        settle(part.parent)
    finally:
        # Once it has its name there is nothing left here to remove.
        shutil.rmtree(part, ignore_errors=True)


def sweep(target: Path, had: tuple[str, ...]) -> None:
    """Remove what an earlier run left unfinished: all that readers never had."""
    for name in set(editions_in(target)) - set(had):
        (target / EDITIONS / name).replace(target / EDITIONS / f"{name}{OLD}")
    for pattern in (f"*{PART}", f"*{OLD}"):
        for path in (target / EDITIONS).glob(pattern):
            shutil.rmtree(path, ignore_errors=True)
    for path in target.glob(f".*{PART}"):
        path.unlink(missing_ok=True)


def keep_newest(target: Path, keep: int, current: str) -> tuple[str, ...]:
    """Take out all but the newest `keep` editions and the current one; gives what went.

    An edition first loses its name, so that no half of it is ever taken for a whole. Where a
    reader's computer holds a file of it, it stays until the next time.
    """
    gone = []
    others = [name for name in editions_in(target) if name != current]
    for name in others[: max(0, len(others) - (keep - 1))]:
        path = target / EDITIONS / name
        old = path.with_name(f"{name}{OLD}")
        try:
            path.replace(old)
        except PermissionError:
            continue
        shutil.rmtree(old, ignore_errors=True)
        gone.append(name)
    return tuple(gone)
