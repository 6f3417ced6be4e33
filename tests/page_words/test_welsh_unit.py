"""A unit in Welsh: its pages say nothing in English, and rules that read English let it be.

Whether a word is Welsh is asked of the word list that test_spelling.py names.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

from build_tools.building.templates import html_of
from build_tools.checking.check_bank import Report, check_folder
from build_tools.page_words.speaking import speaking
from build_tools.pages.assemble import unit_pages
from build_tools.pages.page import Page
from build_tools.views.words.groups_in_words import groups_in_words
from tests.page_words.left_in_english import shown_on
from tests.page_words.test_spelling import NOT_IN_THE_LIST
from tests.page_words.welsh import unknown
from tests.page_words.written_by_authors import Written, listed_words

BANK = Path(__file__).with_name("welsh_bank")
NO_WORDS = frozenset(
    [
        "cc",
        "by",
        "html",
        "wav",
        "midi",
        "docx",
        "md",
        "ch",
        "read",
        "role",
        "edition",
        "day",
        "found",
    ]
)
"""Names of licences, of kinds of files and of fields; ch is a word cut short: o’ch."""


@cache
def report() -> Report:
    return check_folder(BANK)


@cache
def pages() -> tuple[Page, ...]:
    bank = report().bank
    assert bank is not None
    return tuple(unit_pages(bank, bank.units[0]))


def test_rules_that_read_english_let_it_be_and_a_note_says_so() -> None:
    (note,) = report().problems
    assert (note.rule, note.severity) == ("wording-not-judged", "note")


def test_groups_are_said_in_welsh_as_the_script_says_them() -> None:
    with speaking("cy"):
        assert groups_in_words((4, 4, 4, 3)) == "3 o grwpiau o bedwar ac 1 grŵp o dri"
    assert groups_in_words((4, 4, 4, 3)) == "three fours and one three"


def test_every_page_says_which_language_it_is_in() -> None:
    for page in pages():
        assert '<html lang="cy"' in html_of(page), page.path


def test_no_page_is_in_two_languages() -> None:
    bank = report().bank
    assert bank is not None
    written = Written(bank, bank.units[0])
    used: dict[str, str] = {}
    for page in pages():
        for text in shown_on(html_of(page)):
            for word in written.left_of(text).split():
                if word != "…" and word.isalpha() and len(word) > 1:
                    used.setdefault(word, f"{page.path}: {text[:100]}")
    assert len(used) > 300
    # what is to be copied into a file is in the format's words
    of_the_format = {part for word in listed_words() for part in word.replace("_", " ").split()}
    known = {word.lower() for word in NOT_IN_THE_LIST} | NO_WORDS | of_the_format
    strange = {*unknown(f"{word} {word.capitalize()}" for word in sorted({*used} - known))}
    assert {word: used[word] for word in used if f"{word} {word.capitalize()}" in strange} == {}
