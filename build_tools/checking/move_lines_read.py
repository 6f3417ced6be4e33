"""A note for each line of a lesson's notes that is read as a move's, though typed otherwise.

So is a way to dance it sitting or on wheels that has a dash for its colon.
"""

from __future__ import annotations

from collections.abc import Mapping

from build_tools.model.unit import Unit
from build_tools.problem import Problem
from build_tools.source.front_matter import NOTES, Document
from build_tools.source.typed.what_was_read import READ_AS, shown
from build_tools.views.lesson.move_lines import read_as_moves
from build_tools.views.lesson.notes_for_whom import ways_with_a_dash

_NOTHING_TO_MEND = "nothing, if that is what you mean; else put other words before the colon"


def move_lines_read(unit: Unit, documents: Mapping[str, Document]) -> list[Problem]:
    """A note at each such line of the unit's lessons."""
    lines = [
        documents[lesson.file].problem(
            READ_AS,
            "note",
            (NOTES, one.line),
            f"“{shown(one.typed)}” is read as the line of the move {one.word}",
            _NOTHING_TO_MEND,
        )
        for lesson in unit.lessons
        for one in read_as_moves(lesson.notes, unit.dance)
    ]
    ways = [
        documents[lesson.file].problem(
            READ_AS,
            "note",
            (NOTES, number),
            f"“{named} –” is read as “{named}:”, and what follows as how one dances it so",
            _NOTHING_TO_MEND,
        )
        for lesson in unit.lessons
        for number, line in enumerate(lesson.notes.split("\n"))
        for named in ways_with_a_dash(line)
    ]
    return [*lines, *ways]
