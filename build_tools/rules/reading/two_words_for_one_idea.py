"""A unit uses one word for one idea.

Where the same thing is "unison" on one page and "synchronised" on the next, a class looks for the
difference. Pupils' own words are welcome once the two have been put side by side: in `words`, or in
the line that brings the second.

Bad:
    lesson 1, say: Dance it in unison. Lesson 2, say: Be synchronised.
Good:
    lesson 1, say: Dance it in unison. Lesson 2, say: In unison again.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.same_idea import SAME_IDEA, put_side_by_side
from build_tools.sentences.sayings import Saying, saying_of
from build_tools.views.written.unit_text import Found, UnitText, unit_text

GRADE: Grade = "note"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a note for each pair of words for one idea, at the first use of the second word."""
    text = unit_text(unit)
    for word, others in SAME_IDEA:
        uses = [found for found in text.saying(others) if _in_a_lesson(found)]
        if not uses or not _is_used(text, word):
            continue
        explained = any(put_side_by_side(found.field.text, word) for found in uses)
        if explained or _side_by_side(unit, word, others):
            continue
        first = uses[0]
        yield Finding(
            first.file,
            first.field.path,
            f"`{first.said.text}` here and `{word}` elsewhere in the unit say the same",
            f"write `{word}` in both places, or put the two side by side in `words`",
        )


def _is_used(text: UnitText, word: str) -> bool:
    """Whether some lesson has the word itself, outside its list of words."""
    return any(_in_a_lesson(found) for found in text.saying(saying_of(word)))


def _in_a_lesson(found: Found) -> bool:
    return found.document > 0 and bool(found.field.path) and found.field.kind != "words"


def _side_by_side(unit: Unit, word: str, others: Saying) -> bool:
    entries = (unit.words, *(lesson.words for lesson in unit.lessons))
    lines = (f"{w}: {plain}" for words in entries for w, plain in words.items())
    return any(word in line.lower() and others.mentioned(line) for line in lines)
