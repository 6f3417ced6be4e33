"""The files of a zip, read from its bytes and checked before a byte of them is believed.

PKWARE, APPNOTE.TXT - .ZIP File Format Specification, 6.3.10 (sections 4.3 and 4.4). A program that
reads the list at the end and one that reads from the start must see the same files, so each entry
is compared with what stands before its data, and nothing may lie between, before or after them.
"""

from __future__ import annotations

import struct
import zlib
from dataclasses import dataclass

from build_tools.packs.limits import (
    MOST_FILE,
    MOST_FILES,
    MOST_NOTED,
    MOST_PACK,
    MOST_TIMES,
    MOST_WHOLE,
)
from build_tools.packs.reading.names import printable, refuse_clashes, refuse_path
from build_tools.packs.reading.refused_error import RefusedError

_END = struct.Struct("<4s4H2IH")
_CENTRAL = struct.Struct("<4s6H3I5H2I")
_LOCAL = struct.Struct("<4s5H3I2H")
_STORED, _DEFLATED = 0, 8
_ENCRYPTED, _SIZES_AFTER, _PATCH, _STRONG, _UTF8, _HIDDEN = 1, 8, 32, 64, 2048, 8192
_UNIX = 3
_ZIP64 = 0xFFFFFFFF
_OTHER_NAME = 0x7075
_NEWEST = 63
"""The newest kind of zip (APPNOTE 4.4.3.2), 6.3; what is read here needs 2.0."""
_NOTED = frozenset({0x5455, 0x5855, 0x7875, 0x000A})
"""What else is noted of a file: its times and its owner's number (APPNOTE 4.5.2, 4.6)."""
_DESCRIPTOR = b"PK\x07\x08"
_SMALL = 4096
"""Bytes up to which a file may shrink as much as it likes: a page of spaces is no bomb."""
_KINDS = {0xA: "a link", 0x2: "a device", 0x6: "a device", 0x1: "a pipe", 0xC: "a socket"}


@dataclass(frozen=True, slots=True)
class _Entry:
    name: str
    flags: int
    method: int
    crc: int
    packed: int
    size: int
    offset: int

    @property
    def is_folder(self) -> bool:
        """Whether it names a folder, which other programs make on their way."""
        return self.name.endswith("/")


def unzipped(data: bytes) -> dict[str, bytes]:
    """Every file of the zip by its path. Raises RefusedError, in words, for all that is unsafe."""
    if len(data) > MOST_PACK:
        raise RefusedError(f"it has {len(data):,} bytes, more than {MOST_PACK:,}")
    entries, start = _listed(data)
    for entry in entries:
        refuse_path(entry.name.removesuffix("/"))
        if entry.is_folder and entry.size:
            raise RefusedError(f"`{printable(entry.name)}` is a folder and has bytes of its own")
    refuse_clashes(entry.name for entry in entries)
    _refuse_too_much(entries)
    found: dict[str, bytes] = {}
    at = 0
    for entry in sorted(entries, key=lambda one: one.offset):
        if entry.offset != at:
            what = "share bytes" if entry.offset < at else "have bytes between them"
            raise RefusedError(f"its files {what}, before `{printable(entry.name)}`")
        body, at = _body(data, entry, start)
        if not entry.is_folder:
            found[entry.name] = body
    if at != start:
        raise RefusedError("it has bytes between its files and the list of them")
    return found


def _listed(data: bytes) -> tuple[list[_Entry], int]:
    """The entries that the list at the end names, and where that list starts."""
    at = len(data) - _END.size
    if at < 0 or not data.startswith((b"PK\x03\x04", b"PK\x05\x06")):
        raise RefusedError("it is not a zip file")
    if data[at : at + 4] != b"PK\x05\x06":
        raise RefusedError("it ends in the middle, or something was added after its end")
    _, disk, first, here, count, size, start, comment = _END.unpack_from(data, at)
    if comment or disk or first or here != count:
        raise RefusedError("it is one part of several, or says so")
    if _ZIP64 in (size, start) or count == 0xFFFF or data[at - 20 : at - 16] == b"PK\x06\x07":
        raise RefusedError("it is written for files of more than four thousand million bytes")
    if count > MOST_FILES:
        raise RefusedError(f"it holds {count:,} files, more than {MOST_FILES}")
    if start + size != at:
        raise RefusedError("the list of its files is not where it says")
    entries, here = [], start
    for _ in range(count):
        entry, here = _central(data, here, at)
        entries.append(entry)
    if here != at:
        raise RefusedError("the list of its files holds more than it says")
    return entries, start


def _central(data: bytes, at: int, end: int) -> tuple[_Entry, int]:
    if at + _CENTRAL.size > end or data[at : at + 4] != b"PK\x01\x02":
        raise RefusedError("the list of its files is damaged")
    (
        _,
        made,
        needed,
        flags,
        method,
        _,
        _,
        crc,
        packed,
        size,
        long,
        extra,
        comment,
        disk,
        _,
        mode,
        offset,
    ) = _CENTRAL.unpack_from(data, at)
    after = at + _CENTRAL.size + long + extra
    if after + comment > end or disk:
        raise RefusedError("the list of its files is damaged")
    raw = data[at + _CENTRAL.size : at + _CENTRAL.size + long]
    name = _name(raw, flags)
    fields = data[at + _CENTRAL.size + long : after]
    if comment:
        raise RefusedError(f"`{printable(name)}` comes with words that nobody is shown")
    if needed & 0xFF > _NEWEST:
        raise RefusedError(f"`{printable(name)}` is said to need a newer kind of zip than there is")
    _refuse_kind(name, made >> 8, mode >> 16)
    _refuse_flags(name, flags, method)
    if _ZIP64 in (packed, size, offset):
        raise RefusedError(
            f"`{printable(name)}` says that it is larger than four thousand million bytes"
        )
    _refuse_extra(name, fields)
    return _Entry(name, flags, method, crc, packed, size, offset), after


def _name(raw: bytes, flags: int) -> str:
    try:
        return raw.decode("utf-8" if flags & _UTF8 else "ascii")
    except UnicodeDecodeError:
        raise RefusedError(
            f"the name `{printable(raw.decode('ascii', 'replace'))}` is not written in UTF-8"
        ) from None


def _refuse_kind(name: str, system: int, mode: int) -> None:
    kind = _KINDS.get(mode >> 12) if system == _UNIX or mode >> 12 else None
    if kind:
        raise RefusedError(f"`{printable(name)}` is {kind}, not a file")


def _refuse_flags(name: str, flags: int, method: int) -> None:
    if flags & (_ENCRYPTED | _STRONG | _HIDDEN):
        raise RefusedError(
            f"`{printable(name)}` is locked with a password: ask for a pack without one"
        )
    if flags & _PATCH or method not in (_STORED, _DEFLATED):
        raise RefusedError(
            f"`{printable(name)}` is packed in a way that is not read (method {method})"
        )


def _refuse_extra(name: str, fields: bytes) -> None:
    at = 0
    while at + 4 <= len(fields):
        kind, size = struct.unpack_from("<2H", fields, at)
        if kind == _OTHER_NAME:
            raise RefusedError(f"`{printable(name)}` has a second name")
        if kind not in _NOTED or len(fields) > MOST_NOTED:
            raise RefusedError(f"`{printable(name)}` comes with bytes that nobody is shown")
        at += 4 + size
    if at != len(fields):
        raise RefusedError(f"what is noted of `{printable(name)}` is damaged")


def _refuse_too_much(files: list[_Entry]) -> None:
    for entry in files:
        if entry.size > MOST_FILE:
            raise RefusedError(
                f"`{printable(entry.name)}` has {entry.size:,} bytes, more than {MOST_FILE:,}"
            )
        if entry.size > max(_SMALL, MOST_TIMES * entry.packed):
            raise RefusedError(
                f"`{printable(entry.name)}` gets {entry.size:,} bytes out of {entry.packed:,}, "
                f"more than {MOST_TIMES} times as many"
            )
    whole = sum(entry.size for entry in files)
    if whole > MOST_WHOLE:
        raise RefusedError(f"its files have {whole:,} bytes together, more than {MOST_WHOLE:,}")


def _body(data: bytes, entry: _Entry, end: int) -> tuple[bytes, int]:
    """What is in one file, and where its last byte is behind."""
    at = entry.offset
    damaged = RefusedError(f"`{printable(entry.name)}` is not where the list of files says")
    if at + _LOCAL.size > end or data[at : at + 4] != b"PK\x03\x04":
        raise damaged
    _, _, flags, method, _, _, crc, packed, size, long, extra = _LOCAL.unpack_from(data, at)
    start = at + _LOCAL.size + long + extra
    after = start + entry.packed
    if after > end:
        raise damaged
    raw = data[at + _LOCAL.size : at + _LOCAL.size + long]
    told = (crc, packed, size)
    later = flags & _SIZES_AFTER and told in ((0, 0, 0), (entry.crc, 0, 0))
    same = told == (entry.crc, entry.packed, entry.size)
    if _name(raw, flags) != entry.name or method != entry.method or not (same or later):
        raise RefusedError(f"`{printable(entry.name)}` is described in two ways that differ")
    _refuse_flags(entry.name, flags, method)
    _refuse_extra(entry.name, data[at + _LOCAL.size + long : start])
    body = _unpacked(data[start:after], entry)
    if len(body) != entry.size or zlib.crc32(body) != entry.crc:
        raise RefusedError(f"`{printable(entry.name)}` is damaged: ask for the pack again")
    if flags & _SIZES_AFTER:
        after = _behind_descriptor(data, after, entry)
    return body, after


def _unpacked(packed: bytes, entry: _Entry) -> bytes:
    if entry.method == _STORED:
        return packed
    reader = zlib.decompressobj(-zlib.MAX_WBITS)
    try:
        # one byte more than it says: enough to see that it lies, whatever it would grow to
        body = reader.decompress(packed, entry.size + 1)
    except zlib.error:
        raise RefusedError(
            f"`{printable(entry.name)}` is damaged: ask for the pack again"
        ) from None
    if reader.unconsumed_tail or reader.unused_data or not reader.eof:
        raise RefusedError(f"`{printable(entry.name)}` holds more than it says")
    return body


def _behind_descriptor(data: bytes, at: int, entry: _Entry) -> int:
    """Where the sizes that stand behind a file end (APPNOTE 4.3.9)."""
    body = struct.pack("<3I", entry.crc, entry.packed, entry.size)
    for told in (_DESCRIPTOR + body, body):
        if data[at : at + len(told)] == told:
            return at + len(told)
    raise RefusedError(f"`{printable(entry.name)}` is described in two ways that differ")
