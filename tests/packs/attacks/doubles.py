"""Zips with fields for huge files, and with two readings."""

# fmt: off

from __future__ import annotations

import struct
import zlib
from typing import Any

from tests.packs.attacks.overlaps import archive, change, entries_of, plus
from tests.packs.attacks.packed import Pack
from tests.packs.attacks.register import Made
from tests.packs.attacks.zips import Entry, central_of, local_of, write_zip


def z64(usize: Any = None, csize: Any = None, offset: Any = None) -> Any:
    body = b"".join(struct.pack("<Q", x) for x in (usize, csize, offset) if x is not None)
    return struct.pack("<HH", 1, len(body)) + body


archive("zip64-lawful", "every entry with zip64 sizes, and a zip64 end: lawful", "harmless", lambda
    p: write_zip([Entry(e.name, e.data, extra=z64(len(e.data), len(e.data)), lcsize=0xFFFFFFFF,
    lusize=0xFFFFFFFF, ccsize=0xFFFFFFFF, cusize=0xFFFFFFFF, need=45) for e in entries_of(p)],
    zip64=True), "a traceback")
archive("zip64-size-2-63", "a zip64 size of 2^63", "refuse", change("/unit.md", cextra=z64(1 << 63),
    cusize=0xFFFFFFFF))
archive("zip64-size-2-64", "zip64 sizes of 2^64-1", "refuse", change("/unit.md", cextra=z64((1 <<
    64) - 1, (1 << 64) - 1), cusize=0xFFFFFFFF, ccsize=0xFFFFFFFF))
archive("zip64-offset-far", "a zip64 offset of 2^62", "refuse", change("/unit.md", cextra=z64(
    offset=1 << 62), offset=0xFFFFFFFF))
archive("zip64-extra-cut", "a zip64 field of 4 bytes where 8 are due", "refuse", change("/unit.md",
    cextra=struct.pack("<HHI", 1, 4, 9), cusize=0xFFFFFFFF))
archive("zip64-extra-missing", "sizes FFFFFFFF and no zip64 field", "refuse", change("/unit.md",
    cusize=0xFFFFFFFF, ccsize=0xFFFFFFFF))
archive("zip64-extra-unneeded-lies",
    "a zip64 field with other sizes than the true ones in the 32 bit places", "refuse", change(
    "/unit.md", cextra=z64(99, 99)))
archive("zip64-twice", "two zip64 fields that disagree", "refuse", lambda p: change("/unit.md",
    cextra=z64(len(p.files["data/unit/unit.md"])) + z64(5), cusize=0xFFFFFFFF)(p))
archive("zip64-end-count-2-63", "the zip64 end says 2^63 entries", "refuse", lambda p: write_zip(
    entries_of(p), zip64=True, eocd64={"total": 1 << 63, "here": 1 << 63}))
archive("zip64-end-size-2-63", "the zip64 end says the central list is 2^63 bytes long", "refuse",
    lambda p: write_zip(entries_of(p), zip64=True, eocd64={"size": 1 << 63}))
archive("zip64-end-offset-2-64", "the zip64 end says the list starts at 2^64-1", "refuse", lambda p:
    write_zip(entries_of(p), zip64=True, eocd64={"offset": (1 << 64) - 1}))
archive("zip64-locator-far", "the locator points beyond the file", "refuse", lambda p: write_zip(
    entries_of(p), zip64=True, locator={"offset": 1 << 60}))
archive("zip64-locator-to-start", "the locator points to the start of the file", "refuse", lambda p:
    write_zip(entries_of(p), zip64=True, locator={"offset": 0}))
archive("zip64-locator-disks", "the locator says 4 billion disks", "refuse", lambda p: write_zip(
    entries_of(p), zip64=True, locator={"disks": 0xFFFFFFFF}))
archive("zip64-no-locator", "an end record that needs zip64, and none", "refuse", lambda p:
    write_zip(entries_of(p), zip64=True, eocd64={"omit": True}, locator={"omit": True}))
archive("zip64-and-32-disagree",
    "both end records are complete and list different packs (the 32 bit one is sound)", "refuse",
    lambda p: _two_ends(p))


def _two_ends(p: Pack) -> Any:
    evil = p.copy().sub("data/unit/unit.md", r"^title: .*$", "title: Another unit")
    lists, body = [], b""
    for pack in (evil, p):
        central = b""
        for e in entries_of(pack):
            local, known = local_of(e)
            central += central_of(e, len(body), known)
            body += local
        lists.append(central)
    n = len(p.files)
    good_at, evil_at = len(body), len(body) + len(lists[1])
    out = body + lists[1] + lists[0]
    out += struct.pack("<IQHHIIQQQQ", 0x06064B50, 44, 45, 45, 0, 0, n, n, len(lists[0]), evil_at)
    out += struct.pack("<IIQI", 0x07064B50, 0, evil_at + len(lists[0]), 1)
    return out + struct.pack("<IHHHHIIH", 0x06054B50, 0, 0, n, n, len(out) - good_at, good_at, 0)


def twice(second_good: bool, ending: str = "/unit.md", mutate: Any = lambda d: d.replace(b"title:",
    b"title: Not the same,", 1)) -> Any:
    def make(p: Pack) -> Made:
        es = entries_of(p)
        out = []
        for e in es:
            if e.name.endswith(ending):
                bad = Entry(e.name, mutate(e.data))
                out += [bad, e] if second_good else [e, bad]
            else:
                out.append(e)
        return write_zip(out)
    return make


archive("duplicate-first-bad", "two entries unit.md, the last is the one in the manifest", "refuse",
    twice(True))
archive("duplicate-last-bad", "two entries unit.md, the first is the one in the manifest", "refuse",
    twice(False))
archive("duplicate-equal", "two entries unit.md with the same bytes", "refuse", twice(True,
    mutate=lambda d: d))
archive("duplicate-manifest", "two manifest-sha512.txt, one for other files", "refuse", twice(True,
    "/manifest-sha512.txt", lambda d: d.replace(b"0", b"1")))
archive("duplicate-about", "two about.json: one names another publisher", "refuse", twice(False,
    "/data/about.json", lambda d: d.replace(b"The dance", b"Your own dance")))
archive("duplicate-with-dot-slash", "unit.md, and ./unit.md by another spelling", "refuse", plus(
    lambda p: Entry(f"{p.root}/data/unit/./unit.md", b"x")))
archive("local-name-differs", "unit.md in the central list, ../../../evil.md in the local header",
    "refuse", lambda p: write_zip([Entry("../../../evil.md", e.data, cname=e.name) if
    e.name.endswith("unit.md") else e for e in entries_of(p)]))
archive("local-name-differs-same-length",
    "local and central names swap two lessons (a streaming reader sees other lessons)", "refuse",
    lambda p: write_zip([Entry(e.name.replace("lesson-1.md", "lesson-2.md"), e.data, cname=e.name)
    if e.name.endswith("lesson-1.md") else e for e in entries_of(p)]))
archive("local-not-in-central",
    "a local entry evil.html that the central list does not know (a streaming reader "
    "unpacks it)", "refuse", plus(lambda p: Entry(f"{p.root}/data/pages/evil.html",
    b"<script>alert(1)</script>", central=False)))
archive("central-without-local", "a central entry that points at nothing", "refuse", plus(lambda p:
    Entry(f"{p.root}/data/unit/media/none.svg", b"", local=False, offset=3)))
archive("central-order-reversed", "the central list in reverse: lawful", "harmless", lambda p:
    write_zip(entries_of(p), order=lambda c: c[::-1]), "a traceback")
archive("unicode-path-extra", "an Info-ZIP Unicode path field (0x7075) that names ../../evil.md",
    "refuse", lambda p: write_zip([Entry(e.name, e.data, extra=_upath(e.name, "../../evil.md")) if
    e.name.endswith("unit.md") else e for e in entries_of(p)]))
archive("unicode-path-extra-other-slide", "the same field renames a drawing to a page", "refuse",
    lambda p: write_zip([Entry(e.name, e.data, extra=_upath(e.name, f"{p.root}/data/pages/x.html"))
    if e.name.endswith(".svg") else e for e in entries_of(p)]))


def _upath(name: str, other: Any) -> Any:
    o = other.encode()
    return struct.pack("<HHBI", 0x7075, 5 + len(o), 1, zlib.crc32(name.encode())) + o
