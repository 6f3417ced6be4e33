"""What may not stand in written text: raw HTML, pictures in notes, links that run something."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from build_tools.problem import Fault, FieldPath

_TAG = re.compile(r"<(?!(?:https?://|mailto:)[^\s<>]+>)[A-Za-z/!?][^\n]{0,30}")
_PICTURE = re.compile(r"!\[")
_LINK = re.compile(r"\](?:\(\s*<?\s*([^)\s]*)|:\s*<?\s*(\S*))")
"""A link, or the address of a link by name, which may stand on the next line or in a quotation."""
_SAFE_LINK = re.compile(r"(https?://|mailto:)[^\s\"'<>]+\Z|#[A-Za-z][\w-]*\Z")

MOST_NOTES = 20_000
"""Letters of the notes of one file: several times as many as any that are written to be read."""
MOST_LEVELS = 6
MOST_CELLS = 2_000
"""Of all tables in the notes of one file: rows times the columns of the widest row."""
_DEEP = re.compile(
    rf"[ \t]{{{4 * MOST_LEVELS + 1},}}\S"
    rf"|(?:[ \t]*(?:[-+*][ \t]|[0-9]{{1,9}}[.)][ \t]|>)){{{MOST_LEVELS + 1},}}"
)
"""A line set in by more than so many levels, or with more than so many marks of a level."""

_STARRED = re.compile(r"(?<![\w*])\*{1,3}(?=[^\s*])(?P<words>[^*\n]*[^\s*])\*{1,3}(?![\w*])")
_HTML_HELP = "write it in plain words or Markdown, and put spaces around a lone `<`"


def faults_in_fields(value: Any, path: FieldPath = ()) -> Iterator[tuple[FieldPath, str, str, str]]:
    """Yield (path, rule, message, help) for every text in `value` that holds raw HTML."""
    if isinstance(value, str):
        if found := _TAG.search(value):
            message = f"`{_short(found.group())}` is raw HTML, which is not read"
            yield path, "raw-html", message, _HTML_HELP
    elif isinstance(value, list):
        for index, item in enumerate(value):
            yield from faults_in_fields(item, (*path, index))
    elif isinstance(value, dict):
        for name, item in value.items():
            if found := _TAG.search(name):
                message = f"`{_short(found.group())}` in a name is raw HTML, which is not read"
                yield (*path, name), "raw-html", message, _HTML_HELP
            yield from faults_in_fields(item, (*path, name))


def starred_in(value: Any, path: FieldPath = ()) -> Iterator[tuple[FieldPath, str]]:
    """Yield (path, words) for every text in `value` with stars round words, as notes may have."""
    if isinstance(value, str):
        if "*" in value and (found := _STARRED.search(value)):
            yield path, found["words"]
    elif isinstance(value, list):
        for index, item in enumerate(value):
            yield from starred_in(item, (*path, index))
    elif isinstance(value, dict):
        for name, item in value.items():
            yield from starred_in(item, (*path, name))


def is_safe_address(address: str) -> bool:
    """Whether a link may lead there: the web, a mail address, or a heading of the same page."""
    return _SAFE_LINK.match(address) is not None


def faults_in_body(body: str, first_line: int) -> Iterator[Fault]:
    """Yield the faults of the notes below the fields, which start on `first_line`."""
    if len(body) > MOST_NOTES:
        yield Fault(
            "notes-too-long",
            first_line,
            1,
            f"the notes have {len(body):,} letters, and {MOST_NOTES:,} is the most that is read",
            "shorten them: what a lesson needs stands in its fields",
        )
        return
    for offset, line in enumerate(body.split("\n")):
        number = first_line + offset
        if tag := _TAG.search(line):
            message = f"`{_short(tag.group())}` is raw HTML, which is not read"
            yield Fault("raw-html", number, tag.start() + 1, message, _HTML_HELP)
        if picture := _PICTURE.search(line):
            yield Fault(
                "picture-in-notes",
                number,
                picture.start() + 1,
                "a picture stands in the notes, where it has no credit and no licence",
                "list it under `stimulus`, `items`, or under `pictures` in a lesson, with its "
                "credit, licence and text version",
            )
        if _DEEP.match(line):
            yield Fault(
                "notes-too-deep",
                number,
                1,
                f"lists and quotations stand in one another more than {MOST_LEVELS} deep here",
                "write it with fewer levels",
            )
    yield from _huge_tables(body, first_line)
    yield from _unsafe_links(body, first_line)


def _huge_tables(body: str, first_line: int) -> Iterator[Fault]:
    """A short row stands for as many cells as its table has columns, down to an empty line."""
    cells, columns, rows = 0, 0, 0
    for offset, line in enumerate([*body.split("\n"), ""]):
        if line.strip():
            columns, rows = max(columns, line.count("|") + 1), rows + 1
            continue
        cells += columns * rows if columns > 1 else 0
        if cells > MOST_CELLS:
            yield Fault(
                "notes-too-wide",
                first_line + offset - rows,
                1,
                f"the tables down to here have up to {cells:,} cells, more than {MOST_CELLS:,} "
                f"(this one {rows:,} rows, and {columns:,} columns in the widest)",
                "make the table smaller, or write it as a list",
            )
            return
        columns, rows = 0, 0


def _unsafe_links(body: str, first_line: int) -> Iterator[Fault]:
    line, start, counted = first_line, 0, 0
    for link in _LINK.finditer(body):
        line += body.count("\n", counted, link.start())
        start = max(start, body.rfind("\n", counted, link.start()) + 1)
        counted = link.start()
        address = (link.group(1) or link.group(2) or "").removesuffix(">")
        if not is_safe_address(address):
            yield Fault(
                "unsafe-link",
                line,
                link.start() - start + 1,
                f"the link to `{_short(address)}` is not a web address, a mail address or a "
                "heading of this page",
                "write the whole address, starting with https://, or leave the link out",
            )


def _short(text: str) -> str:
    return text if len(text) <= 24 else text[:23] + "…"
