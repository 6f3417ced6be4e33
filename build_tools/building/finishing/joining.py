"""Scripts joined into one file."""

from __future__ import annotations

import re
from collections.abc import Iterable

_COMMENT_LINE = re.compile(r"^[ \t]*//.*\n?", re.MULTILINE)


def joined(scripts: Iterable[str]) -> str:
    """The classic scripts one after the other, without the lines that are comments alone.

    Each is whole in itself: it ends its last statement and shares no name of its own.
    """
    return "".join(f"{_COMMENT_LINE.sub('', script).strip()}\n" for script in scripts)
