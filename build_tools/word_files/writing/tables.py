"""A table of a word-processor file: its first row marked as its head, told in words what it is."""

from __future__ import annotations

from docx.document import Document as WordDocument
from docx.oxml import OxmlElement
from docx.oxml.ns import qn
from docx.shared import Cm
from docx.table import Table as WordTable
from docx.table import _Cell, _Row
from docx.text.paragraph import Paragraph as WordParagraph

from build_tools.word_files.blocks import Cell, Paragraph, Table
from build_tools.word_files.writing.look import MARGIN_CM, WIDTH_CM

_LABEL_CM = 3.6
_SHADE = "E6E6E6"
"""Light enough for black words to have a contrast of 16 to 1, and seen on a photocopy."""


def add_table(document: WordDocument, table: Table) -> None:
    """Add the table, its first row heading it on every page."""
    columns = max(len(row) for row in table.rows)
    made = document.add_table(0, columns, style="Table Grid")
    made.autofit = False
    widths = _widths(columns)
    for column, width in zip(made.columns, widths, strict=True):
        column.width = Cm(width)
    for n, cells in enumerate(table.rows):
        row = made.add_row()
        _marked(row, heads=n == 0)
        for at, cell in enumerate(row.cells):
            cell.width = Cm(widths[at])
            _fill(cell, cells[at] if at < len(cells) else (), strong=n == 0 or at == 0)
            if n == 0:
                _shaded(cell)
    _told(made, table.says)


def _widths(columns: int) -> list[float]:
    whole = WIDTH_CM - 2 * MARGIN_CM
    if columns == 1:
        return [whole]
    label = min(_LABEL_CM, whole / columns)
    return [label, *[(whole - label) / (columns - 1)] * (columns - 1)]


def _fill(cell: _Cell, paragraphs: Cell, *, strong: bool) -> None:
    first: WordParagraph | None = cell.paragraphs[0]
    for one in paragraphs:
        at = first or cell.add_paragraph()
        first = None
        write(at, one, strong=strong)


def write(at: WordParagraph, paragraph: Paragraph, *, strong: bool = False) -> None:
    """Write the words of a paragraph, all of them strong if so wanted."""
    for run in paragraph.runs:
        made = at.add_run(run.text)
        if run.strong or strong:
            made.bold = True


def _marked(row: _Row, *, heads: bool) -> None:
    properties = row._tr.get_or_add_trPr()
    properties.append(OxmlElement("w:cantSplit"))
    if heads:
        properties.append(OxmlElement("w:tblHeader"))


def _shaded(cell: _Cell) -> None:
    shade = OxmlElement("w:shd")
    for name, value in (("val", "clear"), ("color", "auto"), ("fill", _SHADE)):
        shade.set(qn(f"w:{name}"), value)
    cell._tc.get_or_add_tcPr().append(shade)


def _told(table: WordTable, says: str) -> None:
    """Which cells head the others, for who hears the table, and what it is (17.4.58, 17.4.62)."""
    properties = table._tbl.tblPr
    for found in properties.findall(qn("w:tblLook")):
        properties.remove(found)
    look = OxmlElement("w:tblLook")
    look.set(qn("w:val"), "06A0")
    for name, value in (("firstRow", "1"), ("lastRow", "0"), ("firstColumn", "1"),
                        ("lastColumn", "0"), ("noHBand", "1"), ("noVBand", "1")):  # fmt: skip
        look.set(qn(f"w:{name}"), value)
    properties.append(look)
    if says:
        caption = OxmlElement("w:tblCaption")
        caption.set(qn("w:val"), says)
        properties.append(caption)
