"""Whatever is typed: reading ends, soon, and every word is in the data or on a line told of."""

from __future__ import annotations

import random
import time
from pathlib import Path

import pytest

from build_tools.shapes.schemas import Kind
from build_tools.source.front_matter_split import Split, split
from tests.mutations.mutating import mutated
from tests.source.typed.slipping import slipped
from tests.source.typed.words_kept import lost_words
from tests.support.banks import CONTENT, ROOT

FEW, MANY = 200, 50_000
SEED = 20_261_129
LONGEST_SECONDS = 5.0


def _files() -> list[tuple[Kind, str]]:
    folders = (CONTENT / "units", ROOT / "tests" / "rules" / "base" / "units")
    paths = [path for folder in folders for path in sorted(folder.glob("*/*.md"))]
    return [("unit" if p.name == "unit.md" else "lesson", _fields(p)) for p in paths]


def _fields(path: Path) -> str:
    halves = split(path.read_text(encoding="utf-8"))
    assert isinstance(halves, Split)
    return halves.fields


def test_no_word_is_lost_whatever_is_typed(thorough: bool) -> None:
    files = _files()
    others = [text.encode() for _, text in files]
    choose = random.Random(SEED)
    for number in range(MANY if thorough else FEW):
        kind, text = files[number % len(files)]
        change = slipped if number % 2 else _damaged
        typed = change(text, others, choose)
        start = time.perf_counter()
        lost = lost_words(typed, kind)
        assert time.perf_counter() - start < LONGEST_SECONDS, number
        assert not lost, (number, lost)


def _damaged(text: str, others: list[bytes], choose: random.Random) -> str:
    raw = mutated(text.encode(), others, choose)
    return raw.decode("utf-8", "replace").replace("\r\n", "\n").replace("\r", "\n")


@pytest.mark.parametrize(
    "typed",
    [
        "Éook_for: Four who #do the same verb",
        "asks:\n  - question: What changed? # a remark\n",
        "ask: a # one\nask: b # two\nask: c # three",
        "summary: >- # a remark\n  Words\n  and more",
        "sections:\n  B:\n    groups: {siZe: 2, roles: {hands: [1]}}",
    ],
    ids=[
        "a slip in the name",
        "below a name not known",
        "a name again",
        "a folded text",
        "a name in braces",
    ],
)
def test_what_was_once_lost_is_kept(typed: str) -> None:
    """Found by 50,000 mutated files."""
    for kind in ("unit", "lesson"):
        assert not lost_words(typed, kind)
