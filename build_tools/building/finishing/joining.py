"""Scripts joined into one file."""

from __future__ import annotations

import re
from collections.abc import Iterable

import minify_html

# The library keeps what a script begins with, as a licence often stands there.
_REMARKS_AT_THE_START = re.compile(r"\A\s*(?://.*\n\s*)*")
_BEFORE, _AFTER = "<script>", "</script>"


def joined(scripts: Iterable[str]) -> str:
    """The classic scripts one after the other, a line each, with no remarks and no idle spaces.

    Each is whole in itself: it ends its last statement and shares no name of its own.
    """
    return "".join(f"{_short(script)}\n" for script in scripts)


def _short(script: str) -> str:
    """The same script in fewer letters; the library takes scripts only as parts of a page."""
    script = _REMARKS_AT_THE_START.sub("", script)
    made = minify_html.minify(f"{_BEFORE}{script}{_AFTER}", minify_js=True)
    return made.removeprefix(_BEFORE).removesuffix(_AFTER)
