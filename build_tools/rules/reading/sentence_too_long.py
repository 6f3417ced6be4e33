"""No sentence in a lesson has more than 25 words.

A sentence of 14 words is understood by nine readers in ten at once; one of 43 by fewer than one in
ten. A lesson is read in a hurry. Fields with a shorter limit of their own are left to their rules.

Bad:
    loud: If the class gets loud, which it may when the drum begins, put it down and wait until
      all are quiet again, and then begin once more, and softer.
Good:
    loud: Put the drum down. Wait for quiet. Begin again, softer.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.reading.task_too_long import LIMIT as TASK_LIMIT
from build_tools.rules.rule import Finding
from build_tools.views.reading.ease import longest_sentence, words
from build_tools.views.reading.words_counted import longer_than
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
SOURCE = (
    "Government Digital Service, Inside GOV.UK blog, Sentence length: why 25 words is our limit, "
    "4 August 2014"
)
LIMIT = 25
OWN_LIMIT = frozenset({"say", "look_for", "notes"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field of a lesson with a sentence of more than 25 words."""
    for file, fields in unit_text(unit).documents[1:]:
        for one in fields:
            if one.text.count(" ") < LIMIT or one.kind in OWN_LIMIT:
                continue
            if one.kind == "task" and longer_than(TASK_LIMIT, one.text):
                continue
            found = words(longest_sentence(one.text))
            number = len(found)
            if number > LIMIT:
                yield Finding(
                    file,
                    one.path,
                    f"`{one.kind}` has a sentence of {number} words, {number - LIMIT} more than "
                    f"{LIMIT}: {' '.join(found[:4])} …",
                    "break the sentence in two, where it says and, so or while",
                )
