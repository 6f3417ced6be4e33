"""Bytes to text. Byte order marks and ill-formed bytes: The Unicode Standard, 2.6 and 3.9."""

from __future__ import annotations

import pytest

from build_tools.problem import Fault
from build_tools.source.text import MOST_BYTES, read_text

GERMAN = "title: Wälder\nfür: Öfen\n"


def fault(raw: bytes) -> Fault:
    found = read_text(raw)
    assert isinstance(found, Fault)
    return found


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
def test_line_ends_and_a_byte_order_mark_make_no_difference(end: str, mark: bytes) -> None:
    assert read_text(mark + GERMAN.replace("\n", end).encode()) == GERMAN


def test_mixed_line_ends_are_each_one_line() -> None:
    assert read_text(b"a\r\nb\rc\nd\n\re") == "a\nb\nc\nd\n\ne"


@pytest.mark.parametrize("encoding", ["utf-16", "utf-16-le", "utf-16-be", "utf-32"])
@pytest.mark.parametrize("text", [GERMAN, "---\nformat: 1\n---\n", "a: 1"])
def test_utf_16_is_named(encoding: str, text: str) -> None:
    found = fault(text.encode(encoding))
    assert found.rule == "not-utf-8"
    if encoding.startswith("utf-16"):
        assert "UTF-16" in found.message


def test_big_endian_with_its_mark_is_named() -> None:
    assert "UTF-16" in fault(b"\xfe\xff" + GERMAN.encode("utf-16-be")).message


@pytest.mark.parametrize(
    ("raw", "line", "column"),
    [
        (b"\xff", 1, 1),
        (b"a: \xe9t\xe9\n", 1, 4),
        ("é é ".encode() + b"\xe9", 1, 5),
        (b"\xef\xbb\xbfab\xff", 1, 3),
        (b"a\nb\nc \xc3", 3, 3),
        (b"a\r\nb\r\n\xa0", 3, 1),
        (b"a\rb\rcd\x80", 3, 3),
        ("😀\n😀".encode() + b"\xed\xa0\x80", 2, 2),
        (b"\xc0\xaf", 1, 1),
        (b"ok\xf5\x80\x80\x80", 1, 3),
    ],
)
def test_a_bad_byte_is_placed_by_line_and_letter(raw: bytes, line: int, column: int) -> None:
    found = fault(raw)
    assert (found.rule, found.line, found.column) == ("not-utf-8", line, column)


@pytest.mark.parametrize(
    ("text", "line", "column"),
    [
        ("a\x00b", 1, 2),
        ("\x00" * 12, 1, 1),
        ("a\nbé\x07", 2, 3),
        ("a\r\nb\x1b[0m", 2, 2),
        ("\u200btitle: x", 1, 1),
        ("title: x\u202ey", 1, 9),
        ("a\n\ufeffb", 2, 1),
        ("a\u2028b", 1, 2),
        ("a\x85b", 1, 2),
        ("a\x0cb", 1, 2),
    ],
)
def test_a_hidden_character_is_placed_by_line_and_letter(text: str, line: int, column: int) -> None:
    found = fault(text.encode())
    assert (found.rule, found.line, found.column) == ("hidden-character", line, column)
    assert "U+" in found.message


@pytest.mark.parametrize("text", ["👩‍👧 ok", "tab\there", "Ŵy — “quoted”", "e\u0301", "日本"])
def test_ordinary_text_of_any_language_is_kept(text: str) -> None:
    assert read_text(text.encode()) == text


def test_the_largest_file_is_read_and_one_byte_more_is_not() -> None:
    assert read_text(b"a" * MOST_BYTES) == "a" * MOST_BYTES
    found = fault(b"a" * (MOST_BYTES + 1))
    assert found.rule == "file-too-large"
    assert "262,145 bytes" in found.message
    assert "262,144 is the most" in found.message


def test_an_empty_file_is_empty_text() -> None:
    assert read_text(b"") == ""
