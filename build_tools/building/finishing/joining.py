"""Scripts joined into one file."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

import minify_html

# The library keeps remarks that stand before a script or a statement, as a licence may. None of our
# scripts has a text of several lines in which such a line would be a part of it; a test looks.
_LINES_OF_REMARKS = re.compile(r"^[ \t]*//.*\n", re.MULTILINE)
_BEFORE, _AFTER = "<script>", "</script>"


def joined(scripts: Iterable[str]) -> str:
    """The classic scripts one after the other, a line each, with no remarks and no idle spaces.

    Each is whole in itself: it ends its last statement and shares no name of its own.
    """
    return "".join(f"{_short(script)}\n" for script in scripts)


@lru_cache(maxsize=256)
def _short(script: str) -> str:
    """The same script in fewer letters; the library takes scripts only as parts of a page.

    Kept for the next build of a process that builds again and again.
    """
    script = _LINES_OF_REMARKS.sub("", script)
    made = minify_html.minify(f"{_BEFORE}{script.lstrip()}{_AFTER}", minify_js=True)
    return made.removeprefix(_BEFORE).removesuffix(_AFTER)
