"""Where families or others come to watch, the unit says to ask about licences first.

Dancing to music for the class is one thing; before parents it is a public performance, and so is
filming it. Which licences a school has, only the school knows. The line stands in the step, in the
lesson's `safety` or notes, or in the unit's notes, and speaks of the audience or its music.

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
from build_tools.sentences.rights import AUDIENCE, asks_about_licences, audience
from build_tools.views.written.unit_text import Found, UnitText, named, place_of, unit_text

GRADE: Grade = "question"
READS = "en"
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
        "you",
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
    for found in text.saying(AUDIENCE, _KINDS):
        said = audience(found.field.text)
        if said is None:
            continue
        if not any(asks_about_licences(near) for near in _near(text, found)):
            one = found.field
            where = (
                f"`{one.kind}` has" if one.path else f"`{named(found.file)}`, below its fields, has"
            )
            yield Finding(
                found.file,
                place_of(one, said.text),
                f'{where} others watching ("{said.text}"), and nothing with it says to ask about '
                "licences",
                "add to the step or the notes: ask the school first about visitors, filming and "
                "music licences",
            )
        return


def _near(text: UnitText, found: Found) -> Iterator[str]:
    """The fields of the same step, the lesson's safety, and the notes of lesson and unit."""
    for other in text.documents[found.document][1]:
        same_step = bool(found.field.path) and other.path[:2] == found.field.path[:2]
        if same_step or other.kind in ("safety", "notes", "classroom_first"):
            yield other.text
    yield from (one.text for one in text.documents[0][1] if one.kind == "notes")
