"""Long texts in lines, which YAML reads as one (YAML 1.2.2, 8.1.3)."""

from __future__ import annotations

import re
from collections.abc import Iterator


def can_fold(text: str) -> bool:
    """Whether a text comes back whole from lines below a greater-than sign."""
    return not re.search(r"[\n\t]|  |^ | \Z", text)


def folded(text: str, width: int) -> Iterator[str]:
    """The text in lines of at most `width` letters, where its words allow it."""
    line = ""
    for word in text.split(" "):
        if line and len(line) + 1 + len(word) > width:
            yield line
            line = word
        else:
            line = f"{line} {word}" if line else word
    yield line
