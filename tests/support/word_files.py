"""Word-processor files for tests: read without the software's readers, and written by hand.

Names of elements are those of ECMA-376, Office Open XML File Formats, part 1, chapter 17.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from xml.etree import ElementTree
from xml.sax.saxutils import escape

W = "http://schemas.openxmlformats.org/wordprocessingml/2006/main"
OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
_PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships"


def w(name: str) -> str:
    """A name of WordprocessingML as ElementTree spells it."""
    return f"{{{W}}}{name}"


@dataclass(frozen=True, slots=True)
class Shown:
    """One thing in a file, in order: `kind` is a style's identifier, or "table"."""

    kind: str
    text: str
    rows: tuple[tuple[str, ...], ...] = ()
    heads: tuple[bool, ...] = ()
    """For each row of a table, whether it is marked as heading it (17.4.78, tblHeader)."""


def part(data: bytes, name: str) -> ElementTree.Element:
    """One part of a file as a tree."""
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        return ElementTree.fromstring(archive.read(name))


def shown(data: bytes) -> list[Shown]:
    """What stands in the body of a file, from its start to its end."""
    body = part(data, "word/document.xml").find(w("body"))
    assert body is not None
    return [one for child in body for one in _shown(child)]


def _shown(child: ElementTree.Element) -> Iterator[Shown]:
    if child.tag == w("p"):
        style = child.find(f"{w('pPr')}/{w('pStyle')}")
        yield Shown(style.attrib[w("val")] if style is not None else "Normal", text_in(child))
    elif child.tag == w("tbl"):
        rows = child.findall(w("tr"))
        yield Shown(
            "table",
            text_in(child),
            tuple(tuple(text_in(cell) for cell in row.findall(w("tc"))) for row in rows),
            tuple(row.find(f"{w('trPr')}/{w('tblHeader')}") is not None for row in rows),
        )


def text_in(element: ElementTree.Element) -> str:
    """The words in it, a space between two paragraphs."""
    paragraphs = [element] if element.tag == w("p") else element.iter(w("p"))
    return " ".join("".join(t.text or "" for t in p.iter(w("t"))) for p in paragraphs)


def paragraph(text: str, style: str = "", inside: str = "") -> str:
    """A paragraph as XML; `inside` is more XML behind its words."""
    about = f'<w:pPr><w:pStyle w:val="{style}"/></w:pPr>' if style else ""
    run = f'<w:r><w:t xml:space="preserve">{escape(text)}</w:t></w:r>' if text else ""
    return f"<w:p>{about}{run}{inside}</w:p>"


def table(rows: list[list[str]]) -> str:
    """A table as XML, a paragraph a cell."""
    cells = ("".join(f"<w:tc>{paragraph(cell)}</w:tc>" for cell in row) for row in rows)
    return f"<w:tbl>{''.join(f'<w:tr>{row}</w:tr>' for row in cells)}</w:tbl>"


def document(body: str, namespace: str = W) -> str:
    """The main part as XML."""
    return (
        f'<w:document xmlns:w="{namespace}" xmlns:r="{OFFICE}" '
        'xmlns:wp="http://schemas.openxmlformats.org/drawingml/2006/wordprocessingDrawing" '
        'xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006">'
        f"<w:body>{body}</w:body></w:document>"
    )


_STYLES = "".join(
    f'<w:style w:type="paragraph" w:styleId="{name.replace(" ", "")}"><w:name w:val="{name}"/>'
    "</w:style>"
    for name in ("Title", "heading 1", "heading 2", "heading 3", "List Bullet")
)
STYLES = f'<w:styles xmlns:w="{W}">{_STYLES}</w:styles>'


def links(*found: tuple[str, str, str], outside: bool = False) -> str:
    """The part that says what another names: identifier, kind and target; a link is `outside`."""
    mode = ' TargetMode="External"'
    inside = "".join(
        f'<Relationship Id="{one}" Type="{OFFICE}/{kind}" Target="{target}"'
        f"{mode if outside or kind == 'hyperlink' else ''}/>"
        for one, kind, target in found
    )
    return f'<Relationships xmlns="{_PACKAGE}">{inside}</Relationships>'


def written(
    main: str, more: Mapping[str, str] | None = None, names: tuple[tuple[str, str, str], ...] = ()
) -> bytes:
    """A file as a zip: its main part, and `more` parts, which `names` tells the main part of."""
    parts = {
        "_rels/.rels": links(("r1", "officeDocument", "word/document.xml")),
        "word/document.xml": main,
        "word/_rels/document.xml.rels": links(("s1", "styles", "styles.xml"), *names),
        "word/styles.xml": STYLES,
        **(more or {}),
    }
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, text in parts.items():
            archive.writestr(name, text)
    return made.getvalue()
