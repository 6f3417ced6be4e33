"""A lesson has no more than 800 words to read through.

It is read once over breakfast and glanced at in the hall. 800 words take a little over three
minutes; what is longer is not read. Lines for easier and harder and the notes below are not
counted.

Bad:
    every step of a lesson is told like this
    task: >-
      Walk for eight counts and stop. Most pupils rush here at first, so count aloud yourself and
      wait until everyone is still before you start again. Tell them that whoever watches sees the
      stop more than the walk. If some go on talking, let them whisper the counts with you. Then do
      it all once more, a little slower, and let two or three of them say what has changed.
Good:
    task: Walk for eight counts and stop. Wait until everyone is still, then do it again.
    notes: Most pupils rush at first. Count aloud yourself, and let them whisper with you.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.reading.lesson_text import is_read_through, lesson_words
from build_tools.views.reading.words_counted import words_at_most
from build_tools.views.words.plain_words import how_many
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
SOURCE = (
    "Brysbaert, Journal of Memory and Language 109:104047, 2019: adults read 238 words a minute; "
    "the limit of 800 is common practice"
)
LIMIT = 800
"""Two sides hold about so many. With fewer, authors leave out who does it, and where: at 700 nearly
every lesson of the bank was cut to the word, and teachers tripped over what had been cut."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson with more than 800 words to read through."""
    for lesson, (file, fields) in zip(unit.lessons, unit_text(unit).documents[1:], strict=True):
        text = "\n".join(one.text for one in fields if one.path and is_read_through(one))
        if words_at_most(text) <= LIMIT:
            continue
        number = lesson_words(lesson).words
        if number > LIMIT:
            yield Finding(
                file,
                ("lesson",),
                f"lesson {lesson.number} has {number} words to read through, {number - LIMIT} more "
                f"than {LIMIT}",
                f"cut {how_many(number - LIMIT, 'word')}, or move them to the notes below",
            )
