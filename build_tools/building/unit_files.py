"""All that is published of one unit: its pages, what is made of them, and its pictures."""

from __future__ import annotations

import json
import posixpath
from collections.abc import Collection, Iterable, Mapping
from functools import cache
from pathlib import Path

from build_tools.building.assets import asset_files
from build_tools.building.finder_files import card_files
from build_tools.building.finishing.bound import bound
from build_tools.building.finishing.one_file import as_data, one_file
from build_tools.building.finishing.short_html import short_html
from build_tools.building.finishing.smaller import smaller
from build_tools.building.finishing.squeezed_parts import packed, with_small_data
from build_tools.building.floor_file import floor_file
from build_tools.building.templates import html_of
from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.for_scripts import script_words, words_script
from build_tools.page_words.speaking import speaking
from build_tools.pages.assemble import unit_pages
from build_tools.pages.page import Page
from build_tools.pictures.publishable import cleaned
from build_tools.source.media_files import lies_in


def unit_files(
    bank: Bank,
    unit: Unit,
    content: Path,
    published: Collection[str] = (),
    *,
    keep: bool = False,
) -> dict[str, bytes]:
    """Each file by its path in the site; `content` has the unit's pictures.

    `published` are the units, by their folders, that its pages may lead to. `keep` adds each
    lesson as one file, and as a word-processor file. Checking has found that the pictures may be
    shown to anybody; they are freed here of what they carry unseen.
    """
    with speaking(unit.language):
        return _unit_files(bank, unit, content, published, keep=keep)


def _unit_files(
    bank: Bank, unit: Unit, content: Path, published: Collection[str], *, keep: bool
) -> dict[str, bytes]:
    at = f"units/{unit.slug}/"
    pages = drawn(unit_pages(bank, unit, published))
    booklet = f"{at}booklet.html"
    pages[booklet] = bound(pages[booklet], lambda name: pages[f"{at}{name}"])
    pages = {path: smaller(html) for path, html in pages.items()}
    pages[booklet] = packed(short_html(pages[booklet]))
    above = f"{at}dance.html"
    pages[above] = with_small_data(pages[above])
    folder = content / "units" / unit.slug
    media = {one: cleaned(one, lies_in(folder, one).read_bytes()) for one in sorted(unit.media)}
    files = {path: short_html(html).encode() for path, html in pages.items()}
    for lesson in unit.lessons if keep else ():
        kept = one_file(pages[f"{at}lesson-{lesson.number}.html"], lambda one: _read(media, one))
        files[f"{at}lesson-{lesson.number}-to-keep.html"] = kept.encode()
    if keep:
        files |= _to_edit(unit, content, pages)
    files |= card_files(bank, unit, content) | floor_file(unit)
    if script := words_script():
        files[f"{at}{script}"] = script_words()
    files |= {at + file: data for file, data in media.items()}
    for lesson in unit.lessons:
        if lesson.pictures:
            name = f"{at}lesson-{lesson.number}-pictures.js"
            files[name] = _pictures_to_keep(lesson, media)
    return files


def _pictures_to_keep(lesson: Lesson, media: Mapping[str, bytes]) -> bytes:
    """A lesson's pictures as a script: a page opened from a folder can read nothing else."""
    files = dict.fromkeys(one.file for one in lesson.pictures if one.file)
    told = {file: as_data(file, media.__getitem__) for file in files}
    return f"(window.danceUnitBank ||= {{}}).keptPictures = {json.dumps(told)};\n".encode()


def _to_edit(unit: Unit, content: Path, pages: Mapping[str, str]) -> dict[str, bytes]:
    """Each lesson as a word-processor file, made of its page."""
    # what writes such files is loaded only where they are wanted
    from build_tools.building.word_file.unit_document import word_file_of_pages

    at, folder = f"units/{unit.slug}/lesson-", content / "units" / unit.slug
    return {
        f"{at}{one.number}-to-edit.docx": word_file_of_pages(
            unit, folder, [one], [pages[f"{at}{one.number}.html"]]
        ).data
        for one in unit.lessons
    }


def drawn(pages: Iterable[Page]) -> dict[str, str]:
    """The HTML of each page by its path."""
    return {page.path: html_of(page) for page in pages}


def _read(media: Mapping[str, bytes], address: str) -> bytes:
    """What a unit's page names: a picture of the unit, or what lies at ../../assets/…"""
    found = media.get(address)
    return found or assets_once()[posixpath.relpath(posixpath.join("units/one", address))]


@cache
def assets_once() -> dict[str, bytes]:
    """What every page loads, made once in a process."""
    return asset_files()
