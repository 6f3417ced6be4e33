"""A unit uses one word for one idea.

Where the same thing is "unison" on one page and "synchronised" on the next, a class looks for the
difference. Pupils' own words are welcome once the two have been put side by side in `words`.

Bad:
    lesson 1, say: Dance it in unison. Lesson 2, say: Be synchronised.
Good:
    lesson 1, say: Dance it in unison. Lesson 2, say: In unison again.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.trade_words import SAME_IDEA
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "note"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a note for each pair of words for one idea, at the first use of the second word."""
    text = unit_text(unit)
    for word, others in SAME_IDEA:
        if word.split()[0] not in text.words or word not in text.lower:
            continue
        for other in others:
            if other.split()[0] not in text.words or other not in text.lower:
                continue
            if _side_by_side(unit, word, other):
                continue
            place = _first_use(unit, other)
            if place and _first_use(unit, word):
                yield Finding(
                    *place,
                    f"`{other}` here and `{word}` elsewhere in the unit say the same",
                    f"write `{word}` in both places, or put the two side by side in `words`",
                )


def _first_use(unit: Unit, word: str) -> tuple[str, FieldPath] | None:
    for file, fields in unit_text(unit).documents[1:]:
        for one in fields:
            if one.path and one.kind != "words" and word in one.text.lower():
                return file, one.path
    return None


def _side_by_side(unit: Unit, word: str, other: str) -> bool:
    entries = (unit.words, *(lesson.words for lesson in unit.lessons))
    lines = (f"{w} {plain}".lower() for words in entries for w, plain in words.items())
    return any(word in line and other in line for line in lines)
