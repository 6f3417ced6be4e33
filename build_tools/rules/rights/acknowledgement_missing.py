"""Words quoted from a curriculum under the Open Government Licence are acknowledged.

The curricula of England and Wales may be copied by anybody who says where the words are from and
under which licence. A unit goes from school to school, and its acknowledgement has to go with it.

Bad:
    curriculum: [{nation: England, says: '"perform dances using a range of movement patterns"', …}]
    notes: The class makes one dance.
Good:
    curriculum: [{nation: England, says: '"perform dances using a range of movement patterns"', …}]
    notes: Contains public sector information licensed under the Open Government Licence v3.0.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = (
    "The National Archives, Open Government Licence v3.0: the source is acknowledged, and a link "
    "to the licence is given where possible"
)

_NATIONS = ("England", "Wales")
_QUOTED = re.compile(r"[\"“]([^\"“”]+)[\"”]")
_FEWEST = 4
"""So many words in a row are a quotation; fewer are a name."""
_LICENCE = re.compile(r"\bopen government licence\b|\bOGL\b|\btrwydded llywodraeth agored\b", re.I)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first passage quoted, where nothing in the unit acknowledges it."""
    texts = (unit.notes, unit.credit or "", *(lesson.notes for lesson in unit.lessons))
    for n, link in enumerate(unit.curriculum):
        if any(_LICENCE.search(text) for text in (*texts, link.says)):
            continue
        for quoted in _QUOTED.findall(link.says):
            number = len(quoted.split())
            if link.nation not in _NATIONS or number < _FEWEST:
                continue
            yield Finding(
                unit.file,
                ("curriculum", n, "says"),
                f"{number} words of {link.nation}'s curriculum are quoted, and nothing in the "
                "unit names the licence that they may be copied under",
                "write into the notes: Contains public sector information licensed under the "
                "Open Government Licence v3.0",
            )
            return
