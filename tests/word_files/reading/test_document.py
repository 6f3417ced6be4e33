"""Files as other programs write them: what stands where, by ECMA-376, part 1, chapter 17."""

from __future__ import annotations

from build_tools.word_files.blocks import Heading, Paragraph, Picture, Table
from build_tools.word_files.reading.document import Beside, ReadDocument, read_document
from tests.support.word_files import STYLES, W, document, paragraph, table, written

STRICT = "http://purl.oclc.org/ooxml/wordprocessingml/main"
"""The namespace of the strict form (ISO/IEC 29500-1:2016, annex A)."""


def read(body: str) -> ReadDocument:
    return read_document(written(document(body)))


def texts(found: ReadDocument) -> list[str]:
    return [one.text for one in found.blocks if isinstance(one, Paragraph)]


def test_headings_titles_lists_and_tables_come_in_order() -> None:
    body = (
        paragraph("Tide", "Title") + paragraph("Lesson 1", "heading1") + paragraph("Walk")
        + paragraph("A drum", "ListBullet") + table([["Say", "Stop."], ["Pupils", "Go."]])
    )  # fmt: skip
    title, heading, plain, line, rows = read(body).blocks
    assert isinstance(title, Paragraph)
    assert title.kind == "title"
    assert heading == Heading(1, "Lesson 1")
    assert isinstance(plain, Paragraph)
    assert isinstance(line, Paragraph)
    assert (plain.kind, line.kind) == ("text", "bullet")
    assert isinstance(rows, Table)
    assert [[cell[0].text for cell in row] for row in rows.rows] == [
        ["Say", "Stop."],
        ["Pupils", "Go."],
    ]


def test_a_heading_is_known_by_its_level_whatever_its_style_is_called() -> None:
    """17.3.1.20, outlineLvl: on the paragraph, or on a style that its style is based on."""
    styles = STYLES.replace(
        "</w:styles>",
        '<w:style w:type="paragraph" w:styleId="U1"><w:name w:val="Our own"/>'
        '<w:basedOn w:val="heading2"/></w:style></w:styles>',
    )
    own = '<w:p><w:pPr><w:outlineLvl w:val="2"/></w:pPr><w:r><w:t>Three</w:t></w:r></w:p>'
    body = paragraph("Two", "U1") + own
    found = read_document(written(document(body), {"word/styles.xml": styles}))
    assert found.blocks == (Heading(2, "Two"), Heading(3, "Three"))


def test_words_are_read_whatever_lies_round_them() -> None:
    inside = (
        '<w:ins w:id="1"><w:r><w:t>put in </w:t></w:r></w:ins>'
        "<w:smartTag><w:r><w:t>tagged</w:t><w:tab/><w:t>tabbed</w:t><w:noBreakHyphen/>"
        "<w:t>on</w:t></w:r></w:smartTag>"
    )
    body = (
        paragraph("Walk ", inside=inside)
        + f"<w:sdt><w:sdtContent>{paragraph('In a box to fill in')}</w:sdtContent></w:sdt>"
    )
    assert texts(read(body)) == ["Walk put in tagged tabbed-on", "In a box to fill in"]


def test_a_text_box_is_read_once() -> None:
    """Markup compatibility (part 3, 7.5) has the same words twice, for newer and older programs."""
    box = f"<w:txbxContent>{paragraph('Mind the step')}</w:txbxContent>"
    both = (
        f"<w:r><mc:AlternateContent><mc:Choice Requires='wps'>{box}</mc:Choice>"
        f"<mc:Fallback>{box}</mc:Fallback></mc:AlternateContent></w:r>"
    )
    assert texts(read(paragraph("Walk.", inside=both))) == ["Walk.", "Mind the step"]


def test_a_picture_gives_its_text_version() -> None:
    drawing = (
        '<w:r><w:drawing><wp:inline><wp:docPr id="1" descr="A crab"/></wp:inline></w:drawing></w:r>'
    )
    assert read(paragraph("", inside=drawing)).blocks == (Picture(b"", "A crab"),)


def test_what_was_taken_out_is_told_beside_the_text() -> None:
    gone = '<w:del w:id="2"><w:r><w:delText>Run fast</w:delText></w:r></w:del>'
    found = read(paragraph("Walk.", inside=gone))
    assert texts(found) == ["Walk."]
    assert found.beside == (Beside("text taken out, still in the file", "Run fast"),)


def test_notes_comments_heads_and_feet_are_told_beside_the_text() -> None:
    kinds = {"footnotes": "a footnote", "comments": "a comment", "header": "the head of a page"}
    names = tuple((f"x{n}", kind, f"{kind}.xml") for n, kind in enumerate(kinds))
    more = {
        f"word/{kind}.xml": f'<w:{kind} xmlns:w="{W}">{paragraph(f"In {kind}")}</w:{kind}>'
        for kind in kinds
    }
    found = read_document(written(document(paragraph("Walk.")), more, names))
    assert set(found.beside) == {Beside(where, f"In {kind}") for kind, where in kinds.items()}


def test_what_is_not_read_is_named() -> None:
    names = (("c1", "chart", "charts/chart1.xml"),)
    assert read_document(written(document(""), names=names)).not_read == ("a chart",)


def test_the_strict_form_is_read_too() -> None:
    styles = STYLES.replace(W, STRICT)
    body = document(paragraph("Lesson 1", "heading1"), STRICT)
    assert read_document(written(body, {"word/styles.xml": styles})).blocks == (
        Heading(1, "Lesson 1"),
    )


def test_an_address_is_kept_beside_the_words_that_lead_there() -> None:
    link = '<w:hyperlink r:id="h1"><w:r><w:t>the song</w:t></w:r></w:hyperlink>'
    main = document(paragraph("Sing ", inside=link))
    data = written(main, names=(("h1", "hyperlink", "https://example.org/song"),))
    assert texts(read_document(data)) == ["Sing the song (https://example.org/song)"]


def test_a_table_in_a_cell_is_told_row_by_row() -> None:
    inner = table([["a", "b"], ["c", "d"]])
    body = f"<w:tbl><w:tr><w:tc>{inner}{paragraph('end')}</w:tc></w:tr></w:tbl>"
    (found,) = read(body).blocks
    assert isinstance(found, Table)
    assert [one.text for one in found.rows[0][0]] == ["a · b", "c · d", "end"]
