"""Files in one zip whose bytes depend on nothing but the files and one day."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Mapping
from datetime import date

_UNIX = 3
_PLAIN_FILE = 0o100644


def zipped(top: str, files: Mapping[str, bytes], day: date) -> bytes:
    """The zip of `files` below the folder `top`: stored, in the order of their names, dated `day`.

    Nothing is compressed, so that no library's version shows in the bytes.
    """
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_STORED) as archive:
        for name in sorted(files):
            entry = zipfile.ZipInfo(f"{top}/{name}", (day.year, day.month, day.day, 0, 0, 0))
            entry.create_system = _UNIX
            entry.external_attr = _PLAIN_FILE << 16
            archive.writestr(entry, files[name])
    return made.getvalue()
