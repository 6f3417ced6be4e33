"""A problem as the preview's pages show it: with the words that stand at its place."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import islice
from pathlib import Path
from typing import Any

from build_tools.problem import FieldPath, Problem
from build_tools.source.file_lines import reading_of
from build_tools.source.front_matter import Document, kind_of_file, read_markdown

MOST_SHOWN = 200
_BEFORE = re.compile(r"\s*(?:- )?(?:[\w-]+: )?[\"'\[]?")


def shown(content: Path, problems: Sequence[Problem]) -> Iterator[dict[str, Any]]:
    """The first problems as data, each with the field that its line is of, and the line's words.

    Notes of files that all units share are left out: nobody who writes a unit can mend those.
    """
    lines: dict[str, list[str]] = {}
    fields: dict[str, dict[int, FieldPath]] = {}
    told = (one for one in problems if one.severity != "note" or one.file.startswith("units/"))
    for problem in islice(told, MOST_SHOWN):
        if problem.file not in lines:
            lines[problem.file] = _lines(content / problem.file)
            fields[problem.file] = _fields(content, problem.file)
        yield {
            "file": problem.file,
            "line": problem.line,
            "grade": problem.severity,
            "message": problem.message,
            "help": problem.help,
            "path": list(fields[problem.file].get(problem.line, ())),
            "words": _words(lines[problem.file], problem.line),
        }


def _fields(content: Path, file: str) -> dict[int, FieldPath]:
    """The innermost field on each line of a unit's file; nothing where it cannot be read."""
    if kind_of_file(file) not in ("unit", "lesson"):
        return {}
    try:
        document = read_markdown(file, (content / file).read_bytes())
    except OSError:
        return {}
    places = reading_of(document).places if isinstance(document, Document) else {}
    found: dict[int, FieldPath] = {}
    for path, (line, _) in places.items():
        if len(path) >= len(found.get(line, ())):
            found[line] = path
    return found


def _lines(path: Path) -> list[str]:
    try:
        return path.read_text(encoding="utf-8", errors="replace").splitlines()
    except OSError:
        return []


def _words(lines: Sequence[str], number: int) -> str:
    line = lines[number - 1] if number <= len(lines) else ""
    start = _BEFORE.match(line)
    return line[start.end() if start else 0 :].strip(" \"']")
