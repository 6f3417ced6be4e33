"""At least one end point is about how it is danced.

Four moves in order, together, in two ways: all of that can be done without dancing well. Control,
stretching right through, where the eyes look, a soft landing, a clear feeling: one end point in
that sense tells a teacher what to look for beyond the steps, and pupils what to get better at.

Bad:
    in-order: {every_pupil: dances the four moves in order, looks_like: The moves come in order., …}
Good:
    in-order: {every_pupil: dances with control, looks_like: The sink takes all its counts., …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.quality import SAYS_HOW
from build_tools.views.words.open_places import MARK
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Department for Education, National curriculum, 2013, physical education: pupils develop "
    "flexibility, strength, technique, control and balance, through dance among others"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding where none of the end points says how it is danced."""
    points = unit.end_points.values()
    texts = [text for point in points for text in (point.every_pupil, point.looks_like)]
    if not texts or SAYS_HOW.in_any(texts) or any(MARK in text for text in texts):
        return
    yield Finding(
        unit.file,
        ("end_points",),
        f"0 of {how_many(len(points), 'end point')} say how it is danced; all are about what is "
        "danced, when and by whom",
        "let one be about control, stretch, where the eyes look, balance or a clear feeling",
    )
