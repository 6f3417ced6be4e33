"""A made file, opened by other readers: mammoth, and Python's own against ECMA-376's names.

ECMA-376, Office Open XML File Formats, part 1; mammoth is a kept library for reading such files.
"""

from __future__ import annotations

import io
import re
import zipfile
from collections.abc import Iterator
from functools import cache
from html.parser import HTMLParser

import mammoth
import pytest

from build_tools.building.templates import html_of
from build_tools.building.word_file.unit_document import WordFile, word_file
from build_tools.model.unit import Unit
from build_tools.pages.lesson.lesson import lesson_page
from build_tools.pages.pieces.unit_card import first_picture
from build_tools.views.words.licences import licence_address
from tests.support.banks import CONTENT
from tests.support.sound_bank import real_bank, real_unit, whole_bank
from tests.support.word_files import Shown, part, shown, w

UNIT = real_unit()
FOLDER = CONTENT / "units" / UNIT.slug
VOID = frozenset({"br", "hr", "img", "input", "link", "meta", "source", "wbr"})
ONLY_A_PAGES = frozenset({"on-page", "aside", "place", "fit", "time"})
"""What the file leaves out or tells elsewhere: ways through the page, what only a screen reader
hears, the number in the heading, the sums for today; and when, which stands beside the step."""


@cache
def made() -> WordFile:
    return word_file(real_bank(), UNIT, FOLDER, UNIT.lessons)


@cache
def read() -> list[Shown]:
    return shown(made().data)


@cache
def pages() -> tuple[str, ...]:
    return tuple(html_of(lesson_page(real_bank(), UNIT, one)) for one in UNIT.lessons)


def tokens(text: str) -> list[str]:
    return re.findall(r"[^\W_]+", text.casefold())


class PageTexts(HTMLParser):
    """Each piece of a page that a reader is told, in order: its element's name and its words."""

    PIECES = frozenset({"h1", "h2", "h3", "h4", "p", "li", "dt", "dd", "figcaption", "summary"})
    DROPPED = frozenset({"script", "style", "svg", "nav", "button", "audio", "header", "footer"})

    def __init__(self, html: str) -> None:
        super().__init__()
        self.found: list[tuple[str, list[str]]] = []
        self._open: list[tuple[str, bool]] = []
        self._piece: list[int] = []
        self.feed(html[html.index("<article") : html.index("</article>")])

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in VOID:
            return
        has = dict(attrs)
        classes = set((has.get("class") or "").split())
        gone = bool(
            tag in self.DROPPED
            or {"data-beside", "hidden"} & has.keys()
            or classes & ONLY_A_PAGES
            or (self._open and self._open[-1][1])
        )
        self._open.append((tag, gone))
        if tag in self.PIECES and not gone:
            self.found.append((tag, []))
            self._piece.append(len(self.found) - 1)

    def handle_endtag(self, tag: str) -> None:
        if tag in VOID:
            return
        name, gone = self._open.pop()
        if name in self.PIECES and not gone:
            self._piece.pop()

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        pass

    def handle_data(self, data: str) -> None:
        if self._piece and not self._open[-1][1]:
            self.found[self._piece[-1]][1].append(data)


def page_texts(html: str) -> Iterator[tuple[str, str]]:
    for name, pieces in PageTexts(html).found:
        if text := " ".join("".join(pieces).split()):
            yield name, text


def test_its_headings_are_those_of_the_pages_in_their_order() -> None:
    wanted = []
    for lesson, html in zip(UNIT.lessons, pages(), strict=True):
        for name, text in page_texts(html):
            if name in ("h1", "h2", "h3"):
                said = f"Lesson {lesson.number}: {text}" if name == "h1" else text
                wanted.append((int(name[1]), said.replace("\xa0", " ")))
    html = mammoth.convert_to_html(io.BytesIO(made().data)).value
    told = re.findall(r"<h([1-6])>(.*?)</h\1>", html)
    found = [(int(level), re.sub("<.*?>", "", text)) for level, text in told]
    plain = [(level, text.replace("&quot;", '"').replace("\xa0", " ")) for level, text in found]
    assert [one for one in plain if one[1] not in (UNIT.title, "About this file")] == wanted


@pytest.mark.parametrize("number", range(len(UNIT.lessons)))
def test_it_says_what_the_page_says_in_the_order_of_the_page(number: int) -> None:
    whole = [tokens(one.text) for one in read()]
    starts = [n for n, one in enumerate(read()) if one.kind == "Heading1"]
    words = [word for one in whole[starts[number] : starts[number + 1]] for word in one]
    at = 0
    for name, text in page_texts(pages()[number]):
        piece = tokens(text)
        if name in ("figcaption", "summary"):
            continue  # told with what they head, and left out where the page has told it above
        place = next((n for n in range(at, len(words)) if words[n : n + len(piece)] == piece), None)
        assert place is not None, f"{text!r} is not said after {' '.join(words[at - 9 : at])!r}"
        at = place + len(piece)


def test_each_step_is_a_table_under_its_heading_with_its_first_row_as_head() -> None:
    found = read()
    tables = [n for n, one in enumerate(found) if one.kind == "table"]
    steps = [step for lesson in UNIT.lessons for step in lesson.steps]
    assert len(tables) == len(steps)
    for n, step in zip(tables, steps, strict=True):
        one = found[n]
        assert found[n - 1].kind == "Heading3"
        assert found[n - 1].text.replace("\xa0", " ").endswith(step.does)
        assert one.heads == (True, *[False] * (len(one.rows) - 1))
        assert f"{step.minutes} minute" in one.rows[0][1]
        told = {row[0]: row[1] for row in one.rows[1:]}
        assert step.task in told["Pupils"]
        assert (step.say or "").replace('"', "") in told.get("Say", "").replace('"', "")
        assert (step.easier or "") == told.get("Easier", "")
        assert all(all(cell for cell in row) for row in one.rows), "no cell is empty"


def test_mammoth_finds_the_same_heads_of_tables() -> None:
    html = mammoth.convert_to_html(io.BytesIO(made().data)).value
    heads = re.findall(r"<thead><tr><th><p><strong>(Step \d+)</strong>", html)
    assert heads == [f"Step {n}" for one in UNIT.lessons for n in range(1, len(one.steps) + 1)]


def test_its_picture_has_the_units_text_version() -> None:
    item = first_picture(UNIT)
    assert item is not None
    assert item.text_version
    (told,) = (
        one for one in part(made().data, "word/document.xml").iter() if one.tag.endswith("}docPr")
    )
    assert told.attrib["descr"] == " ".join(item.text_version.split())
    html = mammoth.convert_to_html(io.BytesIO(made().data)).value
    assert len(re.findall(r'<img alt="A drawing[^"]+" src="data:image/png;base64,', html)) == 1


def test_a_picture_with_words_in_it_is_told_in_words() -> None:
    (unit,) = (one for one in whole_bank().units if one.slug == "weaving-shed")
    item = _drawn_with_words(unit)
    file = word_file(whole_bank(), unit, CONTENT / "units" / unit.slug, unit.lessons[:1])
    text = " ".join(one.text for one in shown(file.data))
    with zipfile.ZipFile(io.BytesIO(file.data)) as archive:
        drawn = any(name.startswith("word/media/") for name in archive.namelist())
    assert drawn != (item in text)
    assert file.name == f"weaving-shed-{unit.edition}-lesson-1.docx"


def _drawn_with_words(unit: Unit) -> str:
    item = first_picture(unit)
    assert item is not None
    assert item.text_version is not None
    return " ".join(item.text_version.split())


def test_it_says_its_language_its_title_and_who_made_it() -> None:
    about = {one.tag.rpartition("}")[2]: one.text for one in part(made().data, "docProps/core.xml")}
    assert (about["title"], about["creator"]) == (UNIT.title, UNIT.credit or UNIT.publisher)
    assert about["language"] == UNIT.language == "en-GB"
    assert about["created"] == about["modified"] == f"{UNIT.issued}T00:00:00Z"
    styles = part(made().data, "word/styles.xml")
    assert [one.attrib[w("val")] for one in styles.iter(w("lang"))] == ["en-GB"]


def test_it_carries_nothing_that_nobody_sees() -> None:
    with zipfile.ZipFile(io.BytesIO(made().data)) as archive:
        names = archive.namelist()
        days = {entry.date_time for entry in archive.infolist()}
        text = b"".join(archive.read(name) for name in names if name.endswith((".xml", ".rels")))
    year, month, day = (int(one) for one in UNIT.issued.split("-"))
    assert days == {(year, month, day, 0, 0, 0)}
    assert not [name for name in names if "custom" in name or "thumbnail" in name]
    for word in (b"python-docx", b"Macintosh", b"rsid", b"<w:comment", b"w:ins ", b"docId"):
        assert word not in text, word
    assert b"<w:vanish" not in text


def test_the_same_unit_gives_the_same_bytes() -> None:
    assert word_file(real_bank(), UNIT, FOLDER, UNIT.lessons) == made()


def test_it_keeps_credits_and_licence_with_its_address() -> None:
    text = " ".join(one.text for one in read())
    assert licence_address(UNIT.licence) in text
    for item in UNIT.stimulus.items:
        assert f"{item.title}, by {item.by}." in text


ORDER = {
    # ECMA-376, part 1, annex A, from memory: CT_TblPr, CT_TrPr, CT_TcPr, CT_PPr, CT_RPr, CT_Style
    "tblPr": "tblStyle tblpPr tblOverlap bidiVisual tblStyleRowBandSize tblStyleColBandSize tblW "
    "jc tblCellSpacing tblInd tblBorders shd tblLayout tblCellMar tblLook tblCaption "
    "tblDescription",
    "trPr": "cantSplit tblHeader",
    "tcPr": "cnfStyle tcW gridSpan hMerge vMerge tcBorders shd noWrap tcMar textDirection vAlign",
    "pPr": "pStyle keepNext keepLines pageBreakBefore framePr widowControl numPr pBdr shd tabs "
    "spacing ind contextualSpacing mirrorIndents jc textDirection textAlignment outlineLvl rPr",
    "rPr": "rStyle rFonts b bCs i iCs caps smallCaps strike color spacing w kern position sz szCs "
    "highlight u effect bdr shd vertAlign rtl cs em lang",
    "style": "name aliases basedOn next link autoRedefine hidden uiPriority semiHidden "
    "unhideWhenUsed qFormat locked rsid pPr rPr tblPr trPr tcPr",
}


def test_properties_stand_in_the_order_of_the_standard() -> None:
    for name in ("word/document.xml", "word/styles.xml", "word/footer1.xml"):
        for one in part(made().data, name).iter():
            if order := ORDER.get(one.tag.rpartition("}")[2], "").split():
                places = [order.index(child.tag.rpartition("}")[2]) for child in one]
                assert places == sorted(set(places)), [child.tag for child in one]
