"""What stands in a word-processor file to the bytes of one, by python-docx: the same every time."""

from __future__ import annotations

import io
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

import docx
from docx.document import Document as WordDocument
from docx.opc.constants import RELATIONSHIP_TYPE
from docx.oxml.ns import qn
from docx.shared import Cm

from build_tools.word_files.blocks import Block, Heading, Paragraph, Picture, Table
from build_tools.word_files.writing.look import laid_out, page_number
from build_tools.word_files.writing.numbers import numbered
from build_tools.word_files.writing.same_bytes import same_bytes
from build_tools.word_files.writing.tables import add_table, write

_PICTURE_CM = 14
_STYLES = {"title": "Title", "subtitle": "Subtitle", "bullet": "List Bullet",
           "number": "List Number"}  # fmt: skip
_MOST_LEVELS = 3
"""Lists in one another that the styles tell apart."""
_TEMPLATES_OWN = (
    RELATIONSHIP_TYPE.CUSTOM_XML,
    "http://schemas.microsoft.com/office/2007/relationships/stylesWithEffects",
)


@dataclass(frozen=True, slots=True)
class About:
    """What a file says of itself. `language` is a language tag; `day` is when it was issued."""

    title: str
    author: str
    language: str
    day: date
    foot: str
    """What stands at the foot of every page, before the page's number."""


def document_bytes(about: About, blocks: Iterable[Block]) -> bytes:
    """The file. Its bytes depend on nothing but `about` and `blocks`."""
    document = docx.Document()
    laid_out(document, about.language)
    _about(document, about)
    before: Block | None = None
    for block in blocks:
        if isinstance(before, Table) and isinstance(block, Table):
            # two tables with nothing between them would be one
            document.add_paragraph()
        _add(document, block, before)
        before = block
    if isinstance(before, Table):
        document.add_paragraph()
    _foot(document, about.foot)
    _without_the_templates_own(document)
    made = io.BytesIO()
    document.save(made)
    return same_bytes(made.getvalue(), about.day)


def _goes_on(before: Block | None, block: Paragraph) -> bool:
    """Whether a numbered line goes on with the numbers of the list that the line before is in."""
    if not isinstance(before, Paragraph) or before.kind not in ("number", "bullet"):
        return False
    return before.level > block.level or (before.kind, before.level) == ("number", block.level)


def _add(document: WordDocument, block: Block, before: Block | None) -> None:
    match block:
        case Heading():
            heading = document.add_heading(block.text, min(block.level, 6))
            if block.level == 1 and before is not None:
                heading.paragraph_format.page_break_before = True
        case Paragraph():
            level = min(block.level + 1, _MOST_LEVELS)
            style = _STYLES.get(block.kind, "Normal")
            if style.startswith("List") and level > 1:
                style = f"{style} {level}"
            at = document.add_paragraph(style=style)
            if block.kind == "number":
                numbered(document, at, anew=not _goes_on(before, block))
            write(at, block)
        case Table():
            add_table(document, block)
        case Picture():
            _add_picture(document, block)


def _add_picture(document: WordDocument, picture: Picture) -> None:
    shape = document.add_picture(io.BytesIO(picture.data), width=Cm(_PICTURE_CM))
    told = shape._inline.docPr
    told.set("descr", picture.alt)
    told.set("name", "Picture")
    for found in shape._inline.iter(qn("pic:cNvPr")):
        found.set("name", "Picture")
        found.set("descr", picture.alt)


def _foot(document: WordDocument, foot: str) -> None:
    at = document.sections[0].footer.paragraphs[0]
    at.add_run(f"{foot} · ")
    at._p.append(page_number())


def _about(document: WordDocument, about: About) -> None:
    told, day = document.core_properties, datetime(about.day.year, about.day.month, about.day.day)
    told.title, told.author, told.last_modified_by = about.title, about.author, about.author
    told.language, told.comments, told.revision = about.language, "", 1
    told.created = told.modified = day


def _without_the_templates_own(document: WordDocument) -> None:
    """Leave out the small picture of the library's template, and all else that nobody is shown."""
    for part in (document.part, document.part.package):
        for name, to in list(part.rels.items()):
            if to.reltype in (*_TEMPLATES_OWN, RELATIONSHIP_TYPE.THUMBNAIL):
                del part.rels[name]
