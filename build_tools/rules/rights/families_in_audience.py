"""Where families or others come to watch, the unit says to ask about licences first.

Dancing to music for the class is one thing; before parents it is a public performance, and so is
filming it. Which licences a school has, only the school knows.

Bad:
    task: Dance the whole for families.
Good:
    task: Dance the whole for families, and in the notes: Ask the school first about licences.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_rights import ASK_FIRST, AUDIENCE, AUDIENCE_WORDS
from build_tools.views.written.unit_text import named, unit_text

GRADE: Grade = "question"
SOURCE = (
    "Copyright, Designs and Patents Act 1988, section 34: an audience of teachers, pupils and "
    "others directly connected is not the public; a parent is not connected just by being one"
)
_KINDS = frozenset(
    {
        "summary",
        "focus",
        "pupils_make",
        "classroom_first",
        "does",
        "into",
        "say",
        "task",
        "looking_for",
        "seen",
        "finished",
        "not_dancing",
        "every_pupil",
        "going_further",
        "front",
        "met_by",
        "notes",
    }
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first audience of outsiders, if nothing in the unit asks first."""
    text = unit_text(unit)
    if text.words.isdisjoint(AUDIENCE_WORDS):
        return
    for (file, fields), lowers in zip(text.documents, text.lowers, strict=True):
        for one, lower in zip(fields, lowers, strict=True):
            if one.kind not in _KINDS or not (said := AUDIENCE.asked(lower)):
                continue
            if not any(ASK_FIRST.in_any(others) for others in text.lowers):
                where = (
                    f"`{one.kind}` has" if one.path else f"`{named(file)}`, below its fields, has"
                )
                yield Finding(
                    file,
                    one.path,
                    f'{where} others watching ("{said}"), and nothing in the unit says to ask '
                    "about licences",
                    "add to the notes: ask the school first about visitors, filming and music "
                    "licences",
                )
            return
