"""Whether a unit says that it is a draft, also where its file cannot be read as it should be."""

from __future__ import annotations

import codecs
import re

_FENCE = "---"
_DRAFT = re.compile(r"draft[ \t]*:")


def says_draft(raw: bytes) -> bool:
    """Whether the fields at the top of a unit.md hold one line `draft: true` and no other `draft`.

    Only lines that start at the margin count: there no text or list can go on in sound fields.
    """
    answers = []
    for number, line in enumerate(_roughly(raw).splitlines()):
        if number and line.rstrip() == _FENCE:
            break
        if found := _DRAFT.match(line):
            answers.append(line[found.end() :].partition("#")[0].strip(" \t"))
    return answers == ["true"]


def _roughly(raw: bytes) -> str:
    """The text as well as it can be had; odd bytes make no `draft: true` that is not there."""
    for mark, coding in ((codecs.BOM_UTF16_LE, "utf-16"), (codecs.BOM_UTF16_BE, "utf-16")):
        if raw.startswith(mark):
            return raw.decode(coding, "replace")
    return raw.decode("utf-8-sig", "replace")
