"""Quotation marks round a whole value, told from those that are part of a sentence."""

from __future__ import annotations

from typing import Any

from build_tools.problem import Fault
from build_tools.source.yaml_reader import read_yaml

_CURLY = {"“": "”", "‘": "’", "„": "“", "«": "»"}


def quoted_end(text: str, start: int) -> int:
    """Where the quotation that opens at `start` has closed, as YAML has it; 0 where it does not."""
    mark, at = text[start], start + 1
    while (at := text.find(mark, at)) >= 0:
        if mark == '"' and _escaped(text, at):
            at += 1
        elif mark == "'" and text[at + 1 : at + 2] == "'":
            at += 2
        else:
            return at + 1
    return 0


def _escaped(text: str, at: int) -> bool:
    before = at
    while text[before - 1] == "\\":
        before -= 1
    return (at - before) % 2 == 1


def unquoted(text: str) -> str | None:
    """The words between the marks of a quotation of YAML; None where it is none."""
    found = read_yaml(text)
    if isinstance(found, Fault) or not isinstance(found[0], str):
        return None
    return found[0]


def within_curly(text: str) -> str | None:
    """The words of a text that stands in curly marks as a whole; None where it does not."""
    closer = _CURLY.get(text[:1])
    if closer is None or len(text) < 2 or text[-1] != closer:
        return None
    inner = text[1:-1]
    apostrophe = closer == "’"
    held = text[0] in inner or (closer in inner and not apostrophe)
    return None if held else inner


def stray_mark(text: str) -> str | None:
    """The words after a quotation mark that opens a text and never closes."""
    if text[:1] == '"' and text.count('"') == 1 and len(text) > 1:
        return text[1:].strip()
    return None


def needs_marks(text: str) -> bool:
    """Whether YAML would read a bare `text` as something else than its letters."""
    found: Any = read_yaml(f"- {text}\n") if "\n" not in text else None
    if found is None or isinstance(found, Fault):
        return True
    data = found[0]
    return not (
        isinstance(data, list) and len(data) == 1 and data[0] == text and type(data[0]) is str
    )
