"""Bare feet come with a look at the floor: only if it is clean and safe.

Whether feet may be bare depends on the floor of the day: splinters, grit, cold, what was spilt at
lunch. A unit that only says "bare feet" decides that for a hall it has never seen. The look is
looked for in the same field, and for a lesson in its `safety` and in the kit's `wear` as well.

Bad:
    wear: School PE kit and bare feet
Good:
    wear: School PE kit. Bare feet only if the floor is clean and safe; otherwise soft shoes.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.floor import BARE_OR_NO_SHOES, LOOKED_AT, bare_feet, floor_decides
from build_tools.views.written.unit_text import Found, unit_text

GRADE: Grade = "error"
READS = "en"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 7.27: decide on the floor's cleanliness, "
    "condition and temperature, the impact and the pupils"
)
_KINDS = frozenset(
    {"wear", "safety", "does", "say", "task", "you", "into", "collect", "classroom_first"}
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first mention of bare feet in each document with no check."""
    wear = unit.kit.wear
    if bare_feet(wear) and floor_decides(wear):
        return
    lessons = {lesson.file: lesson for lesson in unit.lessons}
    for found in _first_in_each_document(unit):
        lesson = lessons.get(found.file)
        if lesson and any(LOOKED_AT.said(line) for line in lesson.safety):
            continue
        yield Finding(
            found.file,
            found.field.path,
            f'`{found.field.kind}` says "{found.said.text}", and nothing with it looks at the '
            "floor first",
            "add: only if the floor is clean and safe; otherwise soft indoor shoes",
        )


def _first_in_each_document(unit: Unit) -> Iterator[Found]:
    text = unit_text(unit)
    done: set[int] = set()
    for found in text.saying(BARE_OR_NO_SHOES, _KINDS, meant=False):
        said = bare_feet(found.field.text)
        if found.document in done or said is None or floor_decides(found.field.text):
            continue
        done.add(found.document)
        yield replace(found, said=said)
