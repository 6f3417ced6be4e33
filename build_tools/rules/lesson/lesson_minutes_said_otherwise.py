"""The minutes that a text gives a lesson are minutes that a lesson has.

"It takes 25 minutes in the hall", and the steps come to 45: a head gives it a slot in which half of
it can be done.

Bad:
    notes: Each lesson takes 500 minutes in the hall.
Good:
    notes: Each lesson takes as long as its steps say.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers import number_of
from build_tools.views.words.plain_words import listed, minutes_in_words
from build_tools.views.written.unit_text import place_of, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_NUMBER = r"(?P<number>\d{1,3}|[a-z]+(?:-[a-z]+)?)"
_SAID = re.compile(
    rf"\b(?:(?:takes?|lasts?|needs?|is|are) (?:about |some )?{_NUMBER} minutes (?:in the hall|long)"
    rf"|(?:each|every|the|this|one) lessons? (?:takes?|lasts?|needs?|has|is|of) (?:about |some )?"
    rf"(?P<other>\d{{1,3}}|[a-z]+(?:-[a-z]+)?) minutes)\b",
    re.IGNORECASE,
)
_ABOUT = 5
"""Minutes by which a lesson may be a little longer or shorter than is said."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first such number of each text that no lesson has."""
    has = sorted({lesson.minutes for lesson in unit.lessons})
    text = unit_text(unit)
    for file, field in text.at(text.holding(("minutes",))):
        if field.kind not in ("notes", "summary", "hall", "half_hall", "classroom_first"):
            continue
        for said in _SAID.finditer(field.text):
            minutes = number_of((said.group("number") or said.group("other")).lower())
            if minutes is None or any(abs(minutes - one) <= _ABOUT for one in has):
                continue
            sums = {sum(lesson.minutes for lesson in unit.lessons), 2 * max(has)}
            if minutes in sums:
                continue
            yield Finding(
                file,
                place_of(field, said.group(0)),
                f"`{field.kind}` says `{said.group(0)}`, but the lessons have "
                f"{listed([minutes_in_words(one) for one in has])}",
                "say the minutes that the lesson has, or mend `minutes`",
            )
            break
