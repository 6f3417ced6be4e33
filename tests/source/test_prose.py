"""Raw HTML, pictures and links in written text. What could slip through a reader of Markdown:
CommonMark 0.31.2, sections 4.7, 6.3, 6.4, 6.5 and 6.6; the URL Standard for letters dropped
inside an address (a tab in `java\tscript:`)."""

from __future__ import annotations

import pytest

from build_tools.problem import Problem
from build_tools.source.front_matter import Document, read_data, read_markdown
from tests.support.banks import faults_of_data, faults_of_markdown

HEAD = "---\ntitle: x\n---\n"
FIRST = HEAD.count("\n") + 1


def in_notes(notes: str) -> list[Problem]:
    return faults_of_markdown((HEAD + notes).encode())


def rules(problems: list[Problem]) -> set[str]:
    return {p.rule for p in problems}


@pytest.mark.parametrize(
    "html",
    [
        "<script>alert(1)</script>",
        "<b>bold</b>",
        "</p>",
        "<!-- note -->",
        "<?php x",
        "<!DOCTYPE x>",
        "<img src=x onerror=y>",
        "<SCRIPT\n>",
        "<x",
        "a<b",
        "<svg/onload=x>",
        "<javascript:alert(1)>",
        "<data:text/html,x>",
        "<file:///etc/x>",
        "<![CDATA[x]]>",
        "<a@b.example>",
        "`<b>`",
    ],
)
def test_raw_html_is_refused_in_notes_and_in_fields(html: str) -> None:
    found = in_notes(f"A line.\n\nThen {html} here.\n")
    assert "raw-html" in rules(found)
    assert next(p for p in found if p.rule == "raw-html").line == FIRST + 2

    text = html.replace("\n", " ").replace("'", "''")
    (field,) = faults_of_data(f"title: x\nsteps:\n  - say: 'Then {text} here'\n".encode())
    assert (field.rule, field.line, field.column) == ("raw-html", 3, 5)


def test_raw_html_in_the_name_of_a_field_is_refused() -> None:
    (found,) = faults_of_data(b"title: x\n'<b>': y\n")
    assert (found.rule, found.line) == ("raw-html", 2)


def test_raw_html_by_codes_is_refused() -> None:
    (found,) = faults_of_data(b'title: "\\x3cscript\\u003e"\n')
    assert (found.rule, found.line) == ("raw-html", 1)


@pytest.mark.parametrize(
    "text", ["a < b", "3 <4", "x <- y", "<3", "5 > 4", "<https://a.example/b>"]
)
def test_a_lone_sign_is_no_html(text: str) -> None:
    assert isinstance(read_markdown("units/u/unit.md", f"{HEAD}{text}\n".encode()), Document)
    assert isinstance(read_data("bank.yml", f"a: '{text}'\n".encode()), Document)


UNSAFE = [
    "javascript:alert(1)",
    "JaVaScRiPt:alert(1)",
    "java\tscript:alert(1)",
    "&#106;avascript:alert(1)",
    "&#x6A;avascript:alert(1)",
    "javascript&colon;alert(1)",
    "jav&Tab;ascript:x",
    "%6aavascript:x",
    "vbscript:x",
    "data:text/html,x",
    "DATA:text/html;base64,xx",
    "file:///etc/passwd",
    "//elsewhere.example/x",
    "/top",
    "other.html",
    "../up.html",
    "\\\\share\\x",
    "ftp://a.example",
    "http:",
    "https:a.example",
    "https://",
    'https://a.example/"onclick="x',
    "https://a.example/<b>",
    "#1 2",
    "#",
    "?x",
]


@pytest.mark.parametrize(
    "shape",
    [
        "See [this]({}) now.",
        "See [this]( {}) now.",
        "See [this](\n{}) now.",
        "See [this](<{}>) now.",
        '[this]({} "A title")',
        "[x]: {}",
        "[x]: <{}>",
        "   [x]:   {}",
        "[x]:\n  {}",
        "[x\ny]: {}",
        "> [x]: {}",
        "> > [x]: {}",
        "- [x]: {}",
        "1. one\n\n    [x]: {}",
    ],
)
def test_unsafe_links_are_refused_whatever_their_shape(shape: str) -> None:
    for address in UNSAFE:
        found = in_notes(f"First.\n\n{shape.format(address)}\n\n[x] and [y][x]\n")
        assert rules(found) & {"unsafe-link", "raw-html"}, address
        if "<b>" not in address and '"' not in address:
            assert "unsafe-link" in rules(found), address
        assert all(FIRST + 2 <= p.line <= FIRST + 5 for p in found), address


@pytest.mark.parametrize(
    "address", ["https://a.example", "http://a.example/b?c=d&e#f", "mailto:x@a.example", "#the-end"]
)
@pytest.mark.parametrize(
    "shape", ["[t]({})", "[t](<{}>)", '[t]({} "Title")', "[t]: {}", "> [t]: {}"]
)
def test_safe_links_are_read(address: str, shape: str) -> None:
    notes = f"{HEAD}{shape.format(address)}\n".encode()
    assert isinstance(read_markdown("units/u/unit.md", notes), Document)


def test_the_second_of_two_links_is_seen_and_placed() -> None:
    (found,) = in_notes("A [b](https://a.example) and [c](javascript:x).\n")
    assert (found.line, found.column) == (FIRST, 32)
    assert "`javascript:x`" in found.message


@pytest.mark.parametrize(
    "picture",
    [
        "![a](https://a.example/b.png)",
        "![a](media/b.svg)",
        "![a][b]",
        "text ![](x)",
        "- ![a\nb](c)",
    ],
)
def test_pictures_in_notes_are_refused(picture: str) -> None:
    found = in_notes(f"First.\n{picture}\n")
    assert "picture-in-notes" in rules(found)
    assert {p.line for p in found} <= {FIRST + 1, FIRST + 2}


def test_every_fault_of_the_notes_is_said_beside_one_of_the_fields() -> None:
    found = faults_of_markdown(b"---\na: 1\na: 2\n---\n<b>\n\n[x](y)\n![z](w)\n")
    assert [(p.rule, p.line) for p in found] == [
        ("repeated-field", 3),
        ("raw-html", 5),
        ("picture-in-notes", 8),
        ("unsafe-link", 7),
        ("unsafe-link", 8),
    ]


@pytest.mark.parametrize(
    ("notes", "rule", "line"),
    [
        ("a" * 20_001, "notes-too-long", 1),
        ("Words.\n\n" + "> " * 7 + "a\n", "notes-too-deep", 3),
        ("- " * 7 + "a\n", "notes-too-deep", 1),
        ("".join(" " * 3 * n + "1. a\n" for n in range(10)), "notes-too-deep", 10),
        ("Words.\n\n" + "|x" * 99 + "|\n" + "|-" * 99 + "|\n" + "|x\n" * 99, "notes-too-wide", 3),
    ],
)
def test_notes_that_nobody_could_read_are_refused(notes: str, rule: str, line: int) -> None:
    found = [p for p in in_notes(notes) if p.rule == rule]
    assert found
    assert found[0].line == FIRST + line - 1


@pytest.mark.parametrize(
    "notes",
    [
        "a" * 20_000,
        "> " * 6 + "a\n",
        "".join("  " * n + "- a\n" for n in range(6)),
        "|x" * 9 + "|\n" + "|-" * 9 + "|\n" + ("|x" * 9 + "|\n") * 99,
        "One | other.\n" * 900,
    ],
)
def test_notes_of_a_size_that_is_read(notes: str) -> None:
    assert isinstance(read_markdown("units/u/unit.md", (HEAD + notes).encode()), Document)
