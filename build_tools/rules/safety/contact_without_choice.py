"""Wherever pupils may touch, there is a way to dance it without touching.

Some pupils do not want to be touched, some are not to be, and nobody has to say why. A version
without contact, said where the contact is, lets everyone stay in the dance. It is looked for in
the step or the part of the dance that has the contact, and in the lesson's `safety` and under
`partners` of its `change`, where these speak of touching; where all are told to touch, in the same
field.

Bad:
    task: Hold hands with your partner and lean back.
Good:
    task: Hold hands with your partner, or a scarf between you, and lean back a little.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.reading import read
from build_tools.sentences.touch import ABOUT_TOUCHING, TOUCH, touching, way_without
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.written.unit_text import DOING, Found, UnitText, unit_text

GRADE: Grade = "error"
READS = "en"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 8.26: safe technique for lifting and "
    "supporting only when appropriate; the way without contact: common practice, no source"
)
_IN_UNIT = frozenset({"idea", "rules", "start", "how", "does", "if_not", "as", "who", "place"})
_KINDS = DOING | _IN_UNIT
_ALL = re.compile(
    r"\b(?:all|everyone|everybody|must|has to|have to) (?:of you )?"
    r"(?:hold|take|link|join|grip|grab|clasp|catch|lean|touch)\b",
    re.IGNORECASE,
)
"""Everybody is told to: what is said of a choice elsewhere is taken back."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first contact in each document that has no way without."""
    text = unit_text(unit)
    done: set[int] = set()
    for found in text.saying(TOUCH, _KINDS):
        if found.document in done or not _asks(found):
            continue
        said = touching(found.field.text)
        if said is None:
            continue
        told_all = _ALL.search(read(found.field.text).sentence_of(said.words[0]))
        near = (found.field.text,) if told_all else _near(text, found)
        if any(way_without(one) for one in near):
            continue
        done.add(found.document)
        one = found.field
        where = f"step {int(one.path[1]) + 1}" if one.path[0] == "steps" else f"`{one.kind}`"
        yield Finding(
            found.file,
            one.path,
            f'{where} asks for contact ("{said.text}"), and nothing with it says how to dance it '
            "without touching",
            "add a way without, such as: or a hand's width apart, not touching; if nobody touches, "
            "say whose it is, such as: from your own foot to your other foot",
        )


def _asks(found: Found) -> bool:
    one = found.field
    if found.document:
        return one.kind in DOING and one.path[0] == "steps"
    return one.kind in _IN_UNIT and one.path[0] != "stimulus"


def _near(text: UnitText, found: Found) -> Iterator[str]:
    """The fields of the same step or part, and what the lesson says of touching as a whole."""
    for other in text.documents[found.document][1]:
        if other.path[:2] == found.field.path[:2] or _of_touching(other):
            yield other.text


def _of_touching(one: FieldText) -> bool:
    for_all = one.kind == "safety" or one.path == ("change", "partners")
    return for_all and ABOUT_TOUCHING.mentioned(one.text) is not None
