"""Zips that lie about sizes, sums and ways to pack."""

# fmt: off

from __future__ import annotations

import bz2
import functools
import lzma
import re
import struct
import zlib
from typing import Any

from tests.packs.attacks.overlaps import archive, change, entries_of
from tests.packs.attacks.packed import Bomb, Pack
from tests.packs.attacks.register import Made, Rows
from tests.packs.attacks.zips import DEFLATED, MB, STORED, Entry, deflate, rng, write_zip


def lying(**kw: Any) -> Any:
    def make(p: Pack) -> Made:
        b = Bomb(b"<svg xmlns='http://www.w3.org/2000/svg'>", b" ", 300 * MB, b"</svg>")
        e = b.entry(f"{p.root}/data/unit/media/big.svg")
        e.kw.update(kw)
        return write_zip([*entries_of(p), e])
    return make


archive("size-central-says-10", "a 300 MB file that the central list calls 10 bytes", "refuse",
    lying(cusize=10))
archive("size-both-say-10", "a 300 MB file that both headers call 10 bytes", "refuse", lying(
    cusize=10, lusize=10))
archive("size-both-say-10-crc-of-10", "the same, with the checksum of the first 10 bytes", "refuse",
    lying(cusize=10, lusize=10, ccrc=zlib.crc32(b"<svg xmlns"), lcrc=zlib.crc32(b"<svg xmlns")))
archive("size-local-says-10", "only the local header lies", "refuse", lying(lusize=10))
archive("size-says-4gb", "unit.md says it is 4 GB", "refuse", change("/unit.md", cusize=0xFFFFFFFE,
    lusize=0xFFFFFFFE))
archive("size-says-one-more", "unit.md says it is one byte longer than it is", "refuse", lambda p:
    change("/unit.md", cusize=len(p.files["data/unit/unit.md"]) + 1, lusize=len(p.files[
    "data/unit/unit.md"]) + 1)(p))
archive("size-csize-past-end", "a compressed size beyond the end of the file", "refuse", change(
    "/unit.md", ccsize=90 * MB, cusize=90 * MB))
archive("size-csize-zero", "unit.md: compressed size 0, size as it was", "refuse", change(
    "/unit.md", ccsize=0))
archive("size-oxum-agrees-with-lie", "the lie about a size is repeated in Payload-Oxum", "refuse",
    lambda p: write_zip([Entry(e.name, e.data, cusize=len(e.data) + 5, lusize=len(e.data) + 5) if
    e.name.endswith("unit.md") else e for e in _oxum_plus(p, 5)]))


def _oxum_plus(p: Pack, n: Any) -> Any:
    p.rehash()
    p.put("bag-info.txt", re.sub(r"Payload-Oxum: (\d+)", lambda m: f"Payload-Oxum: {int(m[1]) + n}",
        p.text("bag-info.txt")))
    return p.retag().entries()


archive("crc-wrong", "unit.md with a wrong CRC (its SHA-512 is right)", "refuse", change("/unit.md",
    crc=0x12345678))
archive("crc-local-wrong-central-right", "only the local CRC is wrong", "harmless", change(
    "/unit.md", lcrc=0xDEADBEEF), "readers disagreeing about the contents")
archive("descriptor-all", "every entry with a data descriptor after it (a streamed zip): lawful",
    "harmless", lambda p: write_zip([Entry(e.name, e.data, DEFLATED, descriptor=True) for e in
    entries_of(p)]), "a traceback; a refusal for this alone is a small fault")
archive("descriptor-lies",
    "data descriptors that say other sizes and checksums than the central list", "refuse", lambda p:
    write_zip([Entry(e.name, e.data, DEFLATED, descriptor=struct.pack("<IIII", 0x08074B50, 1, 2, 3))
    for e in entries_of(p)]))
archive("descriptor-flag-without-one",
    "flag bit 3 set, zero sizes in the local header, no descriptor", "harmless", lambda p:
    write_zip([Entry(e.name, e.data, DEFLATED, descriptor=b"") for e in entries_of(p)]),
    "readers disagreeing about the contents")
archive("deflate-trailing-bytes",
    "60 kB hidden after the end of a deflate stream, inside its compressed size", "refuse", lambda
    p: write_zip([Entry(e.name, e.data, DEFLATED, raw=deflate(e.data) + b"MZ" + bytes(60_000)) if
    e.name.endswith("unit.md") else e for e in entries_of(p)]))
archive("deflate-never-ends", "a deflate stream without its last block", "refuse", lambda p:
    write_zip([Entry(e.name, e.data, DEFLATED, raw=_unfinished(e.data)) if e.name.endswith(
    "unit.md") else e for e in entries_of(p)]))


def _unfinished(data: Any) -> Any:
    c = zlib.compressobj(9, zlib.DEFLATED, -15)
    return c.compress(data) + c.flush(zlib.Z_FULL_FLUSH)


archive("deflate-empty-blocks-18mb",
    "a 0 byte file whose stream is 3.6 million empty stored blocks", "harmless", lambda p:
    write_zip(entries_of(p.put("data/unit/media/n.svg", b""))[:-1] and [Entry(e.name, b"", DEFLATED,
    raw=b"\0\0\0\xff\xff" * 3_600_000 + b"\3\0") if e.name.endswith("/n.svg") else e for e in
    p.entries()]), "over 5 s")
archive("deflate-garbage", "a stream of random bytes called deflate", "refuse", lambda p: write_zip(
    [Entry(e.name, e.data, DEFLATED, raw=rng("g").randbytes(5000)) if e.name.endswith("unit.md")
    else e for e in entries_of(p)]))


def method(n: Any, raw: Any = None, need: Any = 20, ending: str = "/unit.md", lmethod: Any = None,
    **kw: Any) -> Any:
    def make(p: Pack) -> Made:
        out = []
        for e in entries_of(p):
            if e.name.endswith(ending):
                r = raw(e.data) if raw else e.data
                k = dict(raw=r, need=need, **kw)
                if lmethod is not None:
                    k["lmethod"] = lmethod
                e = Entry(e.name, e.data, n, **k)
            out.append(e)
        return write_zip(out)
    return make


def zip_lzma(data: Any, dict_size: Any = 1 << 16) -> Any:
    c = lzma.LZMACompressor(lzma.FORMAT_RAW, filters=[{"id": lzma.FILTER_LZMA1, "lc": 3, "lp": 0,
        "pb": 2, "dict_size": 1 << 16}])
    return struct.pack("<BBH", 9, 4, 5) + bytes([93]) + struct.pack("<I", dict_size) + c.compress(
        data) + c.flush()


archive("method-bzip2", "unit.md packed by bzip2 (Python's zipfile opens it, many readers do not)",
    "harmless", method(12, bz2.compress, 46), "a traceback")
archive("method-lzma", "unit.md packed by LZMA", "harmless", method(14, zip_lzma, 63, flags=2),
    "a traceback")
archive("method-lzma-dictionary-4gb", "LZMA whose properties ask for a dictionary of 4 GiB",
    "refuse", method(14, lambda d: zip_lzma(d, 0xFFFFFFFF), 63, flags=2))
archive("method-lzma-properties-lie", "LZMA with 65,535 bytes of properties that are not there",
    "refuse", method(14, lambda d: struct.pack("<BBH", 9, 4, 65535) + zip_lzma(d)[4:], 63, flags=2))
archive("method-lzma-bomb", "314 MB of zeros by LZMA", "refuse", lambda p: _lzma_bomb(p))
archive("method-bzip2-bomb", "1.8 GB of zeros by bzip2 (about 1.3 kB), claimed as it is", "refuse",
    lambda p: _bz2_bomb(p, True))
archive("method-bzip2-bomb-claims-10", "the same, claimed to be 10 bytes", "refuse", lambda p:
    _bz2_bomb(p, False))


@functools.cache
def _lzma_zeros() -> Any:
    c = lzma.LZMACompressor(lzma.FORMAT_RAW, filters=[{"id": lzma.FILTER_LZMA1, "lc": 3, "lp": 0,
        "pb": 2, "dict_size": 1 << 16, "mode": lzma.MODE_FAST, "mf": lzma.MF_HC3, "nice_len": 273}])
    out = [c.compress(bytes(1 << 20)) for _ in range(300)]
    return struct.pack("<BBH", 9, 4, 5) + bytes([93]) + struct.pack("<I", 1 << 16) + b"".join(
        out) + c.flush()


def _lzma_bomb(p: Pack) -> Any:
    return write_zip([*entries_of(p), Entry(f"{p.root}/data/unit/media/big.svg", b"", 14,
        raw=_lzma_zeros(), usize=300 << 20, need=63, flags=2)])


@functools.cache
def _bz2_zeros() -> Any:

    one = bz2.compress(bytes(45_899_235))
    return one * 40, 45_899_235 * 40


def _bz2_bomb(p: Pack, honest: Any) -> Any:
    raw, n = _bz2_zeros()
    return write_zip([*entries_of(p), Entry(f"{p.root}/data/unit/media/big.svg", b"", 12,
        raw=raw, usize=n if honest else 10, need=46)])


METHODS_AND_VERSIONS_1: Rows = ((1, "shrink"),
    (6, "implode"),
    (9, "deflate64"),
    (93, "zstandard"),
    (95, "xz"),
    (98, "PPMd"),
    (99, "AES"),
    (65535, "no such")
    )
for _n, _what in METHODS_AND_VERSIONS_1:
    archive(f"method-{_n}", f"unit.md by method {_n} ({_what})", "refuse", method(_n))
archive("method-local-differs", "local header says stored, central list deflate", "refuse", method(
    8, lambda d: deflate(d), lmethod=0))
archive("method-central-stored-local-deflate",
    "central list says stored (and the manifest is of the stored bytes), local header " "deflate",
    "refuse", lambda p: _split_personality(p))


def _split_personality(p: Pack) -> Any:
    inner = p.files["data/unit/unit.md"]
    raw = deflate(inner.replace(b"title:", b"title: x", 1))
    p.put("data/unit/media/two.svg", raw).rehash()
    return write_zip([Entry(e.name, raw, STORED, lmethod=8) if e.name.endswith("two.svg") else e for
        e in p.entries()])


archive("version-needed-255", "'version needed to extract' 25.5 in every entry", "refuse", lambda p:
    write_zip([Entry(e.name, e.data, need=255) for e in entries_of(p)]))
archive("flag-encrypted", "unit.md with the flag of encryption", "refuse", change("/unit.md",
    flags=1))
archive("flag-encrypted-central-only", "the flag only in the central list", "refuse", change(
    "/unit.md", cflags=1))
archive("flag-strong-encryption", "flag bits 0 and 6, and a masked header (bit 13)", "refuse",
    change("/unit.md", flags=0x2041))
archive("flag-patched-data",
    "flag bit 5, 'compressed patched data'", "refuse", change(
    "/unit.md", flags=0x20))
archive("flag-all-reserved", "every reserved flag bit set", "harmless", change("/unit.md",
    flags=0xC780), "a traceback")
archive("aes-extra-99", "a proper AES extra field and method 99", "refuse", method(99, lambda d:
    bytes(18) + d + bytes(10), 51, flags=1, extra=struct.pack("<HHHHBH", 0x9901, 7, 2, 0x4541, 3,
    8)))
