"""The notes below a file's fields, changed as a whole; its fields stay as they are."""

from __future__ import annotations

from build_tools.problem import Fault
from build_tools.source.file_lines import SAYS_ELSE, EditRefused, lines_of, to_change
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.front_matter_split import split
from build_tools.source.item_edit import mark_of
from build_tools.source.text import read_text

MOST_NOTES = 60_000
"""Letters; the longest notes of a published unit have a fifth of it."""


def notes_in(raw: bytes) -> str | None:
    """The notes of a file as they are typed; None where it has no fields to stand below."""
    text = read_text(raw)
    halves = split(text) if isinstance(text, str) else text
    return None if isinstance(halves, Fault) else halves.body


def with_notes(file: str, raw: bytes, old: str, new: str) -> bytes | EditRefused:
    """The bytes of the file with the notes `new`, where those with the mark `old` stand now."""
    document = to_change(file, raw)
    if isinstance(document, EditRefused):
        return document
    if mark_of(document.body) != old:
        return SAYS_ELSE
    whole = lines_of(raw)
    fresh = new.replace("\r\n", "\n").rstrip().split("\n")
    lines = [*whole.lines[: document.body_line - 1], *(line.rstrip("\r") for line in fresh), ""]
    made = whole.bytes_of(lines)
    again = read_markdown(file, made)
    if isinstance(again, Document):
        return made
    return EditRefused(f"nothing was changed: {again[0].message}. To mend it: {again[0].help}")
