"""A unit kept beside its published pages says all that its files say, and nothing else is read."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from build_tools.comparing.change import WrittenUnit
from build_tools.comparing.compare import compare
from build_tools.unit_editions.kept_with_pages import as_kept, read_kept
from build_tools.unit_editions.unit_texts import text_of_folder
from tests.support.banks import CONTENT, LOOKED_AT


def written(slug: str, content: Path = CONTENT) -> WrittenUnit:
    unit = text_of_folder(content / "units" / slug)
    assert isinstance(unit, WrittenUnit)
    return unit


@pytest.mark.parametrize("slug", LOOKED_AT)
def test_it_comes_back_as_it_was(slug: str) -> None:
    """RFC 8259 knows every kind of value a unit has; Python's own reader of it is the oracle."""
    unit = written(slug)
    again = read_kept(as_kept(unit))
    assert again == unit
    assert again is not None
    assert compare(again, unit) == compare(unit, again) == ()
    assert [*again.fields["sections"]] == [*unit.fields["sections"]]
    assert sorted(json.loads(as_kept(unit))) == sorted(["unit", "media", *map(str, unit.lessons)])


def test_no_comment_of_the_author_is_in_it(tmp_path: Path) -> None:
    folder = tmp_path / "units" / "rock-pool"
    folder.mkdir(parents=True)
    for file in (CONTENT / "units" / "rock-pool").iterdir():
        if file.is_file():
            text = file.read_text(encoding="utf-8")
            (folder / file.name).write_text(text.replace("---\n", "---\n# for me alone\n", 1))
    assert b"for me alone" not in as_kept(written("rock-pool", tmp_path))


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"\xff",
        b"[]",
        b"null",
        b'{"unit": {}, "media": {}}',
        b'{"unit": {"fields": {"title": "A"}, "notes": ""}, "media": {}}',
        b"[" * 100_000,
    ],
    ids=["nothing", "no text", "a list", "null", "empty", "another shape", "too deep"],
)
def test_what_is_no_such_unit_is_none(data: bytes) -> None:
    assert read_kept(data) is None


def test_a_lesson_out_of_shape_is_none() -> None:
    held = json.loads(as_kept(written("rock-pool")))
    held["1"]["fields"]["steps"] = "none"
    assert read_kept(json.dumps(held).encode()) is None
