"""Zips written by hand, so that each field may say what it likes (APPNOTE 6.3.10)."""

# fmt: off

from __future__ import annotations

import base64
import bz2
import random
import struct
import zlib
from typing import Any

KB, MB, GB = 1000, 1000_000, 1000_000_000


def b64(text: str) -> bytes:
    return base64.b64decode("".join(text.split()))


def rng(name: str) -> random.Random:
    return random.Random("hostile:" + name)


STORED, DEFLATED = 0, 8
DOS_DATE, DOS_TIME = ((2026 - 1980) << 9) | (11 << 5) | 25, 0


def deflate(data: bytes, level: int = 9) -> bytes:
    c = zlib.compressobj(level, zlib.DEFLATED, -15)
    return c.compress(data) + c.flush()


def deflate_fill(byte: bytes, size: int, head: bytes = b"", tail: bytes = b"") -> tuple[bytes, int,
    int]:
    """Raw deflate of head + byte * size + tail without holding it: (stream, crc, length)."""
    c = zlib.compressobj(9, zlib.DEFLATED, -15)
    out, crc = [c.compress(head)], zlib.crc32(head)
    block = byte * (1 << 20)
    left = size
    while left:
        part = block if left >= len(block) else byte * left
        out.append(c.compress(part))
        crc = zlib.crc32(part, crc)
        left -= len(part)
    out.append(c.compress(tail))
    out.append(c.flush())
    return b"".join(out), zlib.crc32(tail, crc), len(head) + size + len(tail)


class Entry:
    """One entry, as it ought to be but for what is given; c… is for the central list."""

    def __init__(self, name: Any, data: Any = b"", method: Any = STORED, **kw: Any) -> None:
        self.name = name
        self.data = data
        self.method = method
        self.kw = kw

    def g(self, key: Any, default: Any) -> Any:
        return self.kw.get(key, default)


def name_of(n: Any, flags: Any) -> Any:
    if isinstance(n, bytes):
        return n, flags
    b = n.encode("utf-8", "surrogatepass")
    if not n.isascii():
        flags |= 0x800
    return b, flags


def local_of(e: Entry) -> Any:
    raw = e.kw.get("raw")
    if raw is None:
        raw = (e.data if e.method == STORED else deflate(e.data, e.g("level", 6)) if e.method ==
            DEFLATED else bz2.compress(e.data) if e.method == 12 else e.data)
    crc = e.g("crc", zlib.crc32(e.data))
    usize = e.g("usize", len(e.data))
    csize = e.g("csize", len(raw))
    flags = e.g("flags", 0)
    name, flags = name_of(e.name, flags)
    extra = e.g("extra", b"")
    desc = e.kw.get("descriptor")
    lcrc, lcs, lus = e.g("lcrc", crc), e.g("lcsize", csize), e.g("lusize", usize)
    if desc is not None:
        flags |= 8
        if "lcrc" not in e.kw:
            lcrc = lcs = lus = 0
    head = struct.pack("<IHHHHHIIIHH", 0x04034B50, e.g("need", 20), e.g("lflags", flags), e.g(
        "lmethod", e.method), e.g("time", DOS_TIME), e.g("date", DOS_DATE), lcrc & 0xFFFFFFFF, lcs &
        0xFFFFFFFF, lus & 0xFFFFFFFF, len(name), e.g("lextralen", len(extra)))
    body = head + name + extra + raw
    if desc is not None:
        body += desc if isinstance(desc, bytes) else struct.pack("<IIII", 0x08074B50, crc &
            0xFFFFFFFF, csize, usize)
    return body, (flags, crc, csize, usize)


def central_of(e: Entry, offset: int, known: Any) -> bytes:
    flags, crc, csize, usize = known
    name, flags2 = name_of(e.g("cname", e.name), flags)
    extra = e.g("cextra", e.g("extra", b""))
    comment = e.g("comment", b"")
    head: bytes = struct.pack("<IHHHHHHIIIHHHHHII", 0x02014B50, e.g("made", (3 << 8) | 20),
        e.g("cneed", e.g("need", 20)),
        e.g("cflags", flags2), e.g("cmethod", e.method), e.g("time", DOS_TIME),
        e.g("date", DOS_DATE), e.g("ccrc", crc) & 0xFFFFFFFF, e.g("ccsize", csize) & 0xFFFFFFFF,
        e.g("cusize", usize) & 0xFFFFFFFF, len(name), e.g("cextralen", len(extra)), len(comment),
        e.g("disk", 0), e.g("iattr", 0), e.g("attr", 0o100644 << 16) & 0xFFFFFFFF, e.g("offset",
        offset) & 0xFFFFFFFF)
    return head + bytes(name + extra + comment)


def write_zip(entries: list[Entry], *, prefix: Any = b"", shift: Any = True, gap: Any = b"", tail:
    Any = b"", comment: Any = b"", zip64: Any = False, order: Any = None, eocd: Any = None, eocd64:
    Any = None, locator: Any = None, before_central: Any = b"") -> bytes:
    """The entries as a zip; `order` may reorder the central list, `eocd` overrides fields."""
    out = bytearray(prefix)
    centrals = []
    for e in entries:
        if e.kw.get("local", True):
            at = len(out) if shift else len(out) - len(prefix)
            body, known = local_of(e)
            out += body + e.g("after", b"") + gap
        else:
            at = e.g("offset", 0)
            _, known = local_of(e)
        if e.kw.get("central", True):
            centrals.append(central_of(e, at, known))
    if order:
        centrals = order(centrals)
    out += before_central
    start = len(out) if shift else len(out) - len(prefix)
    cd = b"".join(centrals)
    out += cd
    f = {"disk": 0, "cddisk": 0, "here": len(centrals), "total": len(centrals),
        "size": len(cd), "offset": start,
        "comment_len": len(comment)}
    if zip64:
        z: dict[str, Any] = dict(f, recsize=44, made=45, need=45)
        z.update(eocd64 or {})
        z_at = len(out)
        if not z.get("omit"):
            out += struct.pack("<IQHHIIQQQQ", 0x06064B50, z["recsize"], z["made"], z["need"], z[
                "disk"], z["cddisk"], z["here"], z["total"], z["size"], z["offset"]) + z.get(
                "extra", b"")
        loc = {"disk": 0, "offset": z_at, "disks": 1}
        loc.update(locator or {})
        if not loc.get("omit"):
            out += struct.pack("<IIQI", 0x07064B50, loc["disk"], loc["offset"], loc["disks"])
        f.update(here=0xFFFF, total=0xFFFF, size=0xFFFFFFFF, offset=0xFFFFFFFF)
    f.update(eocd or {})
    if not f.get("omit"):
        out += struct.pack("<IHHHHIIH", 0x06054B50, f["disk"] & 0xFFFF, f["cddisk"] & 0xFFFF, f[
            "here"] & 0xFFFF, f["total"] & 0xFFFF, f["size"] & 0xFFFFFFFF, f["offset"] & 0xFFFFFFFF,
            f["comment_len"] & 0xFFFF) + comment
    return bytes(out + tail)
