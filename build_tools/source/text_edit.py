"""One text of a file changed, and no other line of it."""

from __future__ import annotations

import copy
from collections.abc import Iterator, Sequence
from typing import Any

from build_tools.problem import FieldPath
from build_tools.source.file_lines import (
    IN_BRACKETS,
    SAYS_ELSE,
    EditRefused,
    as_wanted,
    at,
    lines_of,
    reading_of,
    to_change,
)
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.typed.canonical import text_lines
from build_tools.source.typed.what_was_read import Reading


def texts_in(file: str, raw: bytes) -> list[tuple[FieldPath, str]]:
    """Each text of the file that `with_text` can change, with where it is; none if unreadable."""
    document = read_markdown(file, raw)
    if not isinstance(document, Document):
        return []
    made = reading_of(document)
    return [(path, text) for path, text in _texts(made.data, ()) if path in made.texts]


def with_text(file: str, raw: bytes, path: FieldPath, old: str, new: str) -> bytes | EditRefused:
    """The bytes of the file with the text `new` at `path`, where `old` stands now.

    Line ends and everything but the lines of that text stay as they are.
    """
    document = to_change(file, raw)
    if isinstance(document, EditRefused):
        return document
    made = reading_of(document)
    if at(made.data, path) != old:
        return SAYS_ELSE
    if path not in made.texts:
        return IN_BRACKETS
    plain = " ".join(new.split())
    wanted = copy.deepcopy(made.data)
    at(wanted, path[:-1])[path[-1]] = plain
    whole = lines_of(raw)
    fresh = whole.bytes_of(lines_with_text(whole.lines, made, path, plain))
    refused = "that text cannot be written there; change it in the file"
    return as_wanted(file, fresh, wanted, refused)


def lines_with_text(
    there: Sequence[str], made: Reading, path: FieldPath, new: str
) -> Sequence[str]:
    """The lines of the file with another text at `path`; its remark stays."""
    lines = list(there)
    first, before, last = made.texts[path]
    line = lines[first - 1]
    head = line[:before].rstrip()
    beside = made.beside.get(path, "")
    depth = (len(head) - len(head.lstrip())) // 2 + 1
    tail = f"  {beside}" if beside else ""
    lines[first - 1 : last] = text_lines(head, new, tail, depth, fold=last > first)
    return lines


def _texts(data: Any, path: FieldPath) -> Iterator[tuple[FieldPath, str]]:
    pairs: Any = ()
    if isinstance(data, dict):
        pairs = data.items()
    elif isinstance(data, list):
        pairs = enumerate(data)
    elif isinstance(data, str):
        yield path, data
    for name, value in pairs:
        yield from _texts(value, (*path, name))
