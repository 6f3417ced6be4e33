"""Zips with something before, between or after, with odd dates and kinds of file."""

# fmt: off

from __future__ import annotations

import gzip
import io
import struct
import tarfile
from typing import Any

from tests.packs.attacks.overlaps import archive, change, entries_of, plus
from tests.packs.attacks.packed import Pack
from tests.packs.attacks.register import Rows
from tests.packs.attacks.zips import MB, Entry, central_of, local_of, rng, write_zip

archive("prefix-exe-shifted", "a Windows program in front, offsets right", "refuse", lambda p:
    write_zip(entries_of(p), prefix=b"MZ" + bytes(2000)))
archive("prefix-script-unshifted",
    "a shell script in front, offsets not shifted (Python's zipfile mends it)", "refuse", lambda p:
    write_zip(entries_of(p), prefix=b"#!/bin/sh\nrm -rf ~\nexit\n" + bytes(100), shift=False))
archive("prefix-html", "a web page in front: the file is page and pack", "refuse", lambda p:
    write_zip(entries_of(p), prefix=b"<html><script>alert(1)</script><!--"))
archive("suffix-1mb", "1 MB after the end record", "refuse", lambda p: write_zip(entries_of(p),
    tail=rng("s").randbytes(1 * MB)))
archive("suffix-zeros", "4 kB of zeros after the end record (a padded download)", "refuse", lambda
    p: write_zip(entries_of(p), tail=bytes(4096)))
archive("suffix-second-zip",
    "two packs one after the other (the last wins in Python, the first in a stream)", "refuse",
    lambda p: p.copy().done() + p.set_title("The second pack").done())
archive("gap-between-entries", "50 kB of unlisted bytes between the entries", "refuse", lambda p:
    write_zip(entries_of(p), gap=b"hidden" * 500))
archive("gap-before-central", "500 kB between the last entry and the central list", "refuse", lambda
    p: write_zip(entries_of(p), before_central=b"hidden!!" * 62500))
archive("comment-65535", "a comment of 65,535 bytes", "harmless", lambda p: write_zip(entries_of(p),
    comment=b"c" * 65535), "a traceback; the comment on the terminal raw")
archive("comment-terminal-codes", "a comment that clears the screen and sets the window's title",
    "harmless", lambda p: write_zip(entries_of(p), comment=b"\x1b[2J\x1b]0;owned\x07\x9b31m\r\n"),
    "control codes on the terminal")
archive("comment-second-end", "a comment that holds another end record for an empty zip", "refuse",
    lambda p: write_zip(entries_of(p), comment=b"PK\5\6" + bytes(18)))
archive("comment-holds-zip", "a comment that holds a whole other zip with its own end", "refuse",
    lambda p: write_zip(entries_of(p), comment=write_zip([Entry("evil/bagit.txt",
    b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n")])))
archive("comment-length-lies", "the end record says a comment of 100 bytes, and there is none",
    "refuse", lambda p: write_zip(entries_of(p), eocd={"comment_len": 100}))
archive("end-fewer", "the end record says one entry", "refuse", lambda p: write_zip(entries_of(p),
    eocd={"here": 1, "total": 1}))
archive("end-more", "the end record says 60,000 entries", "refuse", lambda p: write_zip(entries_of(
    p), eocd={"here": 60000, "total": 60000}))
archive("end-list-longer", "the size of the central list is too great by 100", "refuse", lambda p:
    write_zip(entries_of(p), eocd={"size": sum(len(central_of(e, 0, local_of(e)[1])) for e in
    p.entries()) + 100}))
archive("end-list-shorter",
    "the central list is said to end one entry earlier (that entry is hidden)", "refuse", lambda p:
    (lambda es: write_zip(es, eocd={"here": len(es) - 1, "total": len(es) - 1, "size": sum(len(
    central_of(e, 0, local_of(e)[1])) for e in es[:-1])}))([*entries_of(p),
    Entry(f"{p.root}/data/pages/evil.html", b"<script>alert(1)</script>")]))
archive("end-disks", "disk numbers of a split archive", "refuse", lambda p: write_zip(entries_of(p),
    eocd={"disk": 3, "cddisk": 2}))
archive("end-missing", "no end record", "refuse", lambda p: write_zip(entries_of(p), eocd={
    "omit": True}))
archive("end-flood", "19 MB of end record signatures", "refuse", lambda _p: b"PK\5\6" * 4_750_000)
archive("end-flood-then-sound", "a sound pack whose comment is end record signatures only",
    "refuse", lambda p: write_zip(entries_of(p), comment=b"PK\5\6" * 16383))
archive("split-marker", "PK 7 8 in front, as in a split archive", "refuse", lambda p: write_zip(
    entries_of(p), prefix=b"PK\7\x08"))
THE_END_1: Rows = (("one-byte", -1),
    ("within-end", -9),
    ("half", None),
    ("tenth", "tenth"),
    ("four-bytes", 4)
    )
for _n, _cut in THE_END_1:
    archive(f"cut-{_n}", f"cut off: {_n}", "refuse", lambda p, c=_cut: (lambda z: z[:len(z) // 2] if
        c is None else z[:len(z) // 10] if c == "tenth" else z[:c])(p.done()))
archive("empty-file", "0 bytes", "refuse", lambda _p: b"")
archive("empty-zip", "a zip with no entries", "refuse", lambda _p: write_zip([]))
archive("is-a-tar-gz", "the same bag as tar.gz, called .zip", "refuse", lambda p: _tgz(p))
archive("is-a-7z", "a 7-Zip signature and noise", "refuse", lambda _p: b"7z\xbc\xaf\x27\x1c" + rng(
    "7").randbytes(5000))
archive("is-zeros-19mb", "19 MB of zeros", "refuse", lambda _p: bytes(19 * MB))
archive("central-signatures-19mb",
    "19 MB of central list signatures and an end record that says 65,534 of them", "refuse", lambda
    _p: b"PK\1\2" * 4_700_000 + struct.pack("<IHHHHIIH", 0x06054B50, 0, 0, 65534, 65534, 18_800_000,
    0, 0))
archive("byte-flips-1000", "1,000 bytes of the pack changed at random", "refuse", lambda p: _flip(
    p.done(), 1000))
archive("byte-flips-in-central", "30 bytes of the central list changed at random", "refuse", lambda
    p: _flip(p.done(), 30, tail=3000))


def _flip(z: Any, n: Any, tail: Any = None) -> Any:
    r = rng("flip")
    b = bytearray(z)
    for _ in range(n):
        b[r.randrange(len(b) - tail if tail else 0, len(b))] ^= 1 << r.randrange(8)
    return bytes(b)


def _tgz(p: Pack) -> Any:
    buf = io.BytesIO()
    with tarfile.open(fileobj=buf, mode="w") as t:
        for n, d in sorted(p.rehash().files.items()):
            i = tarfile.TarInfo(f"{p.root}/{n}")
            i.size = len(d)
            t.addfile(i, io.BytesIO(d))
    return gzip.compress(buf.getvalue(), mtime=0)


archive("extra-64kb-each",
    "an unknown extra field of 60,000 bytes in each entry, local and central", "harmless", lambda p:
    write_zip([Entry(e.name, e.data, extra=struct.pack("<HH", 0xCAFE, 59996) + bytes(59996)) for e
    in entries_of(p)]), "a traceback")
archive("extra-malformed", "an extra field that says it is longer than it is", "refuse", change(
    "/unit.md", extra=struct.pack("<HH", 0x5455, 5000) + b"abc"))
archive("extra-3-bytes", "an extra field of three bytes", "refuse", change("/unit.md",
    extra=b"abc"))
archive("extra-length-lies-local",
    "the local extra length reaches into the data (central has none)", "refuse", change("/unit.md",
    extra=b"", lextralen=40))
archive("extra-pkware-patch", "extra fields of OS/2 ACLs, NT security and patch descriptors",
    "harmless", change("/unit.md", extra=b"".join(struct.pack("<HH", k, 8) + bytes(8) for k in (
    0x4453, 0x0009, 0x000F, 0x2605))), "a traceback")
archive("date-zero", "month 0, day 0 in every date", "harmless", lambda p: write_zip([Entry(e.name,
    e.data, date=0, time=0) for e in entries_of(p)]), "a traceback (ValueError)")
archive("date-impossible", "month 15, day 31, 31:63:62 o'clock", "harmless", lambda p: write_zip([
    Entry(e.name, e.data, date=0xFFFF, time=0xFFFF) for e in entries_of(p)]),
    "a traceback (ValueError)")
archive("date-extended-2107", "extended time fields beyond 2038 and before 1970", "harmless",
    change("/unit.md", extra=struct.pack("<HHBII", 0x5455, 9, 3, 0xFFFFFFFF, 0x80000000)),
    "a traceback")


MODES_1: Rows = (("symlink-passwd", 0o120777),
    ("fifo", 0o10644),
    ("char-device", 0o20666),
    ("block-device", 0o60666),
    ("socket", 0o140777),
    ("whiteout", 0o160000)
    )
for _n, _mode in MODES_1:
    archive(f"mode-{_n}", f"a listed drawing whose Unix mode is {_n}", "refuse", lambda p, m=_mode:
        (lambda es: write_zip([Entry(e.name, e.data, attr=m << 16) if e.name.endswith("/l.svg") else
        e for e in es]))(entries_of(p.put("data/unit/media/l.svg", b"/etc/passwd"))))
archive("mode-symlink-made-by-dos", "a symlink's mode in an entry that says it was made by DOS",
    "refuse", lambda p: (lambda es: write_zip([Entry(e.name, e.data, attr=0o120777 << 16, made=20)
    if e.name.endswith("/l.svg") else e for e in es]))(entries_of(p.put("data/unit/media/l.svg",
    b"/etc/passwd"))))
archive("mode-symlink-made-by-mac", "a symlink's mode in an entry made by macOS (19)", "refuse",
    lambda p: (lambda es: write_zip([Entry(e.name, e.data, attr=0o120777 << 16, made=(19 << 8) | 20)
    if e.name.endswith("/l.svg") else e for e in es]))(entries_of(p.put("data/unit/media/l.svg",
    b"/etc/passwd"))))
archive("mode-symlink-folder-then-file",
    "media is a symlink to /tmp, then a file media/x.svg goes through it", "refuse", lambda p:
    write_zip([Entry(f"{p.root}/data/unit/media", b"/tmp", attr=41471 << 16), *entries_of(p)]))
archive("mode-unix-extra-link",
    "a link target in a PKWARE Unix field (0x000d) and an ASi field (0x756e)", "refuse", lambda p:
    change(".svg", attr=0o120777 << 16, extra=struct.pack("<HHIIHH", 0x000D, 23, 0, 0, 0, 0) +
    b"/etc/passwd" + struct.pack("<HHIHIHH", 0x756E, 25, 0, 0o120777, 11, 0, 0) + b"/etc/passwd")(
    p))
archive("mode-setuid", "setuid and executable bits on everything", "harmless", lambda p: write_zip([
    Entry(e.name, e.data, attr=0o106777 << 16) for e in entries_of(p)]),
    "such bits on any file that is written")
archive("mode-000", "no rights at all on every file", "harmless", lambda p: write_zip([Entry(e.name,
    e.data, attr=0o100000 << 16) for e in entries_of(p)]), "files that the bank cannot read later")
archive("mode-hidden-system", "DOS attributes hidden, system and read only", "harmless", lambda p:
    write_zip([Entry(e.name, e.data, attr=7, made=20) for e in entries_of(p)]),
    "hidden files written")
archive("mode-volume-label", "an entry with the DOS attribute 'volume label'", "refuse", plus(lambda
    p: Entry(f"{p.root}/data/unit/LABEL", b"x", attr=8, made=20)))
