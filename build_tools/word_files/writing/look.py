"""How a word-processor file looks: its page, its styles, its language; nothing that says whose.

Element names and their order are those of ECMA-376, Office Open XML File Formats, part 1, chapter
17 (WordprocessingML).
"""

from __future__ import annotations

from docx.document import Document as WordDocument
from docx.enum.style import WD_STYLE_TYPE
from docx.oxml import OxmlElement
from docx.oxml.ns import qn
from docx.oxml.xmlchemy import BaseOxmlElement
from docx.shared import Cm, Pt, RGBColor
from docx.styles.style import ParagraphStyle

FACE = "Arial"
"""On nearly every computer, and plain enough for who reads with difficulty."""
TEXT_POINTS = 11
WIDTH_CM, HEIGHT_CM, MARGIN_CM = 21.0, 29.7, 2.0
"""A4 (ISO 216)."""
_INK = RGBColor(0x1A, 0x1A, 0x1A)
_POINTS = {"Title": 24, "Subtitle": 12, "Heading 1": 20, "Heading 2": 15, "Heading 3": 12.5,
           "Heading 4": 11.5, "Heading 5": 11, "Heading 6": 11}  # fmt: skip
_PARAGRAPHS = (
    *_POINTS, "Normal", "List Bullet", "List Bullet 2", "List Bullet 3", "List Number",
    "List Number 2", "List Number 3", "Footer",
)  # fmt: skip
_OTHERS = ("Table Grid", "Normal Table", "Default Paragraph Font", "No List")


def laid_out(document: WordDocument, language: str) -> None:
    """Set page, styles and language, and take out what the library's own template carries."""
    _styles(document)
    _language(document, language)
    _settings(document)
    section = document.sections[0]
    section._sectPr.attrib.clear()
    section.page_width, section.page_height = Cm(WIDTH_CM), Cm(HEIGHT_CM)
    for side in ("left_margin", "right_margin", "top_margin", "bottom_margin"):
        setattr(section, side, Cm(MARGIN_CM))


def _styles(document: WordDocument) -> None:
    kept = {*_PARAGRAPHS, *_OTHERS}
    for style in list(document.styles):
        if style.name not in kept:
            style.delete()
    for found in list(document.styles.element.iter(qn("w:rsid"))):
        found.getparent().remove(found)
    for latent in document.styles.element.findall(qn("w:latentStyles")):
        document.styles.element.remove(latent)
    for name in _PARAGRAPHS:
        style = document.styles[name]
        if not isinstance(style, ParagraphStyle) or style.type != WD_STYLE_TYPE.PARAGRAPH:
            raise ValueError(f"{name} is no style of paragraphs")
        _plain(style, name)


def _plain(style: ParagraphStyle, name: str) -> None:
    # the template names typefaces by its theme, which would win over ours, and links styles
    for found in style.element.findall(f".//{qn('w:rFonts')}"):
        found.getparent().remove(found)
    for part in ("w:link", "w:next"):
        for found in style.element.findall(qn(part)):
            style.element.remove(found)
    for found in style.element.findall(f".//{qn('w:pBdr')}"):
        found.getparent().remove(found)
    style.font.name = FACE
    style.font.color.rgb = _INK
    style.font.size = Pt(_POINTS.get(name, TEXT_POINTS))
    heading = name.startswith("Heading") or name == "Title"
    style.font.bold = True if heading else None
    style.font.italic = None
    style.paragraph_format.space_before = Pt(12 if name.startswith("Heading") else 0)
    style.paragraph_format.space_after = Pt(2 if name.startswith("List") else 6)
    style.paragraph_format.line_spacing = 1.15
    if heading:
        style.paragraph_format.keep_with_next = True


def _language(document: WordDocument, language: str) -> None:
    for found in document.styles.element.iter(qn("w:lang")):
        found.set(qn("w:val"), language)
        for other in ("w:eastAsia", "w:bidi"):
            found.attrib.pop(qn(other), None)
    for found in document.settings.element.iter(qn("w:themeFontLang")):
        found.set(qn("w:val"), language)
        found.attrib.pop(qn("w:eastAsia"), None)


_NOT_OURS = ("w:rsids", "w:savePreviewPicture", "w:proofState", "w:shapeDefaults")


def _settings(document: WordDocument) -> None:
    """Take out who saved the template when, and what was told of its spelling."""
    settings = document.settings.element
    for found in list(settings):
        if found.tag in {qn(name) for name in _NOT_OURS} or "/2010/wordml}" in found.tag:
            settings.remove(found)
    for found in settings.findall(qn("w:zoom")):
        found.attrib.clear()
        found.set(qn("w:percent"), "100")


def page_number() -> BaseOxmlElement:
    """A field that shows the number of the page (17.16.19, fldSimple; 17.16.5.44, PAGE)."""
    shown = OxmlElement("w:fldSimple")
    shown.set(qn("w:instr"), "PAGE")
    run, text = OxmlElement("w:r"), OxmlElement("w:t")
    text.text = "1"
    run.append(text)
    shown.append(run)
    return shown
