"""Small damage to the bytes of one file, at fixed seeds."""

from __future__ import annotations

import random
from collections.abc import Callable, Sequence

STRANGE = (
    "\ufeff",
    "\u200b",
    "\u202e",
    "\u2028",
    "\x00",
    "\x1b",
    "\x85",
    "\xa0",
    "\u0301",
    "😀",
    "٣",
    "ß",
    "İ",
    "日本",
    "\U000e0001",
    "\r",
    "\t",
    "\n",
    "\ufffd",
    "Z\u0301" * 20,
)
SIGNS = (
    *tuple(":-#&*!|>'\"%@`{}[],?<=~\\/ \t"),
    "---",
    "...",
    "<<:",
    "? ",
    "- ",
    "!!",
    "<b>",
    "](",
    "]: ",
)
NUMBERS = (
    "0",
    "-1",
    "13",
    "121",
    "513",
    "999999999",
    "9" * 30,
    "1e400",
    ".nan",
    "-.inf",
    "0x1F",
    "3:45",
    "1.5",
    "1/0",
    "0/0",
    "1 1/2",
    "99 99/99",
    "012",
    "1_000",
    "２",
    "½",
)

Change = Callable[[bytes, random.Random, Sequence[bytes]], bytes]


def mutated(raw: bytes, others: Sequence[bytes], choose: random.Random) -> bytes:
    """`raw` with one to three pieces of damage; `others` are files to borrow from."""
    for _ in range(choose.choice((1, 1, 1, 2, 3))):
        raw = choose.choice(CHANGES)(raw, choose, others)
    return raw


def _lines(raw: bytes) -> list[bytes]:
    return raw.split(b"\n")


def _on_lines(change: Callable[[list[bytes], int, random.Random], None]) -> Change:
    def apply(raw: bytes, choose: random.Random, _: Sequence[bytes]) -> bytes:
        lines = _lines(raw)
        change(lines, choose.randrange(len(lines)), choose)
        return b"\n".join(lines)

    return apply


def _delete(lines: list[bytes], at: int, choose: random.Random) -> None:
    del lines[at : at + choose.choice((1, 1, 2, 8))]


def _duplicate(lines: list[bytes], at: int, choose: random.Random) -> None:
    lines[at:at] = lines[at : at + choose.choice((1, 2, 6))]


def _swap(lines: list[bytes], at: int, choose: random.Random) -> None:
    other = choose.randrange(len(lines))
    lines[at], lines[other] = lines[other], lines[at]


def _cut_line(lines: list[bytes], at: int, choose: random.Random) -> None:
    lines[at] = lines[at][: choose.randrange(len(lines[at]) + 1)]


def _indent(lines: list[bytes], at: int, choose: random.Random) -> None:
    for number in range(at, min(at + choose.choice((1, 1, 3, 10)), len(lines))):
        shift = choose.choice((b" ", b"  ", b"    ", b"\t", b"", b" " * 60))
        lines[number] = shift + (lines[number] if choose.random() < 0.6 else lines[number].lstrip())


def _join_lines(lines: list[bytes], at: int, choose: random.Random) -> None:
    lines[at : at + 2] = [choose.choice((b"", b" ", b": ")).join(lines[at : at + 2])]


def _number(lines: list[bytes], at: int, choose: random.Random) -> None:
    name, colon, _ = lines[at].partition(b":")
    lines[at] = name + (colon or b":") + b" " + choose.choice(NUMBERS).encode()


def _nest(lines: list[bytes], at: int, choose: random.Random) -> None:
    bracket = choose.choice((b"[", b"{a: ", b"- ", b"'", b'"', b"? ", b"&a ", b"*a ", b"!x "))
    lines[at] += b" " + bracket * choose.choice((1, 30, 3000))


def _bytes(raw: bytes, choose: random.Random, _: Sequence[bytes]) -> bytes:
    at = choose.randrange(len(raw) + 1)
    return (
        raw[:at]
        + choose.randbytes(choose.choice((1, 1, 2, 40)))
        + raw[at + choose.choice((0, 1)) :]
    )


def _insert(texts: Sequence[str]) -> Change:
    def apply(raw: bytes, choose: random.Random, _: Sequence[bytes]) -> bytes:
        at = choose.randrange(len(raw) + 1)
        return raw[:at] + choose.choice(texts).encode() + raw[at:]

    return apply


def _truncate(raw: bytes, choose: random.Random, _: Sequence[bytes]) -> bytes:
    return raw[: choose.randrange(len(raw) + 1)]


def _join(raw: bytes, choose: random.Random, others: Sequence[bytes]) -> bytes:
    other = choose.choice(others)
    at = choose.randrange(len(other) + 1)
    return (
        raw + other[at:] if choose.random() < 0.5 else raw[: choose.randrange(len(raw) + 1)] + other
    )


def _encode(raw: bytes, choose: random.Random, _: Sequence[bytes]) -> bytes:
    text = raw.decode("utf-8", "replace")
    kind = choose.choice(("utf-16", "utf-16-be", "utf-8-sig", "cp1252", "cp037", "utf-32"))
    return text.encode(kind, "replace")


def _line_ends(raw: bytes, choose: random.Random, _: Sequence[bytes]) -> bytes:
    return raw.replace(b"\n", choose.choice((b"\r\n", b"\r", b"\n\n", b"\n\r", b"\x0b")))


def _letters(raw: bytes, choose: random.Random, _: Sequence[bytes]) -> bytes:
    fresh = bytearray(raw)
    for _time in range(choose.choice((1, 2, 5))):
        if fresh:
            fresh[choose.randrange(len(fresh))] = choose.choice(b"abcXYZ059:-_ \n")
    return bytes(fresh)


CHANGES: tuple[Change, ...] = (
    *(_on_lines(c) for c in (_delete, _duplicate, _swap, _cut_line, _indent, _join_lines)),
    *(_on_lines(c) for c in (_number, _nest)),
    _insert(SIGNS),
    _insert(STRANGE),
    _bytes,
    _truncate,
    _join,
    _encode,
    _line_ends,
    _letters,
)
