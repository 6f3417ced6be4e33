"""Whether a unit says that it is a draft, also where its file cannot be read as it should be."""

from __future__ import annotations

import codecs
import re

from build_tools.source.front_matter_split import is_fence

_DRAFT = re.compile(r"draft[ \t]*:", re.IGNORECASE)
_YES = {"true", "yes", "y"}


def says_draft(raw: bytes) -> bool:
    """Whether the fields at the top of a unit.md hold one line `draft: true` and no other `draft`.

    What the reader takes for true is true here: yes, and capitals.

    Only lines that start at the margin count: there no text or list can go on in sound fields.
    """
    answers = []
    lines = _roughly(raw).splitlines()
    opens = next((n for n, line in enumerate(lines) if line.strip()), 0)
    for line in lines[opens + 1 :]:
        if is_fence(line):
            break
        if found := _DRAFT.match(line):
            said = line[found.end() :].partition("#")[0]
            answers.append(said.strip(" \t\"'").casefold())
    return len(answers) == 1 and answers[0] in _YES


def _roughly(raw: bytes) -> str:
    """The text as well as it can be had; odd bytes make no `draft: true` that is not there."""
    for mark, coding in ((codecs.BOM_UTF16_LE, "utf-16"), (codecs.BOM_UTF16_BE, "utf-16")):
        if raw.startswith(mark):
            return raw.decode(coding, "replace")
    return raw.decode("utf-8-sig", "replace")
