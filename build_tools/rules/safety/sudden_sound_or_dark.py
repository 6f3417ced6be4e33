"""Before a loud bang, or before the lights go out, the class is told that it is coming.

A bang or a dark hall frightens some pupils badly, and others a little. Told first, with a way to
step aside, they can enjoy it. A warning in a later lesson, or of what comes in another lesson, is
none.

Bad:
    cue: A loud crash of the cymbal
Good:
    cue: A loud crash of the cymbal
    lesson 1: safety: [Tell the class that a crash is coming. Anyone may step aside.]
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import islice

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.reading import read
from build_tools.sentences.signals import ABOUT_SOUND_OR_DARK, SUDDEN, WARNED, sudden
from build_tools.views.written.unit_text import DOING, Found, UnitText, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = DOING | {"sound", "cue", "ends_on", "show", "rules", "start", "classroom_first"}
_LESSON = re.compile(r"\blesson (\d{1,3})")
_WARNS = frozenset(
    {"content_note", "safety", "say", "task", "you", "classroom_first", "notes", "show"}
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first sudden sound or dark, if no line up to there warns of it."""
    text = unit_text(unit)
    numbers = (None, *(lesson.number for lesson in unit.lessons))
    for found in text.saying(SUDDEN, _KINDS, meant=False):
        said = sudden(found.field.text)
        if said is None:
            continue
        if not _warned(text, found, numbers[found.document]):
            yield Finding(
                found.file,
                found.field.path,
                f'`{found.field.kind}` has "{said.text}", and nothing up to there warns the class '
                "of it",
                "add a line under `safety`: tell the class it is coming; anyone may step aside",
            )
        return


def _warned(text: UnitText, hazard: Found, number: int | None) -> bool:
    """Whether a line warns of what comes in this document, which is lesson `number` if any.

    What is in the unit's own document may come in any lesson, so that a warning in any will do. In
    another field, it has to be of sounds or the dark.
    """
    if WARNED.said(hazard.field.text):
        return True
    last = hazard.document
    for _, fields in islice(text.documents, last + 1 if last else None):
        for one in fields:
            if one.kind in _WARNS and _of_this_lesson(one.text, number):
                return True
    return False


def _of_this_lesson(text: str, number: int | None) -> bool:
    """Whether a sentence warns of a sound or the dark, in the lesson `number` or in none named.

    What is coming is named in the warning itself, or in the sentence before it or after it.
    """
    if not (WARNED.said(text) and ABOUT_SOUND_OR_DARK.mentioned(text)):
        return False
    sentences = read(text).sentences
    for n, sentence in enumerate(sentences):
        named = {int(said) for said in _LESSON.findall(sentence.lower())}
        around = sentences[max(0, n - 1) : n + 2]
        if (
            WARNED.said(sentence)
            and any(ABOUT_SOUND_OR_DARK.mentioned(one) for one in around)
            and (number is None or not named or number in named)
        ):
            return True
    return False
