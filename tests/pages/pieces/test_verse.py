"""A poem's lines are taken from the notes as they were written."""

from __future__ import annotations

from build_tools.pages.pieces.stimulus import shown_items, ways_to_show
from build_tools.pages.pieces.verse import verse
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
