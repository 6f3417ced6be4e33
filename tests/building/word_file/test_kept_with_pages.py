"""A site that keeps lessons as one file has each as a word-processor file too, and else none."""

from __future__ import annotations

from build_tools.building.unit_files import unit_files
from build_tools.building.word_file.unit_document import word_file
from tests.support.banks import CONTENT
from tests.support.sound_bank import whole_bank

SLUG = "kite-and-string"
"""A unit of one lesson, which is soon drawn."""


def test_it_is_the_same_file_that_the_command_makes() -> None:
    (unit,) = (one for one in whole_bank().units if one.slug == SLUG)
    kept = unit_files(whole_bank(), unit, CONTENT, keep=True)
    made = word_file(whole_bank(), unit, CONTENT / "units" / SLUG, unit.lessons)
    name = f"units/{SLUG}/lesson-1-to-edit.docx"
    assert kept[name] == made.data
    assert [one for one in kept if one.endswith(".docx")] == [name]
    assert not [one for one in unit_files(whole_bank(), unit, CONTENT) if one.endswith(".docx")]
