"""A problem as the preview's pages show it: with the words that stand at its place."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from build_tools.problem import Problem

MOST_SHOWN = 200
_BEFORE = re.compile(r"\s*(?:- )?(?:[\w-]+: )?[\"'\[]?")


def shown(content: Path, problems: Sequence[Problem]) -> Iterator[dict[str, Any]]:
    """The first problems as data; `words` are those of the line, to be found on the page."""
    lines: dict[str, list[str]] = {}
    for problem in problems[:MOST_SHOWN]:
        if problem.file not in lines:
            lines[problem.file] = _lines(content / problem.file)
        yield {
            "file": problem.file,
            "line": problem.line,
            "grade": problem.severity,
            "message": problem.message,
            "help": problem.help,
            "words": _words(lines[problem.file], problem.line),
        }


def _lines(path: Path) -> list[str]:
    try:
        return path.read_text(encoding="utf-8", errors="replace").splitlines()
    except OSError:
        return []


def _words(lines: Sequence[str], number: int) -> str:
    line = lines[number - 1] if number <= len(lines) else ""
    start = _BEFORE.match(line)
    return line[start.end() if start else 0 :].strip(" \"']")
