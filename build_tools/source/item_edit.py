"""A part of a list moved, added or taken away, by whole lines: its remarks go with it."""

from __future__ import annotations

import copy
import hashlib
import json
from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import Any, Literal

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
from build_tools.source.typed.what_was_read import Reading

_MARKS = " \t\u00a0-*•–"
"""What may stand before a part of a list on its line."""
Way = Literal["up", "down", "again", "away"]
"""Where a part goes: before the one above it, after the one below it, a second time, or nowhere."""


def mark_of(part: Any) -> str:
    """A few letters that another part would not have."""
    return hashlib.sha256(json.dumps(part, default=str).encode()).hexdigest()[:16]


def lists_in(file: str, raw: bytes) -> list[tuple[FieldPath, dict[int, Any]]]:
    """Each list whose parts can be moved: its path, and its parts by their numbers from 0."""
    document = read_markdown(file, raw)
    if not isinstance(document, Document):
        return []
    made = reading_of(document)
    lines = lines_of(raw).lines
    found = []
    for path, held in _lists(made.data, ()):
        first = 1 if _is_headed(document, path) else 0
        parts = {n: part for n, part in enumerate(held) if n >= first}
        if parts and blocks_of(made, lines, path, len(held)) is not None:
            found.append((path, parts))
    return found


def with_item(file: str, raw: bytes, path: FieldPath, old: str, way: Way) -> bytes | EditRefused:
    """The bytes of the file with the part at `path`, whose mark is `old`, gone its `way`."""
    document = to_change(file, raw)
    if isinstance(document, EditRefused):
        return document
    made = reading_of(document)
    around, number = path[:-1], path[-1]
    held = at(made.data, around)
    if not isinstance(held, list) or not isinstance(number, int) or not 0 <= number < len(held):
        return SAYS_ELSE
    if mark_of(held[number]) != old:
        return SAYS_ELSE
    first = 1 if _is_headed(document, around) else 0
    if number < first or (way == "up" and number == first):
        return EditRefused("it is the first already")
    if way == "down" and number == len(held) - 1:
        return EditRefused("it is the last already")
    if way == "away" and len(held) == first + 1:
        return EditRefused("it is the only one; change it, or take its list out of the file")
    whole = lines_of(raw)
    blocks = blocks_of(made, whole.lines, around, len(held))
    if blocks is None:
        return IN_BRACKETS
    start, ends = blocks[0][0], blocks[-1][1]
    texts = [list(whole.lines[a:b]) for a, b in blocks]
    fresh = whole.bytes_of(
        [
            *whole.lines[:start],
            *(line for block in WAYS[way](texts, number) for line in block),
            *whole.lines[ends:],
        ]
    )
    wanted = copy.deepcopy(made.data)
    at(wanted, around)[:] = WAYS[way](copy.deepcopy(held), number)
    refused = "that cannot be done here by whole lines; change it in the file"
    return as_wanted(file, fresh, wanted, refused)


def _moved(held: list[Any], number: int, to: int) -> list[Any]:
    held[number], held[to] = held[to], held[number]
    return held


WAYS: dict[Way, Callable[[list[Any], int], list[Any]]] = {
    "up": lambda held, n: _moved(held, n, n - 1),
    "down": lambda held, n: _moved(held, n, n + 1),
    "again": lambda held, n: [*held[: n + 1], copy.deepcopy(held[n]), *held[n + 1 :]],
    "away": lambda held, n: [*held[:n], *held[n + 1 :]],
}


def _lists(data: Any, path: FieldPath) -> list[tuple[FieldPath, list[Any]]]:
    found: list[tuple[FieldPath, list[Any]]] = []
    if isinstance(data, dict):
        for name, value in data.items():
            found += _lists(value, (*path, name))
    elif isinstance(data, list):
        found.append((path, data))
        for number, value in enumerate(data):
            found += _lists(value, (*path, number))
    return found


def blocks_of(
    made: Reading, lines: Sequence[str], path: FieldPath, many: int
) -> list[tuple[int, int]] | None:
    """The lines of each of the parts, from 0, and the line behind each.

    Remarks and empty lines above a part are among its own. None where parts share lines.
    """
    found = [made.places[at] for at in ((*path, n) for n in range(many)) if at in made.places]
    starts = [line - 1 for line, _ in found]
    if len(starts) < many or any(a >= b for a, b in pairwise(starts)):
        return None
    if any(lines[line - 1][: column - 1].strip(_MARKS) for line, column in found):
        return None
    size = len(path)
    after = [p[0] - 1 for at, p in made.places.items() if at[:size] != path]
    end = min((line for line in after if line > starts[-1]), default=_end_of_fields(lines))
    edges = [*starts, end]
    for n, edge in enumerate(edges):
        while edge > (edges[n - 1] + 1 if n else 1) and _is_remark(lines[edge - 1]):
            edge -= 1
        edges[n] = edge
    return list(pairwise(edges))


def _end_of_fields(lines: Sequence[str]) -> int:
    return next((n for n, one in enumerate(lines) if n and one.rstrip() == "---"), len(lines))


def _is_remark(line: str) -> bool:
    return not line.strip() or line.lstrip().startswith("#")


def _is_headed(document: Document, path: FieldPath) -> bool:
    return len(path) == 3 and path[0] == "motifs" and path[1] in document.headed
