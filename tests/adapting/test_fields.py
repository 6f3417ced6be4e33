"""One field is set, put in or taken out, and every other letter stays as its author wrote it."""

from __future__ import annotations

import yaml
from hypothesis import given
from hypothesis import strategies as st

from build_tools.adapting.fields import quoted, with_field
from tests.support.packs import unit_files

TEXT = """---
# mine
title: >-
  Twelve hours
  in a pool
years:
- nation: England
  years: [3, 4]

tried:
  taught: true
  where: here   # in the hall

---
title: not a field
"""


def fields(text: str) -> dict[str, object]:
    # libyaml's reader of the same language takes a tenth of the time
    found: dict[str, object] = yaml.load(text.split("---\n")[1], yaml.CSafeLoader)
    return found


def test_a_field_of_several_lines_is_set_whole() -> None:
    assert with_field(TEXT, "title", "New") == TEXT.replace(
        ">-\n  Twelve hours\n  in a pool\n", "New\n"
    )
    changed = with_field(TEXT, "tried", "\n  taught: false")
    old = "tried:\n  taught: true\n  where: here   # in the hall\n"
    assert changed == TEXT.replace(old, "tried:\n  taught: false\n")


def test_a_list_with_its_marks_at_the_edge_is_one_field() -> None:
    old = "years:\n- nation: England\n  years: [3, 4]\n"
    assert with_field(TEXT, "years", "[]") == TEXT.replace(old, "years: []\n")
    assert with_field(TEXT, "years", None) == TEXT.replace(old, "")


def test_a_new_field_stands_behind_the_one_that_is_named() -> None:
    changed = with_field(TEXT, "draft", "true", after="years")
    assert changed == TEXT.replace("years: [3, 4]\n", "years: [3, 4]\ndraft: true\n")


def test_taking_out_what_is_not_there_changes_nothing() -> None:
    assert with_field(TEXT, "credit", None) == TEXT


@given(st.text(st.characters(exclude_categories=("Cc", "Cs", "Zl", "Zp")), min_size=1))
def test_any_words_are_read_back_as_they_were(words: str) -> None:
    real = unit_files()["unit.md"].decode()
    changed = with_field(real, "title", quoted(words))
    assert fields(changed) == fields(real) | {"title": words}
