"""What is refused, where, and how soon. Attacks on readers of YAML: from memory."""

from __future__ import annotations

import re
import time

import pytest

from build_tools.problem import Fault
from build_tools.source.scalars import MOST_DEPTH, MOST_ENTRIES
from build_tools.source.yaml_reader import read_yaml
from tests.support.banks import faults_of_data, faults_of_markdown

UNWANTED = re.compile(r"\b(invalid|illegal|must|object|property|array|instance|token|scalar)\b")


def fault(text: str) -> Fault:
    """The only fault of a text, as a whole file and as the fields of a Markdown file alike."""
    found = read_yaml(text)
    assert isinstance(found, Fault), text[:80]
    (of_data,) = faults_of_data(text.encode())
    assert of_data == found.at("any.yml")
    (of_markdown,) = faults_of_markdown(f"---\n{text}\n---\nNotes.\n".encode())
    assert (of_markdown.rule, of_markdown.line) == (found.rule, found.line + 1)
    assert not UNWANTED.search(re.sub("`[^`]*`", "", found.message + found.help)), found
    assert len(found.message) < 160
    assert found.message[0].islower() or found.message[0] == "`"
    assert not found.message.endswith(".")
    assert not found.help.endswith(".")
    return found


@pytest.mark.parametrize(
    ("text", "first", "second"),
    [
        ("title: x\nfocus: y\ntitle: z", 1, 3),
        ("steps:\n  - {say: a, task: b}\n  - say: a\n    task: b\n    say: c", 3, 5),
        ("a: {b: 1, b: 2}", 1, 1),
        ("'8': x\n8: y", 1, 2),
        ("on: x\n\n\n'on': y", 1, 4),
    ],
)
def test_a_repeated_field_names_both_lines(text: str, first: int, second: int) -> None:
    found = fault(text)
    assert (found.rule, found.line) == ("repeated-field", second)
    assert found.message.endswith(f"the first is on line {first}")


def test_a_repeated_field_names_the_lines_of_the_file_and_not_of_the_fields() -> None:
    (found,) = faults_of_markdown(b"---\ntitle: x\ntitle: y\n---\n")
    assert (found.line, found.message.rpartition(" ")[2]) == (3, "2")


def test_a_very_long_name_is_cut() -> None:
    name = "a" * 500
    assert "aaa…`" in fault(f"{name}: 1\n{name}: 2").message
    assert "aaa…`" in fault(f"b: &{name} 1").message


def test_names_that_differ_in_their_letters_are_two_fields() -> None:
    result = read_yaml("A: 1\na: 2")
    assert not isinstance(result, Fault)
    assert result[0] == {"A": 1, "a": 2}


@pytest.mark.parametrize(
    ("text", "line", "column"),
    [
        ("a: &x 1", 1, 4),
        ("a: 1\nb: *x", 2, 4),
        ("a: &x\n  b: 1", 1, 4),
        ("- &x [1]\n- *x", 1, 3),
        ("&x a: 1", 1, 1),
        ("a: 1\n<<: *x", 2, 5),
        ("a: *", 1, 5),
        ("a: &", 1, 5),
    ],
)
def test_links_between_places_are_refused(text: str, line: int, column: int) -> None:
    found = fault(text)
    assert (found.line, found.column) == (line, column)
    assert found.rule in ("anchor-used", "broken-yaml")
    assert "link between places in the file" in found.message


@pytest.mark.parametrize("tag", ["!!str", "!!python/object:os.system", "!x", "!", "!<tag:x>"])
def test_signs_for_programs_are_refused(tag: str) -> None:
    found = fault(f"a: 1\nb: {tag} c")
    assert f"`{tag.strip('<>').replace('!<', '')}`" in found.message
    assert (found.rule, found.line, found.column) == ("broken-yaml", 2, 4)
    assert "sign for programs" in found.message


def deep_fields(depth: int) -> str:
    return "\n".join(" " * n + f"a{n}:" for n in range(depth))


@pytest.mark.parametrize(
    "text",
    [
        "[" * 1_000,
        "[" * 100_000,
        "a: " + "[" * 100_000 + "]" * 100_000,
        "{a: " * 1_000,
        "{a: " * 50_000,
        "- " * 1_000 + "a",
        "- " * 100_000 + "a",
        deep_fields(500),
        "[{a: " * 1_000,
    ],
    ids=lambda text: f"{text[:6]!r} {len(text)}",
)
def test_depth_is_a_fault_and_soon_found(text: str) -> None:
    start = time.perf_counter()
    found = fault(text)
    assert "deep" in found.message
    assert found.rule == "broken-yaml"
    assert time.perf_counter() - start < 5


@pytest.mark.parametrize("opened", ["{" * 1_000, "{" * 100_000, "? " * 1_000, "? " * 50_000])
def test_a_map_as_a_name_is_a_fault(opened: str) -> None:
    assert (
        "where the name of a field belongs" in fault(opened).message
        or "deep" in fault(opened).message
    )


def test_the_deepest_that_is_read() -> None:
    text = "[" * MOST_DEPTH + "]" * MOST_DEPTH
    assert not isinstance(read_yaml(text), Fault)
    assert isinstance(read_yaml(f"[{text}]"), Fault)


@pytest.mark.parametrize(
    "number",
    ["1234567890", "9" * 5_000, "-" + "9" * 200_000, "0." + "1" * 400, "1" * 300 + ".5"],
    ids=lambda n: f"{n[:12]} {len(n)}",
)
def test_monstrous_numbers_are_refused(number: str) -> None:
    found = fault(f"a: 1\nb: {number}")
    assert (found.rule, found.line, found.column) == ("odd-number", 2, 4)
    assert len(found.message) < 120


@pytest.mark.parametrize("word", [".nan", ".NaN", ".NAN", ".inf", "-.inf", "+.Inf", "-.INF"])
def test_what_is_no_number_is_refused(word: str) -> None:
    found = fault(f"a: [1, {word}]")
    assert (found.rule, found.line, found.column) == ("odd-number", 1, 8)
    assert f"`{word}`" in found.message


@pytest.mark.parametrize("text", ["a: 1\n--- \nb: 2", "a: 1\n--- b\n", "a: 1\n...\n---\nb: 2"])
def test_a_second_set_of_fields_is_refused(text: str) -> None:
    (found,) = faults_of_data(text.encode())
    assert (found.rule, found.line) == ("broken-yaml", 2 if "..." not in text else 3)
    assert "a second set of fields" in found.message


@pytest.mark.parametrize(
    ("text", "line", "column", "part"),
    [
        ("a: 'x\nb: 1", 1, 4, "never closed"),
        ('a: 1\nb: "x\nc: 2\nd: 3\n', 2, 4, "never closed"),
        ("a: 1\nb: [x, y\nc: [z]\nd: 1", 2, 4, "is not closed"),
        ("a: {x: 1\nb: 2", 1, 4, "is not closed"),
        ("a: [x y: [z]", 1, 4, "is not closed"),
        ("say: Ready: go low", 1, 11, "second colon"),
        ("a: 1\nwords with no colon\nb: 2", 2, 1, "no colon"),
        ("a: @x", 1, 4, "cannot start a value"),
        ("a: `x`", 1, 4, "cannot start a value"),
        ("a:\n\t- b", 2, 1, "tab"),
        ("a: 1\n  b: 2", 2, 4, "second colon"),
        ("a:\n  - b\n c\n", 3, 2, "does not fit"),
        ("- a\nb: 1", 2, 1, "does not fit"),
        ("a: ]", 1, 4, "does not fit"),
        ('a: "\\ud800"', 1, 7, "does not fit"),
        ("[a]: b", 1, 1, "name of a field"),
    ],
)
def test_slips_of_the_pen_are_placed(text: str, line: int, column: int, part: str) -> None:
    found = fault(text)
    assert (found.rule, found.line, found.column) == ("broken-yaml", line, column)
    assert part in found.message


@pytest.mark.parametrize("code", ["\\0", "\\x07", "\\e", "\\u200b", "\\u202e", "\\L", "\\N"])
def test_hidden_characters_cannot_come_in_by_their_codes(code: str) -> None:
    for text in (f'a: 1\nb: "x{code}"', f'a: 1\n"b{code}": x'):
        found = fault(text)
        assert (found.rule, found.line) == ("hidden-character", 2)


def test_a_merge_is_a_field_like_any_other_and_so_is_unknown() -> None:
    result = read_yaml("<<: {title: x}")
    assert not isinstance(result, Fault)
    assert result[0] == {"<<": {"title": "x"}}


@pytest.mark.parametrize("text", ["- 1\n", "a{}: 1\n"])
def test_more_lines_than_any_list_holds(text: str) -> None:
    def lines(number: int) -> str:
        return "".join(text.format(n) for n in range(number))

    assert not isinstance(read_yaml(lines(MOST_ENTRIES)), Fault)
    found = fault(lines(MOST_ENTRIES + 1))
    assert (found.rule, found.line) == ("broken-yaml", MOST_ENTRIES + 1)
    assert f"more than {MOST_ENTRIES} lines" in found.message
