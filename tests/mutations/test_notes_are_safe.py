"""Notes that are read without a fault become pages that run nothing and load nothing.

What a page may not hold: HTML Living Standard, sections 4.6 (links) and 8.1.8 (event handlers).
"""

from __future__ import annotations

import random
from html.parser import HTMLParser

from build_tools.pages.pieces.notes import notes_html
from build_tools.source.front_matter import Document, read_markdown

FEW, MANY = 4_000, 40_000
SEED = 20_261_125
PIECES = (
    "[",
    "]",
    "(",
    ")",
    "](",
    "]: ",
    "][",
    "[x]",
    "[x]: ",
    "![",
    "<",
    ">",
    "&lt;",
    "&#60;",
    "\\",
    "`",
    "\n",
    "\n\n",
    "> ",
    "- ",
    "1. ",
    "    ",
    "\t",
    "# ",
    "| a | b |\n|---|---|\n",
    "\n\na | b\n:--|--:\n",
    "***",
    "_",
    "''",
    "javascript:alert(1)",
    "JAVASCRIPT:x",
    "data:text/html,x",
    "&#106;avascript:x",
    "//a.example",
    "https://a.example",
    "mailto:a@a.example",
    "#top",
    "onclick=x",
    "script",
    "img src=x",
    "{: x=y}",
    '"',
    "'",
    "word ",
    "é ",
    "\u00a0",
    "https://a.example/(b)",
    "[^1]",
    "[^1]: ",
    "*[x]: ",
    "[TOC]",
)
HARMLESS_TAGS = {
    "p",
    "h2",
    "h3",
    "h4",
    "h5",
    "h6",
    "ul",
    "ol",
    "li",
    "blockquote",
    "pre",
    "code",
    "em",
    "strong",
    "a",
    "br",
    "hr",
    "table",
    "thead",
    "tbody",
    "tr",
    "th",
    "td",
}


class Reader(HTMLParser):
    """Every tag and address of a piece of HTML."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: set[str] = set()
        self.names: set[str] = set()
        self.addresses: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        for name, value in attrs:
            self.names.add(name)
            if name == "href":
                self.addresses.append(value or "")


def test_what_is_read_is_harmless(thorough: bool) -> None:
    choose = random.Random(SEED)
    shown = linked = 0
    for _ in range(MANY if thorough else FEW):
        notes = "".join(choose.choices(PIECES, k=choose.randrange(2, 12)))
        if choose.random() < 0.5:
            notes = (
                choose.choice(
                    (
                        "[x](https://a.example) ",
                        "[x]: https://a.example\n\n[x] ",
                        "> [x]: #top\n\n[x] ",
                    )
                )
                + notes
            )
        document = read_markdown("units/u/unit.md", f"---\ntitle: x\n---\n{notes}".encode())
        if not isinstance(document, Document):
            continue
        reader = Reader()
        reader.feed(str(notes_html(document.body, 2)))
        shown += 1
        assert reader.tags <= HARMLESS_TAGS, (notes, reader.tags)
        assert reader.names <= {"href", "id", "title", "start", "class"}, (notes, reader.names)
        for address in reader.addresses:
            linked += 1
            assert address.startswith(("https://", "http://", "mailto:", "#")), (notes, address)
    assert shown > FEW // 5
    assert linked > FEW // 20
