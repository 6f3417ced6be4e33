"""What pupils are asked to wear leaves room for faith, modesty and what a family owns.

Covered arms and legs stop nobody dancing. A line that says so spares a pupil from asking.

Bad:
    wear: Leotard and bare legs
Good:
    wear: School PE kit. Arms and legs may be covered.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_care import COSTUME, COSTUME_WORDS, DRESS, DRESS_CHOICE
from build_tools.views.written.unit_text import UnitText, unit_text

GRADE: Grade = "note"
SOURCE = "common practice, no source"
_KINDS = frozenset({"wear", "collect", "does", "say", "task", "into", "safety"})
_CHOICE = frozenset({"wear", "without_props", "safety"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first piece of dress, if nothing says that it is a choice."""
    text = unit_text(unit)
    if text.words.isdisjoint(COSTUME_WORDS):
        return
    for (file, fields), lowers in zip(text.documents, text.lowers, strict=True):
        for one, lower in zip(fields, lowers, strict=True):
            if one.kind not in _KINDS or not (said := COSTUME.asked(lower)):
                continue
            if not DRESS_CHOICE.in_it(lower) and not _a_choice(text):
                yield Finding(
                    file,
                    one.path,
                    f'`{one.kind}` asks for "{said}", and nothing says that it is a choice',
                    "add to `wear`: arms, legs and heads may be covered, and no costume is needed",
                )
            return


def _a_choice(text: UnitText) -> bool:
    return any(
        one.kind in _CHOICE
        and DRESS_CHOICE.in_it(lower)
        and (one.kind == "wear" or DRESS.in_it(lower))
        for (_, fields), lowers in zip(text.documents, text.lowers, strict=True)
        for one, lower in zip(fields, lowers, strict=True)
    )
