"""Before a loud bang, or before the lights go out, the class is told that it is coming.

A bang or a dark hall frightens some pupils badly, and others a little. Told first, with a way to
step aside, they can enjoy it. A warning in a later lesson, or of what comes in another lesson, is
none.

Bad:
    cue: A loud crash of the cymbal
Good:
    cue: A loud crash of the cymbal, and in `safety`: Tell the class that a crash is coming.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import islice

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_care import SUDDEN, SUDDEN_WORDS, WARNED
from build_tools.views.written.unit_text import DOING, UnitText, unit_text

GRADE: Grade = "question"
SOURCE = "common practice, no source"
_KINDS = DOING | {"sound", "cue", "ends_on", "show", "rules", "start", "classroom_first"}
_LESSON = re.compile(r"\blesson (\d+)")
_SENTENCE = re.compile(r"[^.!?\n]+")
_WARNS = frozenset({"content_note", "safety", "say", "task", "classroom_first", "notes", "show"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first sudden sound or dark, if no line up to there warns of it."""
    text = unit_text(unit)
    if text.words.isdisjoint(SUDDEN_WORDS):
        return
    numbers = (None, *(lesson.number for lesson in unit.lessons))
    for at, ((file, fields), lowers) in enumerate(zip(text.documents, text.lowers, strict=True)):
        for one, lower in zip(fields, lowers, strict=True):
            if one.kind not in _KINDS or not (said := SUDDEN.asked(lower)):
                continue
            if " as if " in lower or " like " in lower:
                continue
            if not _warned(text, at, numbers[at]):
                yield Finding(
                    file,
                    one.path,
                    f'`{one.kind}` has "{said}", and nothing up to there warns the class of it',
                    "add a line under `safety`: tell the class it is coming; anyone may step aside",
                )
            return


def _warned(text: UnitText, at: int, number: int | None) -> bool:
    """Whether a line warns of what comes in the document with the index `at`.

    What is in the unit's own document may come in any lesson, so that a warning in any will do.
    """
    documents = zip(text.documents, text.lowers, strict=True)
    return any(
        one.kind in _WARNS and WARNED.in_it(lower) and _of_this_lesson(lower, number)
        for (_, fields), lowers in islice(documents, at + 1 if at else None)
        for one, lower in zip(fields, lowers, strict=True)
    )


def _of_this_lesson(lower: str, number: int | None) -> bool:
    """Whether a sentence that warns is of the lesson with this number, or names no lesson."""
    for sentence in _SENTENCE.findall(lower):
        named = {int(said) for said in _LESSON.findall(sentence)}
        if WARNED.in_it(sentence) and (number is None or not named or number in named):
            return True
    return False
