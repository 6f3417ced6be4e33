"""The parts of a word-processor file: a zip of XML, opened without trusting it.

Nothing is unpacked to a disk, no link is followed, and of each part no more is unpacked than may be
read. How parts name one another is ECMA-376, part 2 (Open Packaging Conventions), 9.3.
"""

from __future__ import annotations

import io
import posixpath
import zipfile
import zlib
from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.word_files.reading.limits import MOST_ENTRIES, MOST_FILE, MOST_PART, MOST_WHOLE
from build_tools.word_files.reading.trouble import DocumentError
from build_tools.word_files.reading.xml_tree import Element, Reader

_OLD = b"\xd0\xcf\x11\xe0"
"""How files of older programs begin, and those locked with a password."""
_LOCKED = 1
_AGAIN = "save it again as .docx"
_TOO_LARGE = f"a part of it has more than {MOST_PART:,} bytes of text: split it into several files"


@dataclass(frozen=True, slots=True)
class Link:
    """What one part names: the kind of it, where it is, and whether that is outside the file."""

    kind: str
    target: str
    outside: bool


class Parts:
    """The parts of one file, each read when it is asked for."""

    def __init__(self, data: bytes) -> None:
        """Open the file. Raises DocumentError where it is none."""
        if len(data) > MOST_FILE:
            raise DocumentError(f"it has {len(data):,} bytes, more than {MOST_FILE:,}")
        if data.startswith(_OLD):
            raise DocumentError(f"it is locked, or of an older kind: {_AGAIN}, without a password")
        try:
            self._zip = zipfile.ZipFile(io.BytesIO(data))
        except (zipfile.BadZipFile, ValueError, OverflowError, OSError, RuntimeError):
            raise DocumentError(f"it is no word-processor file, or is damaged: {_AGAIN}") from None
        entries = self._zip.infolist()
        if len(entries) > MOST_ENTRIES:
            raise DocumentError(f"it holds {len(entries):,} files, more than {MOST_ENTRIES:,}")
        self._entries = {entry.filename: entry for entry in entries}
        if len(self._entries) < len(entries):
            raise DocumentError(f"two files in it have one name: {_AGAIN}")
        self._left = MOST_WHOLE
        self._reader = Reader()

    def __contains__(self, name: str) -> bool:
        return name in self._entries

    def tree(self, name: str) -> Element:
        """One part as a tree. Raises DocumentError where it is not there or not sound."""
        return self._reader.read(self._bytes(name))

    def links(self, name: str) -> Mapping[str, Link]:
        """What the part `name` names, by the identifiers that it uses; `""` is the whole file."""
        folder, file = posixpath.split(name)
        at = posixpath.join(folder, "_rels", f"{file}.rels")
        if at not in self:
            return {}
        found: dict[str, Link] = {}
        for one in self.tree(at).elements:
            has = one.attributes
            outside = has.get("TargetMode") == "External"
            target = has.get("Target", "")
            if not outside:
                target = posixpath.normpath(posixpath.join("/", folder, target)).lstrip("/")
            kind = has.get("Type", "").rpartition("/")[2]
            found[has.get("Id", "")] = Link(kind, target, outside)
        return found

    def _bytes(self, name: str) -> bytes:
        entry = self._entries.get(name)
        if entry is None:
            raise DocumentError(f"a part that it names is not in it: {_AGAIN}")
        if entry.flag_bits & _LOCKED:
            raise DocumentError(f"it is locked with a password: {_AGAIN}, without one")
        if entry.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
            raise DocumentError(f"it is packed in a way that is not read: {_AGAIN}")
        most = min(MOST_PART, self._left)
        if entry.file_size > most:
            raise DocumentError(_TOO_LARGE)
        try:
            with self._zip.open(entry) as part:
                data = part.read(most + 1)
        # what is damaged or lies about itself fails in any of these ways
        except (zipfile.BadZipFile, zlib.error, EOFError, OSError, ValueError, RuntimeError,
                OverflowError):  # fmt: skip
            raise DocumentError(f"a part of it is damaged: {_AGAIN}") from None
        if len(data) > most:
            raise DocumentError(_TOO_LARGE)
        self._left -= len(data)
        return data
