"""The published folder, held: it stays the same folder to the end, and no link in it is followed.

On a share that anybody may write to, a folder can be renamed in the middle of a run, and a link can
lie where a page is wanted. Neither may lead a page of ours, or a file of somebody else's, astray.
"""

from __future__ import annotations

import stat
from dataclasses import dataclass
from pathlib import Path

from build_tools.disk.sure_files import make_folder, write_whole
from build_tools.publishing.trouble import CannotPublishError


@dataclass(frozen=True, slots=True)
class HeldFolder:
    """A published folder as it was when the work began: its path, and the system's name for it."""

    path: Path
    device: int
    number: int

    def sure(self) -> None:
        """Raise CannotPublishError if the path no longer leads to the folder of the beginning."""
        try:
            now = self.path.stat()
        except OSError:
            now = None
        if now is None or (now.st_dev, now.st_ino) != (self.device, self.number):
            raise CannotPublishError(
                f"{self.path} is no longer the folder in which this began: somebody renamed or "
                "moved it. What was under way lies in the folder that was renamed, and its readers "
                "have a whole edition, the one they had or the next. To mend it, give the folder "
                "its name back, then run the same command again"
            )

    def inside(self, name: str) -> Path:
        """The path of `name` below the folder; raises where a link stands on the way."""
        path = self.path
        parts = name.split("/")
        for part in parts[:-1]:
            path = path / part
            refuse_link(path)
        refuse_link(path / parts[-1])
        return path / parts[-1]

    def write(self, name: str, data: bytes) -> None:
        """Put `data` at `name` in one step, with the folders it needs."""
        self.sure()
        path = self.inside(name)
        for folder in reversed(path.relative_to(self.path).parents[:-1]):
            make_folder(self.path / folder)
        write_whole(path, data)
        self.sure()

    def write_new(self, name: str, data: bytes) -> bool:
        """The same where the file differs; says whether it did."""
        path = self.inside(name)
        if read_file(path) == data:
            return False
        self.write(name, data)
        return True


def held(path: Path) -> HeldFolder:
    """The folder at `path`, which is there."""
    refuse_link(path / "editions")
    now = path.stat()
    return HeldFolder(path, now.st_dev, now.st_ino)


def is_link(path: Path) -> bool:
    """Whether a link, or what Windows calls a junction, stands at `path`."""
    try:
        found = path.lstat()
    except OSError:
        return False
    # 0x400: a reparse point, by which Windows marks links of every kind.
    return stat.S_ISLNK(found.st_mode) or bool(getattr(found, "st_file_attributes", 0) & 0x400)


def refuse_link(path: Path) -> None:
    """Raise CannotPublishError where a link stands at `path`."""
    if is_link(path):
        raise CannotPublishError(
            f"{path} is a link to another place; nothing is written through it. To mend it, take "
            "the link away, then run the same command again"
        )


def read_file(path: Path) -> bytes | None:
    """The bytes of the plain file at `path`; None where there is none, a link or something odd."""
    try:
        if not stat.S_ISREG(path.lstat().st_mode) or is_link(path):
            return None
        return path.read_bytes()
    except OSError:
        return None
