"""Before a loud bang, or before the lights go out, the class is told that it is coming.

A bang or a dark hall frightens some pupils badly, and others a little. Told first, with a way to
step aside, they can enjoy it.

Bad:
    cue: A loud crash of the cymbal
Good:
    cue: A loud crash of the cymbal, and in `safety`: Tell the class that a crash is coming.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.unit_text import DOING, UnitText, unit_text
from build_tools.views.wording_care import SUDDEN, SUDDEN_WORDS, WARNED

GRADE: Grade = "question"
SOURCE = "common practice, no source"
_KINDS = DOING | {"sound", "cue", "ends_on", "show", "rules", "start", "classroom_first"}
_WARNS = frozenset({"content_note", "safety", "say", "task", "classroom_first", "notes", "show"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first sudden sound or dark, if no line in the unit warns of it."""
    text = unit_text(unit)
    if text.words.isdisjoint(SUDDEN_WORDS):
        return
    for (file, fields), lowers in zip(text.documents, text.lowers, strict=True):
        for one, lower in zip(fields, lowers, strict=True):
            if one.kind not in _KINDS or not (said := SUDDEN.asked(lower)):
                continue
            if " as if " in lower or " like " in lower:
                continue
            if not _warned(text):
                yield Finding(
                    file,
                    one.path,
                    f'`{one.kind}` has "{said}", and nothing in the unit warns the class of it',
                    "add a line under `safety`: tell the class it is coming; anyone may step aside",
                )
            return


def _warned(text: UnitText) -> bool:
    return any(
        one.kind in _WARNS and WARNED.in_it(lower)
        for (_, fields), lowers in zip(text.documents, text.lowers, strict=True)
        for one, lower in zip(fields, lowers, strict=True)
    )
