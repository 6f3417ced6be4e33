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
