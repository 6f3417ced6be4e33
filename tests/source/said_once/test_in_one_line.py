"""A short list in one line is read back as the list that it was, or it stays a list."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.shapes.shape import Shape
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.said_once.in_one_line import one_line, parts_of
from build_tools.source.tidy import Tidied, tidied
from tests.source.said_once.units import LESSON, with_lines

TEXT, NUMBER = Shape("text"), Shape("number", pattern="^[1-9][0-9]*( [1-9]/[1-9])?$")
CODE = Shape("code", pattern="^[a-z-]+$")
texts = st.text(st.characters(codec="utf-8", categories=("L", "P", "Zs")), min_size=1, max_size=20)


@given(st.lists(texts, max_size=5), st.sampled_from(["answers", "says", "from"]))
def test_texts(items: list[str], name: str) -> None:
    line = one_line(items, TEXT, name)
    assert line is None or parts_of(str(line), TEXT, name) == items


@given(st.lists(st.one_of(st.integers(1, 600), st.sampled_from(["3 1/2", "1 3/4"])), min_size=1))
def test_numbers(items: list[int | str]) -> None:
    line = one_line(items, NUMBER, "on")
    assert line is not None
    assert parts_of(str(line), NUMBER, "on") == items


@given(st.lists(st.from_regex(r"[a-z]{1,6}(-[a-z]{1,6})?", fullmatch=True), min_size=1))
def test_names(items: list[str]) -> None:
    line = one_line(items, CODE, "dances")
    assert line == ", ".join(items)
    assert parts_of(str(line), CODE, "dances") == items


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("answers: edges; flat parts, both", ["edges", "flat parts, both"]),
        ("answers: it bends", ["it bends"]),
        ("answers: edges;\n          flat parts", ["edges", "flat parts"]),
        ("answers: [edges, flat parts]", ["edges", "flat parts"]),
        ("answers: [edges, both; flat parts, each]", ["edges, both", "flat parts, each"]),
        ("answers: [edges (two, flat), folds]", ["edges (two, flat)", "folds"]),
        ("answers: [my friend's edge, both; folds]", ["my friend's edge, both", "folds"]),
        ('answers: "1: edges; 2: folds"', ["1: edges", "2: folds"]),
        ("answers: 1: edges; 2: folds", ["1: edges", "2: folds"]),
    ],
)
def test_answers_as_they_are_typed(typed: str, read: list[str]) -> None:
    text = with_lines(LESSON, "question: How many folds did you see?", f"      {typed}")
    found = read_markdown("lesson-1.md", text.encode())
    assert isinstance(found, Document), found
    assert found.data["look_and_talk"]["questions"][0]["answers"] == read
    made = tidied("lesson-1.md", text.encode())
    assert isinstance(made, Tidied)
    assert "; ".join(read) in made.text


@pytest.mark.parametrize("answers", ["[edges (flat), folds]", '["edges; both", folds]'])
def test_brackets_that_yaml_reads_as_they_are_meant_are_read_by_yaml(answers: str) -> None:
    line = f"      answers: {answers}"
    found = read_markdown(
        "lesson-1.md", with_lines(LESSON, "question: How many folds did you see?", line).encode()
    )
    assert isinstance(found, Document)
    assert found.kind is None
    assert len(found.data["look_and_talk"]["questions"][0]["answers"]) == 2


def test_answers_with_commas_alone_could_be_one_or_more_and_are_told() -> None:
    text = with_lines(LESSON, "question: How many folds did you see?", "      answers: two, three")
    found = read_markdown("lesson-1.md", text.encode())
    assert isinstance(found, Document)
    assert found.data["look_and_talk"]["questions"][0]["answers"] == "two, three"
