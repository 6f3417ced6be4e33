"""A poem's lines are taken from the notes as they were written."""

from __future__ import annotations

from dataclasses import replace

from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.stimulus import shown_items, ways_to_show
from build_tools.pages.pieces.verse import verse, verse_of
from build_tools.views.lesson.to_print import text_of
from tests.support.sound_bank import real_unit

NOTES = """### One

Prose here.

### The poem: Rain

Drip.\\
Drop.

Not verse.

### Two

a\\
b
"""


def test_lines_that_end_as_written_are_verse_and_the_rest_is_not() -> None:
    assert verse(NOTES, "Rain") == (("Drip.", "Drop."),)
    assert verse(NOTES, "One") == ()
    assert verse(NOTES, "Snow") == ()


def test_the_rock_pools_poem_has_its_stanzas() -> None:
    poem = next(item for item in shown_items(real_unit()) if item.title == "Low water")
    assert len(poem.stanzas) == 5
    assert poem.stanzas[0][0] == "The sea lets go."
    assert [link.words for link in ways_to_show(real_unit())] == [
        "Show the picture",
        "Read “Low water”",
    ]


def test_a_poem_in_its_text_version_keeps_its_lines_on_the_page_and_in_print() -> None:
    """As `text_version: |` has it (YAML 1.2.2, 8.1.2: a literal block keeps its line ends)."""
    poem = "Drip on the stone.\nDrop on the stone.\n\nThen the whole sky.\n"
    unit = real_unit()
    text = next(one for one in unit.stimulus.items if not one.file)
    new = replace(text, title="A rain that nobody wrote of", text_version=poem)
    lines = replace(unit, stimulus=replace(unit.stimulus, items=(new,)))
    (shown,) = shown_items(lines)
    assert shown.stanzas == (
        ("Drip on the stone.", "Drop on the stone."),
        ("Then the whole sky.",),
    )
    html = notes_html(text_of(lines, new), 3)
    assert html.count("<br") == 1
    assert html.count("<p>") == 2


def test_words_in_one_line_are_no_poem() -> None:
    unit = real_unit()
    assert not any(verse_of(one) for one in unit.stimulus.items if one.file)
