"""Times in a recording are told in the order in which they are heard.

"The one bell at 47, the three bells at 46": one of the two was mistyped, and a teacher who waits
for 47 has missed the sign.

Bad:
    notes: The tune begins after 2 seconds, the bell is at 47, the end at 46.
Good:
    notes: The tune begins after 2 seconds, the bell is at 37, the end at 46.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.reading import read
from build_tools.views.written.unit_text import place_of, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_AT = re.compile(
    r"\b(?:at|after|from) (?P<minutes>\d:)?(?P<seconds>\d{1,3})\b(?! (?:metres|steps|by))",
    re.IGNORECASE,
)
_TIMED = re.compile(r"seconds?\b|\d:\d\d", re.IGNORECASE)
_FEWEST = 3
"""Times in one sentence, from which on it tells what comes when."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first time of each text that comes after a later one."""
    text = unit_text(unit)
    for file, field in text.at(text.matching(_TIMED)):
        if len(_AT.findall(field.text)) < _FEWEST:
            continue
        for sentence in read(field.text).sentences:
            times = [(one.group(0), _seconds(one)) for one in _AT.finditer(sentence)]
            if len(times) < _FEWEST or _TIMED.search(sentence) is None:
                continue
            wrong = next(((a, b) for a, b in pairwise(times) if b[1] < a[1]), None)
            if wrong is not None:
                (before, _), (after, _) = wrong
                yield Finding(
                    file,
                    place_of(field, sentence),
                    f"`{field.kind}` has `{before}`, and then `{after}`, which is earlier",
                    "listen once more, and write the times in the order of the recording",
                )
                break


def _seconds(one: re.Match[str]) -> int:
    minutes = one.group("minutes")
    return (60 * int(minutes[:-1]) if minutes else 0) + int(one.group("seconds"))
