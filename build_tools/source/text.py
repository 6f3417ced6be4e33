"""Bytes of one file to plain text with line feeds, or the fault that prevents it."""

from __future__ import annotations

import re

from build_tools.problem import Fault

MOST_BYTES = 262_144
"""No unit or lesson needs more than a quarter of a mebibyte of text."""

_HIDDEN = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u2028\u2029\ufeff\ufffe\uffff]")
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
    if raw[:2] in _UTF16 or (len(raw) > 3 and raw[1::2][:40].count(0) * 2 > len(raw[1::2][:40])):
        return Fault(
            "not-utf-8",
            1,
            1,
            "the file is saved as UTF-16, which is not read",
            'save it again with the encoding "UTF-8"',
        )
    try:
        text = raw.removeprefix(b"\xef\xbb\xbf").decode("utf-8")
    except UnicodeDecodeError as error:
        before = raw[: error.start]
        return Fault(
            "not-utf-8",
            before.count(b"\n") + 1,
            error.start - (before.rfind(b"\n") + 1) + 1,
            f"byte {raw[error.start]:#04x} here is not UTF-8 text",
            'save the file again with the encoding "UTF-8"',
        )
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    if hidden := _HIDDEN.search(text):
        before_text = text[: hidden.start()]
        return Fault(
            "hidden-character",
            before_text.count("\n") + 1,
            hidden.start() - (before_text.rfind("\n") + 1) + 1,
            f"there is a hidden character here (U+{ord(hidden.group()):04X})",
            "delete it; it often comes along when text is pasted",
        )
    return text
