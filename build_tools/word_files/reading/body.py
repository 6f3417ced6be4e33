"""The text of a file, paragraph by paragraph, table by table (ECMA-376, part 1, 17.2 to 17.4)."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from build_tools.source.text import HIDDEN
from build_tools.word_files.blocks import Block, Cell, Heading, Paragraph, Picture, Table, words
from build_tools.word_files.reading.styles import Styles
from build_tools.word_files.reading.xml_tree import Element

_SPACE = frozenset({"w:tab", "w:br", "w:cr", "w:ptab"})
_GONE = frozenset({"w:del", "w:moveFrom"})
"""What was taken out while changes were kept (17.13.5)."""
_NO_TEXT = frozenset({"w:instrText", "w:delInstrText", "w:pPr"})


@dataclass(slots=True)
class _InParagraph:
    """What a paragraph holds: its words, and what stands in it beside them."""

    words: list[str] = field(default_factory=list)
    beside: list[Block] = field(default_factory=list)


@dataclass(slots=True)
class Body:
    """Reads the text of one part; `addresses` are where its links lead."""

    styles: Styles
    addresses: Mapping[str, str]
    taken_out: list[str] = field(default_factory=list)

    def blocks(self, node: Element) -> Iterator[Block]:
        """Everything that stands in `node`, in order."""
        for one in node.elements:
            if one.name == "w:p":
                yield from self._paragraph(one)
            elif one.name == "w:tbl":
                yield self._table(one)
            elif one.name in _GONE:
                self._gone(one)
            else:
                yield from self.blocks(one)

    def texts(self, node: Element) -> Iterator[str]:
        """The words of everything that stands in `node`, a piece a paragraph."""
        for one in self.blocks(node):
            yield from (text for text in _texts(one) if text)

    def _paragraph(self, node: Element) -> Iterator[Block]:
        held = _InParagraph()
        self._collect(node, held)
        text = tidied("".join(held.words))
        about = node.child("w:pPr")
        if text:
            level = self.styles.heading_level(about)
            if self.styles.is_called(about, "title"):
                yield words(text, "title")
            elif self.styles.is_called(about, "subtitle"):
                yield words(text, "subtitle")
            elif level is not None:
                yield Heading(level, text)
            else:
                yield words(text, "bullet" if self.styles.is_listed(about) else "text")
        yield from held.beside

    def _collect(self, node: Element, held: _InParagraph) -> None:
        for one in node.elements:
            if one.name in ("w:t", "m:t"):
                held.words.append(one.text)
            elif one.name in _SPACE:
                held.words.append(" ")
            elif one.name == "w:noBreakHyphen":
                held.words.append("-")
            elif one.name in _GONE:
                self._gone(one)
            elif one.name == "w:txbxContent":
                held.beside += self.blocks(one)
            elif one.name == "mc:AlternateContent":
                self._collect(self._chosen(one), held)
            elif one.name == "wp:docPr":
                if alt := tidied(one.attributes.get("descr", "")):
                    held.beside.append(Picture(b"", alt))
            elif one.name not in _NO_TEXT:
                self._collect(one, held)
                self._address(one, held)

    def _address(self, node: Element, held: _InParagraph) -> None:
        address = self.addresses.get(node.attributes.get("r:id", ""))
        if node.name == "w:hyperlink" and address and address not in "".join(held.words[-9:]):
            held.words.append(f" ({address})")

    def _chosen(self, node: Element) -> Element:
        """Of two versions of one thing, one: the first that has words (part 3, 7.5)."""
        choices = [one for one in node.elements if one.name in ("mc:Choice", "mc:Fallback")]
        empty = Element("mc:Choice", {})
        return next((one for one in choices if _has_words(one)), choices[0] if choices else empty)

    def _gone(self, node: Element) -> None:
        text = tidied(" ".join(_deleted(node)))
        if text:
            self.taken_out.append(text)

    def _table(self, node: Element) -> Table:
        rows = tuple(
            tuple(self._cell(cell) for cell in _inner(row, "w:tc")) for row in _inner(node, "w:tr")
        )
        return Table(tuple(row for row in rows if row))

    def _cell(self, node: Element) -> Cell:
        return tuple(words(text) for one in self.blocks(node) for text in _texts(one) if text)


def tidied(text: str) -> str:
    """The same on one line, without signs that nobody sees."""
    return " ".join(re.sub(HIDDEN, "", re.sub(r"[\u2028\u2029\x85]", " ", text)).split())


def _inner(node: Element, name: str) -> Iterator[Element]:
    """The rows of a table or the cells of a row, whatever is laid round them."""
    for one in node.elements:
        if one.name == name:
            yield one
        elif one.name not in ("w:tbl", "w:tc", "w:p"):
            yield from _inner(one, name)


def _texts(block: Block) -> Iterator[str]:
    match block:
        case Heading():
            yield block.text
        case Paragraph():
            yield block.text
        case Picture():
            yield block.alt
        case Table():
            for row in block.rows:
                yield " · ".join(text for cell in row if (text := _cell_text(cell)))


def _cell_text(cell: Cell) -> str:
    return " ".join(one.text for one in cell)


def _deleted(node: Element) -> Iterator[str]:
    if node.name in ("w:delText", "w:t"):
        yield node.text
    for one in node.elements:
        yield from _deleted(one)


def _has_words(node: Element) -> bool:
    return bool(node.text) or any(_has_words(one) for one in node.elements)
