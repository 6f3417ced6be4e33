"""A style as it is published: the same rules without what only its authors read."""

from __future__ import annotations

import re

_COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
_INDENT = re.compile(r"\n\s*")
_LINE_AFTER = re.compile(r"(?<=[;{},])\n")
_ROUND = re.compile(r" ([>~]) ")
_NOUGHT = re.compile(r"(?<![\w.])0(?=\.\d)")
_SPACE_AFTER = re.compile(r'([;:{,]) (?!")')


def plain_style(text: str) -> str:
    """The style without comments, indents, noughts before a point and spaces round marks.

    No text in it holds such a mark with a space and another letter after it, or such a nought.
    """
    plain = _INDENT.sub("\n", _COMMENT.sub("", text)).strip()
    plain = _LINE_AFTER.sub("", plain).replace(" {", "{").replace("; }", "}").replace(";}", "}")
    plain = _NOUGHT.sub("", _ROUND.sub(r"\1", plain))
    return _SPACE_AFTER.sub(r"\1", plain) + "\n"
