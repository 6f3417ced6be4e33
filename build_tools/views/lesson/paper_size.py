"""How large the words of a lesson can be so that it prints on two sides of A4.

Twelve points where they fit, never under eleven. Where there is still room, the moves are told in
words too. The sizes were measured on printed lessons; the tests print every lesson of the bank and
count its sides.
"""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.dance.moves_today import danced_today
from build_tools.views.lesson.shortening import can_be_shortened
from build_tools.views.reading.ease import words
from build_tools.views.reading.lesson_text import text_by_field

NOT_ON_PAPER = frozenset({"focus"})
WORDS_IN_A_HEADING = 6
"""How many words would take the room that a step's own heading and edges take."""
WORDS_OF_A_SHORTENED_STEP = 4
SAID_IS_LARGER = 1.6
"""How much more room words take that are said aloud: they are printed in 14 points, bold."""
_SIZES = ((720, "12"), (760, "11.5"))
_LEAST_SIZE = "11"
_WITH_MOVES = {"12": 737, "11.5": 870, "11": 945}
"""The most room for each size with what is told beside the lesson; it goes where side 2 ends."""


def paper_size(unit: Unit, lesson: Lesson) -> str:
    """The size of the lesson's words on paper, in points: 12, 11.5 or 11."""
    room = words_of_room(unit, lesson)
    return next((size for most, size in _SIZES if room <= most), _LEAST_SIZE)


def danced_on_paper(unit: Unit, lesson: Lesson) -> int:
    """How many of the four lists of `danced_today` there is room for: what is made comes first."""
    room, most = words_of_room(unit, lesson), _WITH_MOVES[paper_size(unit, lesson)]
    fitting = 0
    for danced in danced_today(unit, lesson):
        moves = [f"{move.word} {move.does}" for move in danced.moves]
        parts = [line for part in danced.parts for line in (*part.danced, part.sound)]
        for lines in (moves, parts):
            room += sum(len(line.split()) for line in lines)
            if room > most:
                return fitting
            fitting += 1
    return fitting


def words_of_room(unit: Unit, lesson: Lesson) -> float:
    """How much room the lesson takes on paper, in words of running text."""
    room = float(WORDS_IN_A_HEADING * len(lesson.steps))
    for field in text_by_field(lesson):
        if field.kind not in NOT_ON_PAPER:
            larger = SAID_IS_LARGER if field.kind == "say" else 1
            room += larger * len(words(field.text))
    index = unit.lessons.index(lesson)
    talk = unit.lessons[index - 1].look_and_talk if index else None
    if talk and talk.next:
        told = f"{talk.looking_for} {talk.next.seen} {talk.next.not_yet}"
        room += len(words(told)) + WORDS_IN_A_HEADING
    # "Later, shorten step 4 by 3, step 5 by 2 …" is told of what the steps say, not written
    return room + WORDS_OF_A_SHORTENED_STEP * len(can_be_shortened(lesson))
