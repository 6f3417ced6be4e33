"""Fields above, notes below."""

from __future__ import annotations

import pytest

from build_tools.source.front_matter import Document, read_data, read_markdown
from tests.support.banks import faults_of_markdown


@pytest.mark.parametrize("raw", [b"", b"title: x\n", b"--\na: 1\n--\n"])
def test_a_file_without_fields_is_said_to_have_none(raw: bytes) -> None:
    (found,) = faults_of_markdown(raw)
    assert (found.rule, found.line, found.column) == ("no-fields", 1, 1)


@pytest.mark.parametrize("raw", [b"---", b"---\n", b"---\na: 1\n", b"---\na: |\n  ---\n"])
def test_fields_that_are_never_closed(raw: bytes) -> None:
    (found,) = faults_of_markdown(raw)
    assert found.rule == "no-fields"
    assert "never closed" in found.message


@pytest.mark.parametrize(
    ("raw", "data", "body"),
    [
        (b"---\na: 1\n---", {"a": 1}, ""),
        (b"---\na: 1\n---\n", {"a": 1}, ""),
        (b"---  \na: 1\n---\t\nNotes.\n\n---\nmore", {"a": 1}, "Notes.\n\n---\nmore"),
        (b"---\n---\n", None, ""),
        (b"---\na: |\n  x\n  ---\nb: 2\n---\n", {"a": "x\n---\n", "b": 2}, ""),
    ],
)
def test_the_two_halves(raw: bytes, data: object, body: str) -> None:
    document = read_markdown("units/u/unit.md", raw)
    assert isinstance(document, Document)
    assert (document.data, document.body) == (data, body)


def test_a_data_file_may_start_with_three_hyphens() -> None:
    document = read_data("bank.yml", b"---\na: 1\n")
    assert isinstance(document, Document)
    assert document.data == {"a": 1}
    assert document.locate(("a",)) == (2, 1)


def test_a_problem_is_signed_with_its_place() -> None:
    document = read_markdown("units/u/unit.md", b"---\na: 1\nb: {c: 2}\n---\n")
    assert isinstance(document, Document)
    problem = document.problem("some-rule", "question", ("b", "c"), "message", "help")
    assert (problem.file, problem.line, problem.column) == ("units/u/unit.md", 3, 5)
    assert (problem.rule, problem.severity) == ("some-rule", "question")
