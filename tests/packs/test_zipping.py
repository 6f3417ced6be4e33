"""The zip of a pack: nothing in it but the files and one day."""

from __future__ import annotations

import io
import zipfile
from datetime import date

from build_tools.packs.zipping import zipped

FILES = {"z.txt": b"z", "a/é.txt": b"a" * 1000}
DATA = zipped("top", FILES, date(2026, 2, 3))


def entries() -> list[zipfile.ZipInfo]:
    return zipfile.ZipFile(io.BytesIO(DATA)).infolist()


def test_another_reader_finds_every_file_whole() -> None:
    archive = zipfile.ZipFile(io.BytesIO(DATA))
    assert archive.testzip() is None
    assert {name: archive.read(name) for name in archive.namelist()} == {
        "top/a/é.txt": b"a" * 1000,
        "top/z.txt": b"z",
    }


def test_entries_are_stored_sorted_and_alike() -> None:
    assert [one.filename for one in entries()] == ["top/a/é.txt", "top/z.txt"]
    for one in entries():
        assert one.compress_type == zipfile.ZIP_STORED
        assert one.date_time == (2026, 2, 3, 0, 0, 0)
        assert (one.create_system, one.external_attr >> 16) == (3, 0o100644)
        assert (one.extra, one.comment) == (b"", b"")
    # APPNOTE.TXT 6.3.10, 4.4.4: bit 11 says that the name is UTF-8; nothing else is said
    assert [one.flag_bits for one in entries()] == [0x800, 0]


def test_the_order_in_which_files_come_does_not_show() -> None:
    assert zipped("top", dict(reversed(FILES.items())), date(2026, 2, 3)) == DATA
    assert zipped("top", FILES, date(2026, 2, 4)) != DATA
