"""Words that have no place in finished work: notes of things undone, tests passed over, places
that only one machine knows. They are put together here so that this file holds none of them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.support.banks import ROOT

PARTS = [
    ("TO", "DO"),
    ("FIX", "ME"),
    ("XX", "X"),
    ("Not", "Implemented"),
    ("tran", "script"),
    ("C", "EO"),
    ("pytest.", "skip"),
    ("skip", "if"),
    ("x", "fail"),
    ("import", "orskip"),
    ("unittest.", "skip"),
    ("py", "pi."),
    ("npm", "js"),
    ("deb.", "debian"),
    ("files.python", "hosted"),
    ("/wo", "rk/"),
    ("/ro", "ot/"),
    ("trade", ".md"),
]
WORDS = [a + b for a, b in PARTS]
PATTERN = re.compile("|".join(rf"(?<![A-Za-z]){re.escape(word)}" for word in WORDS))
PASSED_OVER = {"node_modules", "site", "__pycache__", "benchmarks-out"}
KEPT = {".ci", ".gitignore", ".gitattributes", ".editorconfig"}
BINARY = {".woff2", ".png", ".jpg", ".webp", ".heic", ".ico", ".pdf", ".mid", ".mp3"}


def files(folder: Path = ROOT) -> Iterator[Path]:
    """Every text file of the project, without what is made or fetched."""
    for entry in sorted(folder.iterdir()):
        hidden = entry.name.startswith(".") and entry.name not in KEPT
        if hidden or entry.name in PASSED_OVER or entry.name.endswith(".egg-info"):
            continue
        if entry.is_dir():
            yield from files(entry)
        elif entry.suffix not in BINARY:
            yield entry


def found_in(text: str) -> list[tuple[int, str]]:
    """The lines, from 1, that hold such a word, and the word."""
    # few texts have the letters of one at all, and to look for letters is soon done
    if not any(word in text for word in WORDS):
        return []
    return [
        (number, hit.group())
        for number, line in enumerate(text.splitlines(), start=1)
        for hit in PATTERN.finditer(line)
    ]


def test_no_file_holds_one() -> None:
    seen = 0
    held = {}
    for file in files():
        seen += 1
        if found := found_in(file.read_text(encoding="utf-8")):
            held[file.relative_to(ROOT).as_posix()] = found
    assert held == {}
    assert seen > 150


def test_no_name_of_a_file_holds_one() -> None:
    assert [file for file in files() if PATTERN.search(file.relative_to(ROOT).as_posix())] == []


@pytest.mark.parametrize("word", WORDS)
def test_the_search_finds_each(word: str) -> None:
    assert found_in(f"fine\n# {word} later\n") == [(2, word)]
