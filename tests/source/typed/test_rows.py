"""Moves in rows mean what moves in braces mean; a row that cannot be read is told of."""

from __future__ import annotations

import pytest

from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.typed.rows import rows_of
from tests.support.banks import CONTENT, ROOT

UNIT = (ROOT / "tests" / "rules" / "base" / "units" / "paper-boats" / "unit.md").read_text("utf-8")
FOLD = """    actions:
      - {gesture: 4, as: crease, level: high to low}
      - {stillness: 4, as: press, level: low}
"""
DRIFT = """    actions:
      - {travel: 4, as: float, side: right}
      - {jump: 2, as: hop, level: high}
      - {transfer: 2, as: settle, level: high to low}
"""


def read(text: str) -> Document:
    found = read_markdown("units/a/unit.md", text.encode())
    assert isinstance(found, Document), found
    return found


def with_drift(rows: str) -> str:
    assert DRIFT in UNIT
    return UNIT.replace(DRIFT, f"    actions:\n{rows}")


@pytest.mark.parametrize(
    "rows",
    [
        "      - word | action | counts | level | side\n      - float | travel | 4 | | right\n"
        "      - hop | jump | 2 | high\n      - settle | transfer | 2 | high to low |\n",
        # as a table of Markdown, with capitals, and without its hyphens
        "      | Word | Move | Counts | Level | Side |\n      |---|---|---|---|---|\n"
        "      | float | Travel | 4 |  | right |\n      | hop | jump | 2 | high | |\n"
        "      | settle | transfer | 2 counts | High to low | |\n",
    ],
)
def test_rows_are_read_as_fields(rows: str) -> None:
    document = read(with_drift(rows))
    assert document.data == read(UNIT).data
    assert document.fitting is not None


def test_columns_are_named_once() -> None:
    fold = "    actions:\n      - word | action | counts | level | side\n"
    fold += "      - crease | gesture | 4 | high to low\n      - press | stillness | 4 | low\n"
    drift = "      - float | travel | 4 | | right\n      - hop | jump | 2 | high\n"
    text = with_drift(f"{drift}      - settle | transfer | 2 | high to low\n").replace(FOLD, fold)
    assert read(text).data == read(UNIT).data


def test_a_move_is_found_on_its_row() -> None:
    rows = "      - word | action | counts\n      - float | travel | 4\n      - hop | jump | 2\n"
    text = with_drift(rows)
    line, _ = read(text).locate(("motifs", "drift", "actions", 1, "jump"))
    assert text.split("\n")[line - 1].strip() == "- hop | jump | 2"


@pytest.mark.parametrize(
    ("rows", "line", "message", "help_"),
    [
        ("      - hop | jump | 2\n", "- hop | jump | 2", "no line above them", "a first line"),
        (
            "      - word | action | counts\n      - hop | jumpy | 2\n",
            "- hop | jumpy | 2",
            "“jumpy” is no action",
            "travel, turn, jump",
        ),
        (
            "      - word | action | counts\n      - hop | jump | 2 | high\n",
            "- hop | jump | 2 | high",
            "4 parts, and 3 columns",
            "name a column",
        ),
    ],
)
def test_a_row_that_cannot_be_read_is_told(rows: str, line: str, message: str, help_: str) -> None:
    text = with_drift(rows)
    found = read_markdown("units/a/unit.md", text.encode())
    assert isinstance(found, list)
    assert message in found[0].message
    assert help_ in found[0].help
    assert text.split("\n")[found[0].line - 1].strip() == line


def test_every_published_move_can_be_a_row() -> None:
    for path in sorted((CONTENT / "units").glob("*/unit.md")):
        for name, motif in read(path.read_text(encoding="utf-8")).data["motifs"].items():
            assert rows_of(motif["actions"]), (path, name)


HEAD = "      - word | action | counts | level | side | part | how\n"


@pytest.mark.parametrize(
    ("row", "message", "help_"),
    [
        (
            "hop | jump | 2 | high | | strong",
            "“strong” stands under `part` in this row, and is a word of `how`",
            "write: - hop | jump | 2 | high | | | strong",
        ),
        (
            "hop | jump | 2 | high | | arms strong",
            "“strong” stands under `part` in this row, and is a word of `how`",
            "write: - hop | jump | 2 | high | | arms | strong",
        ),
        (
            "hop | jump | 2 | left | arms | light",
            "“left” stands under `level` in this row, and is a word of `side`",
            "write: - hop | jump | 2 | | left | arms | light",
        ),
        (
            "hop | jump | 2 | high | | | | forwards",
            "this row has 8 parts, and 7 columns are named",
            "name a column for each part",
        ),
        (
            "hop | jump | 2 | forwards",
            "“forwards” stands under `level` in this row, and is a word of `direction`",
            "name a column `direction` in the first line, and put “forwards” under it",
        ),
    ],
)
def test_a_word_of_another_column_is_told_at_its_row(row: str, message: str, help_: str) -> None:
    text = with_drift(f"{HEAD}      - {row}\n")
    found = read_markdown("units/a/unit.md", text.encode())
    assert isinstance(found, list)
    assert [text.split("\n")[one.line - 1].strip() for one in found] == [f"- {row}"]
    assert message in found[0].message
    assert help_ in found[0].help


@pytest.mark.parametrize(
    ("part", "how"),
    [("back", "strong"), ("free arm", ""), ("right hand", "light free"), ("both sides", "bound")],
)
def test_a_part_of_the_body_is_not_taken_for_a_word_of_another_column(part: str, how: str) -> None:
    document = read(with_drift(f"{HEAD}      - hop | jump | 2 | high | | {part} | {how}\n"))
    move = document.data["motifs"]["drift"]["actions"][0]
    assert move["body_part"] == part
    assert move.get("dynamics", []) == how.split()
