"""Zips whose folders hold bytes or whose files share them."""

# fmt: off

from __future__ import annotations

import functools
import hashlib
import re
import struct
import zlib
from typing import Any

from tests.packs.attacks.packed import Bomb, Pack
from tests.packs.attacks.register import Made, Maker, recipe
from tests.packs.attacks.zips import DEFLATED, MB, STORED, Entry, deflate_fill, local_of, write_zip

A = functools.partial(recipe, family="archive")


def archive(name: str, what: str, expected: str, make: Maker, must_not: str = "", sound: bool =
    False) -> None:
    recipe(name, "archive", what, expected, make, must_not, sound)


def entries_of(p: Pack, method: Any = STORED) -> list[Entry]:
    return p.rehash().entries(method)


def plus(*extra: Any, first: Any = False, **zipkw: Any) -> Any:
    """The sound pack with more entries, which no manifest names."""
    def make(p: Pack) -> Made:
        es = entries_of(p)
        new = [e(p) if callable(e) else e for e in extra]
        return write_zip(new + es if first else es + new, **zipkw)
    return make


def change(ending: str, **kw: Any) -> Any:
    """The sound pack with the fields of the entry that ends so changed."""
    def make(p: Pack) -> Made:
        es = entries_of(p)
        hit = [e for e in es if e.name.endswith(ending)]
        assert hit, ending
        for e in hit:
            e.kw.update(kw)
        return write_zip(es)
    return make


def listed(path: Any, data: Any = b"x\n", **kw: Any) -> Any:
    """A file under this path, rightly listed: only the path can be the reason."""
    def make(p: Pack) -> Made:
        return p.put(path, data).done(**kw)
    return make


archive("dir-deflate-claims-nothing",
    "a folder entry of 0 claimed bytes whose deflate stream holds 200 MB", "refuse", plus(lambda p:
    Entry(f"{p.root}/data/unit/more/", b"", DEFLATED, raw=deflate_fill(b"\0", 200 * MB)[0], usize=0,
    crc=0)))
archive("dir-stored-with-data", "a folder entry that stores 50 kB which no manifest covers",
    "refuse", plus(lambda p: Entry(f"{p.root}/data/unit/more/", b"MZ" + b"\x90" * 50_000)))
archive("dir-local-data-central-empty",
    "a folder entry: central list says 0 bytes, local header 50 kB", "refuse", plus(lambda p: Entry(
    f"{p.root}/data/unit/more/", b"q" * 50_000, ccsize=0, cusize=0, ccrc=0)))
archive("dir-by-attribute-only",
    "an entry without a final slash that DOS and Unix attributes call a folder, with data",
    "refuse", plus(lambda p: Entry(f"{p.root}/data/unit/more", b"hidden", attr=(0o40755 << 16) |
    0x10)))
archive("dir-attribute-on-a-real-file", "unit.md carries the attributes of a folder", "harmless",
    change("/unit.md", attr=(0o40755 << 16) | 0x10),
    "the unit's text skipped from the checks yet unpacked")
archive("dir-slash-same-as-a-file", "a folder entry 'unit.md/' beside the file 'unit.md'", "refuse",
    plus(lambda p: Entry(f"{p.root}/data/unit/unit.md/", b"", attr=(0o40755 << 16) | 0x10)))
archive("dir-backslash-end",
    "an entry whose name ends in a backslash, with data (a folder to some readers)", "refuse", plus(
    lambda p: Entry(f"{p.root}/data/unit/more\\", b"hidden")))
archive("file-below-a-file", "about.json is a file and also the parent of another", "refuse",
    listed("data/about.json/evil.txt"), sound=True)
archive("file-below-a-file-first",
    "the child comes before the parent, so that a folder is in the file's way", "refuse", lambda p:
    write_zip([Entry(f"{p.root}/data/unit/unit.md/x", b"x"), *entries_of(p)]))
archive("dirs-60000-empty", "60,000 folder entries, nothing in them", "refuse", lambda p: write_zip(
    entries_of(p) + [Entry(f"{p.root}/data/unit/media/d{i}/", b"", attr=(0o40755 << 16) | 0x10) for
    i in range(60_000)]))
archive("dirs-one-name-30000-levels", "one folder entry whose name is 30,000 levels deep", "refuse",
    plus(lambda p: Entry(f"{p.root}/data/" + "a/" * 30_000)))
archive("dirs-few-harmless", "ordinary folder entries for every folder, as many tools write them",
    "harmless", lambda p: write_zip([Entry(f"{p.root}/{d}", b"", attr=(0o40755 << 16) | 0x10) for d
    in ("", "data/", "data/pages/", "data/unit/", "data/unit/media/")] + entries_of(p)),
    "a refusal for this alone is a (small) fault: most tools write them")


def overlap_full(p: Pack, n: Any = 20_000, size: Any = 5 * MB, same: Any = False) -> Any:
    b = Bomb(b"<svg/>", b" ", size)
    es = entries_of(p)
    first = b.entry(f"{p.root}/data/unit/media/k0.svg")
    at = sum(len(local_of(e)[0]) for e in es)
    more = [b.entry(f"{p.root}/data/unit/media/k{0 if same else i}.svg", local=False, offset=at) for
        i in range(1, n)]
    return write_zip([*es, first, *more])


def crc_combine(a: int, b: int, length: int) -> int:
    """The CRC-32 of x + y from those of x and y and the length of y (by matrices over GF(2))."""
    def times(m: Any, v: Any) -> Any:
        out, i = 0, 0
        while v:
            if v & 1:
                out ^= m[i]
            v >>= 1
            i += 1
        return out
    odd = [0xEDB88320] + [1 << i for i in range(31)]
    even = [times(odd, x) for x in odd]
    odd = [times(even, x) for x in even]
    while length:
        even = [times(odd, x) for x in odd]
        if length & 1:
            a = times(even, a)
        length >>= 1
        odd = even
    return a ^ b


def overlap_quoted(p: Pack, n: Any = 240, size: Any = 20 * MB) -> Any:
    """Fifield's: each file's stream is a block that quotes the next header and runs on into it."""
    b = Bomb(b"", b"a", size)
    kernel = Entry(f"{p.root}/data/unit/media/z{n:04}.svg", b"", DEFLATED, raw=b.stream, crc=b.crc,
        usize=b.length)
    blob, _ = local_of(kernel)
    chain = [(kernel, len(blob))]
    usize, raw, crc = b.length, b.stream, b.crc
    for i in range(n - 1, -1, -1):
        head_of_next = blob[:len(blob) - len(raw)]
        crc = crc_combine(zlib.crc32(head_of_next), crc, usize)
        usize += len(head_of_next)
        raw = b"\0" + struct.pack("<HH", len(head_of_next), len(head_of_next) ^
            0xFFFF) + head_of_next + raw
        e = Entry(f"{p.root}/data/unit/media/z{i:04}.svg", b"", DEFLATED, raw=raw, crc=crc,
            usize=usize)
        blob, _ = local_of(e)
        chain.append((e, len(blob)))
    es = entries_of(p)
    start = sum(len(local_of(e)[0]) for e in es)
    total = len(blob)
    over = []
    for e, length in reversed(chain):
        e.kw.update(local=False, offset=start + total - length)
        over.append(e)
    return write_zip(es + over, before_central=blob)


archive("overlap-full-20000",
    "20,000 names in the central list, all at the offset of one 5 MB stream (100 GB)", "refuse",
    overlap_full)
archive("overlap-full-same-name", "20,000 entries with the same name at the same offset", "refuse",
    lambda p: overlap_full(p, same=True))
archive("overlap-quoted-fifield",
    "240 entries whose streams quote each other's headers and share one kernel (4.8 GB "
    "from 30 kB)", "refuse", overlap_quoted)
archive("overlap-quoted-listed",
    "the same in small: 30 entries that share one 10 MB kernel, all rightly listed with "
    "their digests (310 MB from 10 kB)", "refuse", lambda p: _quoted_listed(p), sound=True)


def _quoted_listed(p: Pack, n: Any = 30, size: Any = 10 * MB) -> Any:
    z = overlap_quoted(p.copy(), n, size)
    es = p.rehash().entries()
    start = sum(len(local_of(e)[0]) for e in es)
    heads, at = [], start
    for _ in range(n + 1):
        length = 30 + struct.unpack("<H", z[at + 26:at + 28])[0]
        heads.append(z[at:at + length])
        at += length + 5
    data = bytearray(b"a" * size)
    digests = {}
    for i in range(n, -1, -1):
        digests[f"data/unit/media/z{i:04}.svg"] = (hashlib.sha512(data).hexdigest(), len(data))
        data = heads[i] + data
    pay = p.payload()
    rows = {k: hashlib.sha512(v).hexdigest() for k, v in pay.items()} | {k: v[0] for k, v in
        digests.items()}
    total = sum(map(len, pay.values())) + sum(v[1] for v in digests.values())
    p.put("bag-info.txt", re.sub(r"Payload-Oxum: .*", f"Payload-Oxum: {total}.{len(rows)}", p.text(
        "bag-info.txt")))
    p.put("manifest-sha512.txt", "".join(f"{rows[k]}  {k}\n" for k in sorted(rows))).retag()
    keep = p.copy()
    setattr(keep, "rehash", lambda *_, **__: keep)  # noqa: B010 - its sums are right already
    return overlap_quoted(keep, n, size)


archive("overlap-two-only", "two listed names read from the same local entry", "refuse", lambda p:
    _overlap_two(p))


def _overlap_two(p: Pack) -> Any:
    d = p.drawing()
    twin = d[:-4] + "-twin.svg"
    p.put(twin, p.files[d]).rehash()
    es = p.entries()
    at = 0
    for e in es:
        if e.name.endswith(d):
            offset = at
        if not e.name.endswith(twin):
            at += len(local_of(e)[0])
    for e in es:
        if e.name.endswith(twin):
            e.kw.update(local=False, offset=offset)
    return write_zip(es)


archive("overlap-into-central", "an entry whose data run into the central list", "refuse", plus(
    lambda p: Entry(f"{p.root}/data/unit/media/x.svg", b"<svg/>", csize=400, usize=400)))
archive("overlap-stored-holds-next", "a stored entry whose data are the next entry, header and all",
    "refuse", lambda p: _stored_holds(p))


def _stored_holds(p: Pack) -> Any:
    inner = Entry(f"{p.root}/data/unit/media/inside.svg",
        b"<svg xmlns='http://www.w3.org/2000/svg'/>")
    body, _ = local_of(inner)
    p.put("data/unit/media/outside.svg", body).put("data/unit/media/inside.svg",
        inner.data).rehash()
    es = [e for e in p.entries() if not e.name.endswith("inside.svg")]
    at = 0
    for e in es:
        lb, _ = local_of(e)
        if e.name.endswith("outside.svg"):
            at_inner = at + len(lb) - len(body)
        at += len(lb)
    inner.kw.update(local=False, offset=at_inner)
    return write_zip([*es, inner])
