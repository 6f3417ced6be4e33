"""Groups that are told for a class of so many come to so many.

A teacher of 30 reads "five fours and three threes", sends the class off, and one child has no
group. Each sum that a line tells in full is added up.

Bad:
    notes: 28 pupils are seven fours; 30, five fours and three threes.
Good:
    notes: 28 pupils are seven fours; 30, six fours and two threes.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.class_sums import class_sums
from build_tools.sentences.word_lists import word_list
from build_tools.views.written.unit_text import place_of, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_GROUPS = word_list(
    "pair pairs two twos three threes four fours five fives six sixes seven sevens eight eights"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first sum of each text that does not come out."""
    text = unit_text(unit)
    for file, field in text.at(text.holding(_GROUPS)):
        wrong = next((one for one in class_sums(field.text) if one.total != one.comes_to), None)
        if wrong is not None:
            yield Finding(
                file,
                place_of(field, wrong.said),
                f"`{field.kind}` says `{wrong.said}`, and that comes to {wrong.comes_to}",
                f"make the groups come to {wrong.total}, or say how many are over",
            )
