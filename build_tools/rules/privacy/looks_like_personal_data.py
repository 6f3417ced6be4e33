"""A unit holds no pupil's name, no address and no number by which a person can be found.

Units travel from school to school and stay for years. What is about one child or one adult stays
in the school. Makers and publishers are named only in the fields meant for them.

Bad:
    with: Two Year 4 classes; ask office@school.example
Good:
    with: Two Year 4 classes
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.word_lists import word_list
from build_tools.views.written.unit_text import UnitText, named, unit_text

GRADE: Grade = "question"
SOURCE = "UK General Data Protection Regulation, article 5(1)(c): data minimisation"

_EMAIL = re.compile(r"[\w.+-]+@[\w-]+(?:\.[\w-]+)+")
_PHONE = re.compile(r"(?<![\w.])(?:\+44[ -]?\(?0?\)?|\(?0)\d(?:[ ()-]{0,2}\d){8,9}(?![\w.]?\d)")
_PUPIL_NUMBER = re.compile(r"(?<!\w)[A-Z]\d{11}[0-9A-Z](?!\w)")
_PUPIL = re.compile(
    r"(?:upils?|hild(?:ren)?|tudents?|oys?|irls?),?"
    r"(?: (?:called|named|is|was|like|such as))? "
    r"(?P<name>[A-Z][a-z]+ (?:[A-Z]\. ?)?[A-Z][a-z'’-]+)"
)
_NO_NAMES = word_list(
    "Year Years Key Lesson Part Section Class Reception Primary Secondary Early First Second Third "
    "Fourth Foundation Special National Northern England Scotland Wales North South East West "
    "Ones Twos Partner Group Row Dance The In At On And"
)
_UPN_LENGTH = 13


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field that holds something that points to one person."""
    text = unit_text(unit)
    patterns = list(_worth_trying(text))
    if not patterns:
        return
    for file, fields in text.documents:
        for one in fields:
            for what, pattern in patterns:
                found = pattern.search(one.text)
                if found is None or _no_name(found):
                    continue
                where = (
                    f"`{one.kind}` holds"
                    if one.path
                    else f"`{named(file)}`, below its fields, holds"
                )
                yield Finding(
                    file,
                    one.path,
                    f"{where} what looks like {what}",
                    "write `a pupil` in its place: units are passed on to others"
                    if pattern is _PUPIL
                    else "take it out: units are passed on to others",
                )
                break


def _worth_trying(text: UnitText) -> Iterator[tuple[str, re.Pattern[str]]]:
    """The patterns that this text could fit; the rest are not looked for field by field."""
    whole = text.whole
    if "@" in whole:
        yield "an e-mail address", _EMAIL
    if "+44" in whole or any(w[0] == "0" and len(w) > 2 and w.isdigit() for w in text.words):
        yield "a telephone number", _PHONE
    if any(len(word) == _UPN_LENGTH and word[1:12].isdigit() for word in text.words):
        yield "a unique pupil number", _PUPIL_NUMBER
    if any(_PUPIL.match(whole, start) for start in _starts(whole)):
        yield "a pupil's name", _PUPIL


def _starts(whole: str) -> Iterator[int]:
    """Where a word for a pupil stands: looking for these words alone is soon done."""
    for word in ("upil", "hild", "tudent", "oy", "irl"):
        start = whole.find(word)
        while start >= 0:
            yield start
            start = whole.find(word, start + 1)


def _no_name(found: re.Match[str]) -> bool:
    name = found.groupdict().get("name")
    return bool(name) and not _NO_NAMES.isdisjoint(str(name).split())
