"""Files that mean harm, or are none: each is refused in plain words, and nothing else is raised.

OWASP, XML External Entity Prevention and Zip bombs; PKWARE, APPNOTE.TXT; W3C, XML 1.0, 4.
"""

from __future__ import annotations

import io
import re
import struct
import zipfile
from collections.abc import Callable, Mapping
from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.word_files.reading import xml_tree
from build_tools.word_files.reading.document import read_document
from build_tools.word_files.reading.limits import (
    MOST_ENTRIES,
    MOST_FILE,
    MOST_LEVELS,
    MOST_PART,
)
from build_tools.word_files.reading.trouble import DocumentError
from tests.support.word_files import document, links, paragraph, table, written

LAUGHS = (
    '<!DOCTYPE d [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">'
    '<!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;">]>'
)
OUTSIDE = '<!DOCTYPE d [<!ENTITY x SYSTEM "file:///etc/hostname">]>'
SOUND = written(document(paragraph("Lesson 1", "heading1") + table([["Say", "Stop."]])))


def zipped(parts: dict[str, str]) -> bytes:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, text in parts.items():
            archive.writestr(name, text)
    return made.getvalue()


def named_twice() -> bytes:
    made = io.BytesIO(SOUND)
    with zipfile.ZipFile(made, "a") as archive, pytest.warns(UserWarning, match="Duplicate"):
        archive.writestr("word/document.xml", document(paragraph("another")))
    return made.getvalue()


def locked() -> bytes:
    """Every entry marked as encrypted (APPNOTE 4.4.4, bit 0), in the list at the end."""
    data = bytearray(SOUND)
    for found in re.finditer(b"PK\x01\x02", SOUND):
        at = found.start() + 8
        (flags,) = struct.unpack_from("<H", data, at)
        struct.pack_into("<H", data, at, flags | 1)
    return bytes(data)


def damaged() -> bytes:
    data = bytearray(SOUND)
    at = SOUND.index(b"word/document.xml") + 40
    data[at : at + 20] = b"\xff" * 20
    return bytes(data)


DEEP = "<w:sdt>" * (MOST_LEVELS + 5) + "</w:sdt>" * (MOST_LEVELS + 5)
DEEP_LOOK = "<w:rPr>" + "<w:b>" * (MOST_LEVELS + 5) + "</w:b>" * (MOST_LEVELS + 5) + "</w:rPr>"
CASES: Mapping[str, tuple[Callable[[], bytes], str]] = {
    "nothing": (lambda: b"", "no word-processor file"),
    "a picture": (lambda: b"\x89PNG\r\n\x1a\n" + bytes(50), "no word-processor file"),
    "cut short": (lambda: SOUND[:-30], "no word-processor file"),
    "an older kind": (lambda: b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(600), "locked, or of an"),
    "another zip": (lambda: zipped({"a.txt": "a"}), "no word-processor file"),
    "another kind": (lambda: zipped({"mimetype": "x"}), "of another kind"),
    "no body": (lambda: written("<document/>"), "no word-processor file"),
    "an empty part": (lambda: written(""), "not sound XML"),
    "entities": (lambda: written(LAUGHS + document("&c;")), "document type"),
    "an entity from outside": (lambda: written(OUTSIDE + document("&x;")), "document type"),
    "entities in styles": (
        lambda: written(document(""), {"word/styles.xml": f"{LAUGHS}<s>&c;</s>"}),
        "document type",
    ),
    "main part outside": (
        lambda: written(
            document(""),
            {"_rels/.rels": links(("r", "officeDocument", "https://x/a.xml"), outside=True)},
        ),
        "no word-processor file",
    ),
    "main part above": (
        lambda: written(
            document(""), {"_rels/.rels": links(("r", "officeDocument", "../../etc/passwd"))}
        ),
        "no word-processor file",
    ),
    "too deep": (lambda: written(document(DEEP)), "deep"),
    "too deep in what is dropped": (lambda: written(document(DEEP_LOOK)), "deep"),
    "a bomb": (lambda: written(document(" " * (MOST_PART + 1))), "split it"),
    "too many entries": (
        lambda: zipped({f"{n}.xml": "" for n in range(MOST_ENTRIES + 1)}),
        "more than",
    ),
    "too large": (lambda: bytes(MOST_FILE + 1), "more than"),
    "a long namespace": (
        lambda: written(document(f'<x:a xmlns:x="{"n" * 5000}"/>')),
        "length that no program",
    ),
    "named twice": (named_twice, "one name"),
    "locked": (locked, "locked with a password"),
    "damaged": (damaged, "damaged"),
}  # fmt: skip


@pytest.mark.parametrize("name", CASES)
def test_it_is_refused_in_plain_words(name: str) -> None:
    make, says = CASES[name]
    with pytest.raises(DocumentError, match=says) as refused:
        read_document(make())
    assert "Error" not in str(refused.value)
    assert "\n" not in str(refused.value)


def test_a_file_with_too_many_elements_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(xml_tree, "MOST_ELEMENTS", 500)
    with pytest.raises(DocumentError, match="split it"):
        read_document(written(document("<w:p/>" * 500)))


@given(st.data())
def test_whatever_is_changed_in_a_file_it_is_read_or_refused(data: st.DataObject) -> None:
    changed = bytearray(SOUND)
    for _ in range(data.draw(st.integers(1, 6))):
        at = data.draw(st.integers(0, len(changed) - 1))
        changed[at] = data.draw(st.integers(0, 255))
    with suppress(DocumentError):
        read_document(bytes(changed))
