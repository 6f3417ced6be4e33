"""A style as it is published: the same rules without what only its authors read."""

from __future__ import annotations

import re

_COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
_INDENT = re.compile(r"\n\s*")
_LINE_AFTER = re.compile(r"(?<=[;{},])\n")
_SPACE_AFTER = re.compile(r'([;:{,]) (?!")')


def plain_style(text: str) -> str:
    """The style without comments, indents and the spaces after marks that divide.

    No text in it holds such a mark with a space and another letter after it.
    """
    plain = _INDENT.sub("\n", _COMMENT.sub("", text)).strip()
    plain = _LINE_AFTER.sub("", plain).replace(" {", "{").replace("; }", "}").replace(";}", "}")
    return _SPACE_AFTER.sub(r"\1", plain) + "\n"
