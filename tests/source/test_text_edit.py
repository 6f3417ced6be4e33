"""One text changed: its lines change, and not a letter of any other."""

from __future__ import annotations

import difflib
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.source.file_lines import EditRefused
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.text_edit import texts_in, with_text
from tests.support.banks import CONTENT, LOOKED_AT, ROOT

BASE = ROOT / "tests" / "rules" / "base" / "units" / "paper-boats"
LESSON = (BASE / "lesson-1.md").read_bytes()
TASK = ("steps", 2, "task")
WAS = "Float over a stone, hop and settle."


def changed_lines(before: bytes, after: bytes) -> list[str]:
    lines = difflib.ndiff(before.decode().splitlines(), after.decode().splitlines())
    return [line for line in lines if line[0] in "+-"]


def data(raw: bytes) -> dict[str, object]:
    read = read_markdown("lesson-1.md", raw)
    assert isinstance(read, Document)
    return dict(read.data)


EVERY = sorted((CONTENT / "units").glob("*/*.md"))


@pytest.mark.parametrize(
    "path",
    [
        pytest.param(
            path,
            marks=() if path.parent.name in LOOKED_AT else pytest.mark.thorough,
            id=f"{path.parent.name}/{path.name}",
        )
        for path in EVERY
    ],
)
def test_every_text_of_ours_can_be_changed_and_put_back(path: Path, thorough: bool) -> None:
    raw = path.read_bytes()
    found = texts_in(path.name, raw)
    assert len(found) > 20
    # each in turn takes long; every ninth meets all kinds of places, and so do files in turns
    turn = EVERY.index(path)
    for place, text in found[turn % 9 :: 9] if thorough else found[turn % 40 :: 40]:
        new = "Try card #1: it's “new”"
        made = with_text(path.name, raw, place, text, new)
        assert isinstance(made, bytes), (place, made)
        back = with_text(path.name, made, place, new, text)
        assert isinstance(back, bytes)
        read, again = (read_markdown(path.name, one) for one in (raw, back))
        assert isinstance(read, Document)
        assert isinstance(again, Document)
        assert again.data == read.data
        gone = [line for line in changed_lines(raw, made) if line[0] == "-"]
        assert len(gone) <= len(text) // 40 + 2


@given(st.text(st.characters(exclude_categories=["Cc", "Cs", "Zl", "Zp", "Cf", "Cn"]), min_size=1))
def test_whatever_is_typed_is_what_is_read(new: str) -> None:
    meant = " ".join(new.split())
    made = with_text("lesson-1.md", LESSON, TASK, WAS, new)
    if not meant or isinstance(made, EditRefused):
        assert not meant or "<" in meant
        return
    steps = data(made)["steps"]
    assert isinstance(steps, list)
    assert steps[2]["task"] == meant
    assert len(changed_lines(LESSON, made)) in (0, 2)


def test_line_ends_and_the_mark_at_the_start_stay() -> None:
    raw = b"\xef\xbb\xbf" + LESSON.replace(b"\n", b"\r\n")
    made = with_text("lesson-1.md", raw, TASK, WAS, "Hop.")
    assert isinstance(made, bytes)
    assert made == raw.replace(WAS.encode(), b"Hop.")


def test_what_was_saved_meanwhile_is_not_lost() -> None:
    saved = LESSON.replace(WAS.encode(), b"Another text by now.")
    made = with_text("lesson-1.md", saved, TASK, WAS, "Hop.")
    assert isinstance(made, EditRefused)
    assert made.conflict


def test_a_text_between_braces_is_left_to_the_file() -> None:
    raw = (BASE / "unit.md").read_bytes()
    path = ("sections", "A", "start", "place")
    made = with_text("unit.md", raw, path, "own space", "anywhere")
    assert isinstance(made, EditRefused)
    assert "tidy" in made.reason
