"""A word-processor file's parts in a zip whose bytes depend on nothing but them and one day."""

from __future__ import annotations

import io
import zipfile
from datetime import date

_UNIX = 3
_PLAIN_FILE = 0o100644
_FIRST = ("[Content_Types].xml", "_rels/.rels")
"""Where programs look first (ECMA-376, part 2, 10)."""
_APP = "docProps/app.xml"
_PROPERTIES = (
    "<?xml version='1.0' encoding='UTF-8' standalone='yes'?>\n"
    '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/'
    'extended-properties"><Application>dance unit bank</Application></Properties>'
)


def same_bytes(made: bytes, day: date) -> bytes:
    """The same parts: stored, in one order, dated `day`; nothing said of a program or company.

    Nothing is compressed, so that no library's version shows in the bytes.
    """
    with zipfile.ZipFile(io.BytesIO(made)) as archive:
        parts = {name: archive.read(name) for name in archive.namelist()}
    parts[_APP] = _PROPERTIES.encode()
    written = io.BytesIO()
    with zipfile.ZipFile(written, "w", zipfile.ZIP_STORED) as archive:
        for name in sorted(parts, key=lambda one: (one not in _FIRST, one)):
            entry = zipfile.ZipInfo(name, (day.year, day.month, day.day, 0, 0, 0))
            entry.create_system = _UNIX
            entry.external_attr = _PLAIN_FILE << 16
            archive.writestr(entry, parts[name])
    return written.getvalue()
