"""Whether a unit says by itself how many steps are left beside a chair or wheelchair."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from build_tools.model.unit import Unit
from build_tools.views.written.unit_text import fields_of_lesson, fields_of_unit

_SENTENCE = re.compile(r"[^.!?]+")
_CHAIR = re.compile(r"\b(?:wheel)?chairs?\b|\bwheels\b", re.IGNORECASE)
_STEPS = r"\b(?:one|two|three|four|a|half a)\b(?: (?:big|small))? steps?\b"
_ROOM = re.compile(
    rf"\b(?:leaves?|keeps?|gives?)\b.*{_STEPS}"
    rf"|{_STEPS} (?:more|clear|free|wider|further|round|all round|beside|on each side)\b",
    re.IGNORECASE | re.DOTALL,
)


@lru_cache(maxsize=16)
def tells_room_beside_chairs(unit: Unit) -> bool:
    """Whether one sentence of the unit or of its lessons names a chair and the steps round it."""
    return any(
        _CHAIR.search(sentence) and _ROOM.search(sentence)
        for text in _texts(unit)
        for sentence in _SENTENCE.findall(text)
    )


def _texts(unit: Unit) -> Iterator[str]:
    yield from (one.text for one in fields_of_unit(unit))
    yield unit.notes
    for lesson in unit.lessons:
        yield from (one.text for one in fields_of_lesson(unit, lesson))
