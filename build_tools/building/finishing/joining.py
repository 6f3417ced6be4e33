"""Scripts joined into one file."""

from __future__ import annotations

import re
from collections.abc import Iterable

_INDENT_AND_COMMENT = re.compile(r"^[ \t]*(//.*\n?)?", re.MULTILINE)


def joined(scripts: Iterable[str]) -> str:
    """The classic scripts one after the other, without comment lines and indents.

    Each is whole in itself: it ends its last statement, shares no name of its own, and has no
    text that goes over lines.
    """
    return "".join(f"{_INDENT_AND_COMMENT.sub('', script).strip()}\n" for script in scripts)
