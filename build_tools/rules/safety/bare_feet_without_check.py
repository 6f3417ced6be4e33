"""Bare feet come with a look at the floor: only if it is clean and safe.

Whether feet may be bare depends on the floor of the day: splinters, grit, cold, what was spilt at
lunch. A unit that only says "bare feet" decides that for a hall it has never seen.

Bad:
    wear: School PE kit and bare feet
Good:
    wear: School PE kit. Bare feet only if the floor is clean and safe; otherwise soft shoes.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_safety import BARE_FEET, FLOOR_CHECK
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "error"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 7.27: decide on the floor's cleanliness, "
    "condition and temperature, the impact and the pupils"
)
_KINDS = frozenset({"wear", "safety", "does", "say", "task", "into", "collect", "classroom_first"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first mention of bare feet in each document with no check."""
    text = unit_text(unit)
    if not text.words.intersection(("bare", "barefoot", "barefooted", "off")):
        return
    in_kit = False
    for (file, fields), lowers in zip(text.documents, text.lowers, strict=True):
        lines = [(o, low) for o, low in zip(fields, lowers, strict=True) if o.kind in _KINDS]
        in_kit = in_kit or any(o.kind == "wear" and _checked(low) for o, low in lines)
        if in_kit or any(o.kind == "safety" and FLOOR_CHECK.in_it(low) for o, low in lines):
            continue
        for one, lower in lines:
            said = BARE_FEET.asked(lower)
            if said is None or FLOOR_CHECK.in_it(lower):
                continue
            yield Finding(
                file,
                one.path,
                f'`{one.kind}` says "{said}", and nothing with it looks at the floor first',
                "add: only if the floor is clean and safe; otherwise soft indoor shoes",
            )
            break


def _checked(lower: str) -> bool:
    return BARE_FEET.in_it(lower) and FLOOR_CHECK.in_it(lower)
