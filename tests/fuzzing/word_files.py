"""Word-processor files for the fuzzer: whole, and their XML alone, so that it reaches the text.

A draft is made of whatever is read, and every file of the draft is read again: so nothing that
stands in a stranger's file may give a draft that the bank cannot read.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterator

from build_tools.drafting.asked import BankFacts
from build_tools.drafting.from_document.draft_from_document import (
    DraftFromDocument,
    draft_from_document,
)
from build_tools.model.unit import SchoolYears
from build_tools.schema_check.check import check_document
from build_tools.source.front_matter import Document, read_markdown
from build_tools.word_files.reading.document import ReadDocument, read_document
from build_tools.word_files.reading.trouble import DocumentError
from tests.support.word_files import STYLES, W, document, links, paragraph, table

PARTING = b"\n=====\n"
"""Between the parts of a file in one row of bytes."""
_PARTS = (
    "word/document.xml",
    "word/styles.xml",
    "word/footnotes.xml",
    "word/comments.xml",
    "word/_rels/document.xml.rels",
)
_NAMED = (
    ("s1", "styles", "styles.xml"),
    ("n1", "footnotes", "footnotes.xml"),
    ("c1", "comments", "comments.xml"),
    ("a1", "hyperlink", "https://a.example"),
)
_MOST_DRAFTED = 3_000
"""Bytes of XML of which a draft is made: a draft of much takes far longer than reading it."""


def whole(data: bytes) -> object:
    """Read a file as it comes."""
    try:
        return read_document(data)
    except DocumentError:
        return None


def parts(data: bytes) -> object:
    """Read a file with these very parts, and make a draft of it that is read and fits."""
    given = dict(zip(_PARTS, data.split(PARTING, len(_PARTS) - 1), strict=False))
    try:
        read = read_document(_zipped(given))
    except DocumentError:
        return None
    return _drafted(read) if len(data) <= _MOST_DRAFTED else read


def wholes() -> Iterator[bytes]:
    """Sound files, stored so that a changed byte is a changed word."""
    yield _zipped({"word/document.xml": document(_LESSON).encode()})
    yield _zipped({"word/document.xml": document("").encode()}, zipfile.ZIP_DEFLATED)


def some_parts() -> Iterator[bytes]:
    """Sound parts of files."""
    note = f'<w:footnotes xmlns:w="{W}"><w:footnote>{paragraph("A note.")}</w:footnote>'
    remark = f'<w:comments xmlns:w="{W}"><w:comment>{paragraph("Why?")}</w:comment></w:comments>'
    yield document(_LESSON).encode()
    yield PARTING.join(
        text.encode()
        for text in (
            document(_RARER),
            STYLES,
            f"{note}</w:footnotes>",
            remark,
            links(*_NAMED),
        )
    )


WORDS = (b"<w:p>", b"</w:p>", b"<w:tbl>", b"<w:tr>", b"<w:tc>", b"<w:t>", b"</w:t>", b"<w:del>",
         b"<w:txbxContent>", b"<mc:AlternateContent>", b"<mc:Choice>", b"<w:sdt>", b"<w:numPr>",
         b"<w:outlineLvl w:val=", b"<w:basedOn w:val=", b"xmlns:w=", b"<!DOCTYPE", b"<![CDATA[",
         b"&#x", b"&amp;", b"encoding=", b"heading1", b"Lesson 1", b"Step 1", b"Minutes", b"Say",
         b"5 minutes", b"What to get", PARTING, b"PK\x01\x02", b"PK\x03\x04",
         b"PK\x05\x06")  # fmt: skip
_LESSON = (
    paragraph("Waves", "Title")
    + paragraph("Lesson 1: Roll", "heading1")
    + paragraph("45 minutes. In pairs.")
    + paragraph("Drums", "ListBullet")
    + table([["Step 1: Walk", "0 to 5 · 5 minutes"], ["Say", "Stop!"], ["Look for", "Stillness"]])
)
_RARER = (
    paragraph("Lesson 2", "heading1", '<w:hyperlink r:id="a1"/><w:tab/><w:noBreakHyphen/>')
    + "<w:del><w:r><w:delText>gone</w:delText></w:r></w:del>"
    + "<w:p><mc:AlternateContent><mc:Choice><w:txbxContent><w:p><w:r><w:t>box</w:t></w:r></w:p>"
    "</w:txbxContent></mc:Choice><mc:Fallback/></mc:AlternateContent></w:p>"
    '<w:sdt><w:p><wp:docPr descr="A wave"/></w:p></w:sdt>'
)


def _zipped(given: dict[str, bytes], method: int = zipfile.ZIP_STORED) -> bytes:
    made = io.BytesIO()
    named = {
        "_rels/.rels": links(("r1", "officeDocument", "word/document.xml")).encode(),
        "word/_rels/document.xml.rels": links(*_NAMED).encode(),
    }
    with zipfile.ZipFile(made, "w", method) as archive:
        for name, data in {**named, **given}.items():
            archive.writestr(zipfile.ZipInfo(name), data)
    return made.getvalue()


def _drafted(read: ReadDocument) -> object:
    years = (SchoolYears("England", ("3", "4")),)
    facts = BankFacts("A bank", "2026-11-29", ("sea",))
    made = draft_from_document(read, years, lambda _: facts)
    if isinstance(made, DraftFromDocument):
        for name, text in made.files.items():
            again = read_markdown(name, text.encode())
            assert isinstance(again, Document), again
            assert check_document(again, "unit" if name == "unit.md" else "lesson") == []
    return made
