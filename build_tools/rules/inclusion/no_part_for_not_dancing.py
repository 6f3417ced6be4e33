"""A pupil who cannot dance today has a real part in the lesson.

Whoever sits and watches for a lesson learns little and often distracts. The dance needs a beat,
a caller, someone to turn the cards and an eye that looks for one thing.

Bad:
    not_dancing: Sits on the bench and watches quietly.
Good:
    not_dancing: Keeps the beat on the drum, then says what was together.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.about_pupils import PART

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Black and Stevenson, The Inclusion Spectrum, 2011: everyone can play comes first, and change "
    "to include next"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson where `not_dancing` gives no part in the dance."""
    for lesson in unit.lessons:
        if PART.said(lesson.not_dancing) is None:
            yield Finding(
                lesson.file,
                ("not_dancing",),
                f"`not_dancing` gives a pupil who cannot dance in lesson {lesson.number} nothing "
                "to do for the dance",
                "give a part in it: keep the beat, turn the cards, call the counts, or look for "
                "one thing and report",
            )
