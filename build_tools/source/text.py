"""Bytes of one file to plain text with line feeds, or the fault that prevents it."""

from __future__ import annotations

import re

from build_tools.problem import Fault

MOST_BYTES = 262_144
"""No unit or lesson needs more than a quarter of a mebibyte of text."""

HIDDEN = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u200b\u2028-\u202e\u2060\u2066-\u2069\ufeff\ufffe\uffff]"
)
"""Characters that nobody sees: controls, line ends of other systems, marks that turn text round."""

_UTF16 = (b"\xff\xfe", b"\xfe\xff")


def read_text(raw: bytes) -> str | Fault:
    """Decode `raw` as UTF-8, with or without a byte order mark and with any line ends."""
    if len(raw) > MOST_BYTES:
        return Fault(
            "file-too-large",
            1,
            1,
            f"the file holds {len(raw):,} bytes, and {MOST_BYTES:,} is the most that is read",
            "check that this is the right file, and shorten it or split it",
        )
    if _is_utf16(raw):
        return Fault(
            "not-utf-8",
            1,
            1,
            "the file is saved as UTF-16, which is not read",
            'save it again with the encoding "UTF-8"',
        )
    unmarked = raw.removeprefix(b"\xef\xbb\xbf")
    try:
        text = unmarked.decode("utf-8")
    except UnicodeDecodeError as error:
        return Fault(
            "not-utf-8",
            *_end_of(unmarked[: error.start].decode("utf-8")),
            f"byte {unmarked[error.start]:#04x} here is not UTF-8 text",
            'save the file again with the encoding "UTF-8"',
        )
    text = _with_line_feeds(text)
    if hidden := HIDDEN.search(text):
        return hidden_character(hidden.group(), *_end_of(text[: hidden.start()]))
    return text


def hidden_character(character: str, line: int, column: int) -> Fault:
    """The fault of a character that nobody sees, at `line` and `column` from 1."""
    return Fault(
        "hidden-character",
        line,
        column,
        f"there is a hidden character here (U+{ord(character):04X})",
        "delete it; it often comes along when text is pasted",
    )


def _is_utf16(raw: bytes) -> bool:
    """Whether it bears UTF-16's mark, or every other byte is nearly always nought."""
    evens, odds = raw[0:80:2], raw[1:80:2]
    noughts = sorted((evens.count(0), odds.count(0)))
    return raw[:2] in _UTF16 or (
        len(raw) > 3 and noughts[1] * 2 > len(odds) and noughts[0] * 2 < len(odds)
    )


def _with_line_feeds(text: str) -> str:
    return text.replace("\r\n", "\n").replace("\r", "\n")


def _end_of(text: str) -> tuple[int, int]:
    """Line and column, from 1, of what comes right after `text`."""
    lines = _with_line_feeds(text).split("\n")
    return len(lines), len(lines[-1]) + 1
