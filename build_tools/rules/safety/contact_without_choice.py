"""Wherever pupils may touch, there is a way to dance it without touching.

Some pupils do not want to be touched, some are not to be, and nobody has to say why. A version
without contact, said where the contact is, lets everyone stay in the dance.

Bad:
    task: Hold hands with your partner and lean back.
Good:
    task: Hold hands with your partner, or a scarf between you, and lean back a little.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_care import A_CHOICE, CONTACT, NO_CONTACT
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.written.unit_text import DOING, unit_text

GRADE: Grade = "error"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 8.26: safe technique for lifting and "
    "supporting only when appropriate; the way without contact: common practice, no source"
)
_IN_UNIT = frozenset({"idea", "rules", "start", "how", "does", "if_not", "as", "who", "place"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first contact in each document that has no way without."""
    text = unit_text(unit)
    for number, (file, fields) in enumerate(text.documents):
        lines = tuple(zip(fields, text.lowers[number], strict=True))
        found = _first(lines, in_unit=number == 0)
        if found is None:
            continue
        one, said = found
        if NO_CONTACT.in_any(text.lowers[number]) or A_CHOICE.in_any(_beside(one, lines)):
            continue
        where = f"step {int(one.path[1]) + 1}" if one.path[0] == "steps" else f"`{one.kind}`"
        yield Finding(
            file,
            one.path,
            f'{where} asks for contact ("{said}"), and nothing here says how to dance it without '
            "touching",
            "add a way without, such as: or a hand's width apart, not touching",
        )


Lines = tuple[tuple[FieldText, str], ...]


def _first(lines: Lines, in_unit: bool) -> tuple[FieldText, str] | None:
    for one, lower in lines:
        of_dance = in_unit and one.kind in _IN_UNIT and one.path[0] != "stimulus"
        in_step = one.kind in DOING and one.path[0] == "steps"
        if (of_dance or in_step) and (said := CONTACT.asked(lower)):
            return one, said
    return None


def _beside(one: FieldText, lines: Lines) -> Iterator[str]:
    """The fields of the same step or part, and how partners may be changed."""
    for other, lower in lines:
        if other.path[:2] == one.path[:2] or other.path == ("change", "partners"):
            yield lower
