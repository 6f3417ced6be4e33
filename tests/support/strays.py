"""Strewing a folder with what systems, shares and editors leave behind."""

from __future__ import annotations

from pathlib import Path

FILES = (
    "Thumbs.db", "ehthumbs.db", "desktop.ini", "Desktop.ini", ".DS_Store", "._unit.md", "Icon\r",
    "unit.md~", "lesson-1.md~", ".lesson-1.md.swp", "lesson-1.md.swp", "#lesson-1.md#",
    ".~lock.lesson-1.md#", "~$lesson-1.docx", "~WRL0001.tmp", "lesson-1.md.bak", "unit.md.orig",
    "unit.md.rej", "lesson-1.md.tmp", "boat.svg.part", "._boat.svg", ".nfs0000000000a1b2c3",
    ".fuse_hidden0000a1b2", "4913", "._index.html", "index.html~", "boat.png.crdownload",
    ".sync_1a2b3c.db", "~syncthing~unit.md.tmp", ".goutputstream-1A2B3C", ".directory",
)  # fmt: skip
FOLDERS = ("@eaDir", "__MACOSX", "#recycle", "$RECYCLE.BIN", ".Trash-1000", ".AppleDouble")
NOT_TEXT = b"\xff\xfe\x00\x81 not for reading \x00"


def strew(top: Path) -> int:
    """Leave every stray file and folder in `top` and in every folder below it; gives how many."""
    folders = [top, *(path for path in top.rglob("*") if path.is_dir())]
    for folder in folders:
        for name in FILES:
            (folder / name).write_bytes(NOT_TEXT)
        for name in FOLDERS:
            (folder / name).mkdir()
            (folder / name / "unit.md").write_bytes(NOT_TEXT)
    return len(folders) * (len(FILES) + len(FOLDERS))
