"""What any program makes of a file (PyYAML, the reference) is said where it is not what we read."""

from __future__ import annotations

from pathlib import Path

import pytest
import yaml

from build_tools.checking.check_bank import check_folder
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.other_programs import notes_for_others
from build_tools.source.said_once.in_full import in_full
from build_tools.source.tidy import Tidied, tidied
from tests.support.banks import BASE, BASE_UNIT, change, copy_base

FILE = f"units/{BASE_UNIT}/lesson-1.md"
TEXT = (BASE / FILE).read_text(encoding="utf-8")
FOCUS = next(line for line in TEXT.split("\n") if line.startswith("focus: "))


def document(text: str) -> Document:
    found = read_markdown(FILE, text.encode())
    assert isinstance(found, Document), found
    return found


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("focus: Think: what was it?", "stops here: a second colon"),
        ("focus: Try card #1 three ways", "read other words here"),
        ("focus: *Three* ways of folding", "stops here"),
    ],
)
def test_it_is_said_at_the_line_and_tidy_mends_it(typed: str, said: str) -> None:
    text = TEXT.replace(FOCUS, typed)
    read = document(text)
    [note] = notes_for_others(read)
    assert said in note.message
    assert "`tidy`" in note.help
    assert text.split("\n")[note.line - 1] == typed
    made = tidied(FILE, text.encode())
    assert isinstance(made, Tidied)
    assert notes_for_others(document(made.text)) == []
    fields = made.text.split("---\n")[1]
    assert in_full(yaml.safe_load(fields), "lesson", "lesson-1.md") == read.data


@pytest.mark.parametrize(
    "typed", [FOCUS, 'focus: "Think: what was it?"', 'focus: "A long one that\ngoes on."']
)
def test_nothing_is_said_where_every_program_reads_the_same(typed: str) -> None:
    assert notes_for_others(document(TEXT.replace(FOCUS, typed))) == []


def test_what_is_said_already_is_not_said_twice() -> None:
    read = document(TEXT.replace(FOCUS, 'focus: "Think of what it was'))
    assert [note.line for note in read.read_as()] == [4]
    assert notes_for_others(read) == []


def test_check_says_it_as_a_note_and_finds_nothing_else(tmp_path: Path) -> None:
    bank = copy_base(tmp_path)
    change(bank / FILE, FOCUS, FOCUS.replace("focus: ", "focus: Today: "))
    [problem] = check_folder(bank).problems
    assert (problem.severity, problem.rule, problem.file) == ("note", "read-as", FILE)
