"""A unit's lessons as one word-processor file: word for word what their pages tell, in their order.

It is made of the finished pages, as the printed files are, so that each word is written once.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from build_tools.building.templates import html_of
from build_tools.building.word_file.page_blocks import lesson_blocks
from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.model.work import Work
from build_tools.page_words.speaking import speaking
from build_tools.page_words.words import N_, _, ngettext
from build_tools.pages.lesson.lesson import lesson_page
from build_tools.pages.pieces.unit_card import first_picture, picture_shows
from build_tools.pictures.as_points import as_points
from build_tools.source.media_files import lies_in
from build_tools.views.words.licences import licence_address, licence_name, may_be_changed
from build_tools.views.words.plain_words import listed
from build_tools.views.words.unit_in_words import (
    lessons_in_words,
    rights_in_words,
    years_in_words,
)
from build_tools.views.written.works import works
from build_tools.word_files.blocks import Block, Heading, Picture, Run, labelled, words
from build_tools.word_files.writing.document import About, document_bytes

_NOT_HERE = N_(
    "This file says what the lesson’s page says, in the order of the page. What only works on the "
    "page is not here: the lesson fitted to your class and time, the dance from above, the counts "
    "to play. Moves are drawn on the page and on its print; here they are told in words."
)
_BACK = N_(
    "The adviser who keeps the bank can make a draft of a unit from your changed file, if each "
    "lesson keeps its heading and each step its table."
)


@dataclass(frozen=True, slots=True)
class WordFile:
    """A finished word-processor file: its name and its bytes."""

    name: str
    data: bytes


def word_file(bank: Bank, unit: Unit, folder: Path, lessons: tuple[Lesson, ...]) -> WordFile:
    """The file of these `lessons` of a sound unit, whose pictures lie in `folder`.

    Raises PictureError where a picture cannot be freed of what it carries unseen.
    """
    with speaking(unit.language):
        pages = [html_of(lesson_page(bank, unit, one)) for one in lessons]
        return word_file_of_pages(unit, folder, lessons, pages)


def word_file_of_pages(
    unit: Unit, folder: Path, lessons: Sequence[Lesson], pages: Sequence[str]
) -> WordFile:
    """The same from the lessons' `pages`, which are drawn already."""
    part = len(lessons) < len(unit.lessons)
    title = unit.title
    if part:
        numbers = listed([str(one.number) for one in lessons])
        title = ngettext(
            "{unit}, lesson {numbers}",
            "{unit}, lessons {numbers}",
            len(lessons),
            unit=unit.title,
            numbers=numbers,
        )
    about = About(
        title=title,
        author=unit.credit or unit.publisher,
        language=unit.language,
        day=date.fromisoformat(unit.issued),
        foot=_(
            "{title}, edition {edition}, {licence}",
            title=title,
            edition=unit.edition,
            licence=licence_name(unit.licence),
        ),
    )
    ends = f"-lesson-{'-'.join(str(one.number) for one in lessons)}" if part else ""
    name = f"{unit.slug}-{unit.edition}{ends}.docx"
    return WordFile(name, document_bytes(about, _blocks(unit, folder, lessons, pages)))


def _blocks(
    unit: Unit, folder: Path, lessons: Sequence[Lesson], pages: Sequence[str]
) -> Iterator[Block]:
    yield words(unit.title, "title")
    yield words(f"{years_in_words(unit)} · {lessons_in_words(unit)}", "subtitle")
    yield words(unit.summary)
    if shown := first_picture(unit):
        yield _picture(shown, folder)
    shown_in = {one.file: one for one in works(unit)}

    def drawn(src: str) -> Block:
        return _picture(shown_in[src], folder)

    for lesson, html in zip(lessons, pages, strict=True):
        yield from lesson_blocks(html, drawn, lesson.steps)
    yield Heading(1, _("About this file"))
    yield words(_(_NOT_HERE))
    for line in rights_in_words(unit):
        yield words(line, "bullet")
    yield labelled(_("Licence"), Run(_licence(unit)))
    yield words(_(_BACK))


def _picture(item: Work, folder: Path) -> Block:
    """The picture; where it cannot be drawn here, what it shows in words."""
    assert item.file is not None
    points = as_points(item.file, lies_in(folder, item.file).read_bytes())
    alt = " ".join(item.text_version.split()) if item.text_version else picture_shows(item)
    return (
        Picture(points, alt)
        if points
        else labelled(_("A picture, {title}", title=item.title), Run(alt))
    )


def _licence(unit: Unit) -> str:
    """What whoever copies or changes the file has to keep, with the address of the licence."""
    name, address = licence_name(unit.licence), licence_address(unit.licence)
    if unit.licence == "CC0-1.0":
        said = N_("{name}, {address}. You may copy and change this file as you like.")
    elif may_be_changed(unit.licence):
        said = N_(
            "{name}, {address}. A copy of this file keeps the credits, this licence and its "
            "address, and says what you changed."
        )
    else:
        said = N_(
            "{name}, {address}. A copy of this file keeps the credits, this licence and its "
            "address. You may change it for your own class, but not share it changed."
        )
    return _(said, name=name, address=address)
