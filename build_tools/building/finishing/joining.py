"""Scripts joined into one file."""

from __future__ import annotations

import re
from collections.abc import Iterable

# after the end of a piece of code, and with no quote in it: so never within a text
_COMMENT_AFTER = re.compile(r"(?<=[;{},]) //[^\n'\"`]*$", re.MULTILINE)
_EMPTY_LINES = re.compile(r"\n{2,}")
_INDENT_AND_COMMENT = re.compile(r"^[ \t]*(//.*\n?)?", re.MULTILINE)


def joined(scripts: Iterable[str]) -> str:
    """The classic scripts one after the other, without comments, empty lines and indents.

    Each is whole in itself: it ends its last statement, shares no name of its own, and has no
    text that goes over lines.
    """
    bare = (_COMMENT_AFTER.sub("", script) for script in scripts)
    plain = (_INDENT_AND_COMMENT.sub("", script).strip() for script in bare)
    return "".join(f"{_EMPTY_LINES.sub(chr(10), script)}\n" for script in plain)
