"""Of a curriculum whose words may not be copied, only the codes are written.

The National Core Arts Standards are all rights reserved. Their codes may be named; their sentences
may not travel in a bank that others copy and change.

Bad:
    says: "DA:Cr1.1.4a: find ideas for dances in many things seen and heard"
Good:
    says: "DA:Cr1.1.4"
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = (
    "National Core Arts Standards, 2015, rights administered by SEADAE: all rights reserved; "
    "written permission for works and electronic tools"
)

_CODE = (
    r"(?:(?:pk|k|[1-8]|hs|i{1,3})\.)?DA:(?:Cr|Pr|Re|Cn)\d{1,2}(?:\.\d)?[a-c]?"
    r"(?:\.(?:Pk|K|[1-8]|I{1,3}))?\.?[a-c]?"
)
_CODES = re.compile(_CODE, re.IGNORECASE)
_NAMED = re.compile(
    r"(?:US |U\.S\. )?National (?:Core Arts|Coalition for Core Arts) Standards|NCAS", re.IGNORECASE
)
_LITTLE = re.compile(r"\b(?:and|or|to|code|codes|standard|standards|dance|see|grade|anchor|\d+)\b")
_QUOTED = re.compile(_CODE + r"[^\n\"“]{0,20}[\"“][^\"”\n]{20,}", re.IGNORECASE)
_FEW_WORDS = 3


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each curriculum line, and each note, with sentences beside the codes."""
    for n, link in enumerate(unit.curriculum):
        if not (_CODES.search(link.says) or _NAMED.search(link.says + link.stage)):
            continue
        bare = _NAMED.sub(" ", _CODES.sub(" ", link.says))
        words = re.findall(r"[a-z]{2,}", _LITTLE.sub(" ", bare.lower()))
        if len(words) <= _FEW_WORDS:
            continue
        yield Finding(
            unit.file,
            ("curriculum", n, "says"),
            f"`says` holds {len(words)} words of the National Core Arts Standards, whose text is "
            "all rights reserved",
            "write the codes alone, such as DA:Cr1.1.4, and say it in your own words in `met_by`",
        )
    for file, notes in (
        (unit.file, unit.notes),
        *((lesson.file, lesson.notes) for lesson in unit.lessons),
    ):
        if "DA:" in notes and (found := _QUOTED.search(notes)):
            code = _CODES.search(found.group())
            yield Finding(
                file,
                ("notes", notes[: found.start()].count("\n")),
                f"the notes quote the text of `{code.group() if code else 'DA:'}`, which is all "
                "rights reserved",
                "keep the code and say it in your own words",
            )
