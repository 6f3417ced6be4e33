"""A Welsh unit and an English one drawn in one process do not mix, in whichever order."""

from __future__ import annotations

import json
import os
import subprocess
from collections.abc import Mapping
from dataclasses import replace
from functools import cache

import pytest

from build_tools.building.templates import html_of
from build_tools.building.unit_files import unit_files
from build_tools.disk.places import OVERRIDES
from build_tools.model.unit import Unit
from build_tools.page_words.for_scripts import SCRIPT
from build_tools.page_words.forms import day, number_in_words, row
from build_tools.page_words.speaking import speaking, spoken
from build_tools.page_words.tables import CLOSED, ENGLISH, OPENED, PSEUDO
from build_tools.page_words.words import ngettext
from build_tools.pages.assemble import unit_pages
from tests.support.banks import CONTENT
from tests.support.sound_bank import real_bank, real_unit


def in_language(language: str) -> Unit:
    """The unit again, which no view has been asked about yet."""
    unit = real_unit()
    return replace(unit, dance=replace(unit.dance), language=language)


def node_says(table: str, asked: str) -> list[object]:
    """What a script prints that runs after the words of scripts and the table of a page."""
    ours = (OVERRIDES / "pieces" / "page-words.js").read_text(encoding="utf-8")
    script = f"globalThis.window = globalThis;\n{table}\n{ours}\n{asked}"
    done = subprocess.run(
        [os.environ["BANK_NODE"], "-e", script],
        capture_output=True,
        encoding="utf-8",
        check=True,
    )
    found: list[object] = json.loads(done.stdout)
    return found


def drawn(unit: Unit) -> Mapping[str, str]:
    return {page.path: html_of(page) for page in unit_pages(real_bank(), unit)}


def test_languages_do_not_mix() -> None:
    """What was kept of one is never shown in the other: also of moves, which units share.

    One unit is drawn in English and then marked, the other marked and then in English.
    """
    unit, other = in_language(ENGLISH), in_language(PSEUDO)
    english, marked_after = drawn(unit), drawn(replace(unit, language=PSEUDO))
    marked, english_after = drawn(other), drawn(replace(other, language=ENGLISH))
    assert english == english_after
    assert marked == marked_after
    for path, html in english.items():
        assert OPENED not in html, path
        assert CLOSED not in html, path
    assert all(OPENED in html for html in marked.values())


@cache
def welsh() -> Mapping[str, bytes]:
    """The files of the unit in Welsh."""
    return unit_files(real_bank(), in_language("cy"), CONTENT)


def test_a_unit_in_welsh_has_its_page_words_in_welsh() -> None:
    files = welsh()
    page = files[f"units/{real_unit().slug}/lesson-1.html"].decode()
    assert page.startswith("<!doctype html>\n<html lang=cy ")
    assert "Gwers 1 o 6" in page
    assert "Beth i’w gasglu" in page
    assert f"<script defer src={SCRIPT}></script>" in page
    table = files[f"units/{real_unit().slug}/{SCRIPT}"].decode()
    assert "Dangos haws ac anoddach ar gyfer pob cam" in table


def test_a_unit_in_a_language_without_a_table_has_english_page_words() -> None:
    files = unit_files(real_bank(), in_language("fr"), CONTENT)
    assert "<html lang=en-GB " in files[f"units/{real_unit().slug}/lesson-1.html"].decode()
    assert f"units/{real_unit().slug}/{SCRIPT}" not in files


def test_outside_a_unit_everything_is_in_english() -> None:
    assert spoken() == ENGLISH
    with speaking("cy"):
        assert spoken() == "cy"
    assert spoken() == ENGLISH
    with pytest.raises(ZeroDivisionError), speaking("cy"):
        print(1 / 0)
    assert spoken() == ENGLISH


def test_rows_numbers_and_days_of_english() -> None:
    assert row(["a"]) == "a"
    assert row(["a", "b", "c"]) == "a, b and c"
    assert row(["a", "b"], "or") == "a or b"
    assert number_in_words(0) == "no"
    assert number_in_words(13) == "13"
    assert day(2026, 11, 25) == "25 November 2026"


def test_rows_numbers_and_days_of_welsh() -> None:
    """Days by CLDR; `a`, `ac` and what they sound anew from memory (any grammar of Welsh)."""
    with speaking("cy-GB"):
        assert row(["neidio", "aros"]) == "neidio ac aros"
        assert row(["rhedeg", "neidio", "rholio"]) == "rhedeg, neidio a rholio"
        assert row(["neidio", "troi"]) == "neidio a hefyd troi"
        assert row(["1", "8"]) == "1 ac 8"
        assert row(["neidio", "chwifio"]) == "neidio a chwifio"
        assert number_in_words(8) == "wyth"
        assert day(2026, 11, 25) == "25 Tachwedd 2026"
        assert ngettext("{number} count", "{number} counts", 1) == "1 cyfrif"
        assert ngettext("{number} count", "{number} counts", 8) == "8 o gyfrifau"


def test_scripts_find_their_words_in_the_table_of_the_page() -> None:
    """The table's plural rule is C in gettext and is asked here as JavaScript, by Node."""
    files = welsh()
    table = files[f"units/{real_unit().slug}/{SCRIPT}"].decode()
    says = (
        "const b = globalThis.danceUnitBank;"
        'console.log(JSON.stringify([b.gettext("Show easier and harder for every step"),'
        'b.gettext("Notes for lesson {lesson}, step by step", { lesson: 3 }),'
        'b.gettext("not in the table {a}", { a: 1 }),'
        'b.ngettext("{number} one", "{number} many", 2),'
        "b.pageWords ? [0, 1, 2].map(b.pageWords.form) : null,"
        '[[], ["a"], ["a", "b", "c"]].map(b.row)]));'
    )
    assert node_says(table, says) == [
        "Dangos haws ac anoddach ar gyfer pob cam",
        "Nodiadau ar gyfer gwers 3, gam wrth gam",
        "not in the table 1",
        "2 many",
        [1, 0, 1],
        ["", "a", "a, b, hefyd c"],
    ]
    english = node_says("", says)
    assert english[0] == "Show easier and harder for every step"
    assert english[1] == "Notes for lesson 3, step by step"
    assert english[3] == "2 many"
    assert english[5] == ["", "a", "a, b and c"]
