"""Words, numbers, rows and parts of lists changed in a file: there alone, by whole lines, or not.

The units that are published are the examples: each value is put back, each part moved there and
back, and the file is the same, byte for byte.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from build_tools.source.file_lines import EditRefused, reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import lists_in, mark_of, with_item
from build_tools.source.step_edit import with_step_after, without_step
from build_tools.source.value_edit import values_in, with_value
from tests.support.banks import BASE, BASE_UNIT

FILES = sorted((BASE / "units" / BASE_UNIT).glob("*.md"))
LESSON = BASE / "units" / BASE_UNIT / "lesson-2.md"
ROWS = b"""---
title: A
motifs:
  drift:
    from: you
    actions:
      - word | action | counts | level
      # first she floats
      - float | travel | 6 | high
      - hop | jump | 2

      - settle | stillness | 4  # long
  whirl:
    from: pupils
    actions: []
---
Notes.
"""


def lesson(raw: bytes, file: str = "lesson-2.md") -> dict[str, Any]:
    read = read_markdown(file, raw)
    assert isinstance(read, Document), read
    return dict(reading_of(read).data)


def _one_more(value: object) -> int | float:
    assert isinstance(value, int | float)
    return value + 1


def sound(made: bytes | EditRefused) -> bytes:
    assert isinstance(made, bytes), made
    return made


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_each_value_changes_its_own_line_and_is_put_back(path: Path) -> None:
    raw = path.read_bytes()
    found = values_in(path.name, raw)
    assert len(found) > 10
    for one in found:
        others = [word for word in one.choices if word != one.value]
        if not others and not isinstance(one.value, int | float):
            continue
        other: Any = others[0] if others else _one_more(one.value)
        made = sound(with_value(path.name, raw, one.path, one.value, other))
        lines = zip(raw.split(b"\n"), made.split(b"\n"), strict=True)
        assert sum(a != b for a, b in lines) == 1, one
        assert with_value(path.name, made, one.path, other, one.value) == raw


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_each_part_is_moved_written_again_and_taken_away(path: Path) -> None:
    raw = path.read_bytes()
    found = lists_in(path.name, raw)
    assert found
    for at, parts in found:
        for number, part in parts.items():
            mark = mark_of(part)
            twice = sound(with_item(path.name, raw, (*at, number), mark, "again"))
            back = sound(with_item(path.name, twice, (*at, number + 1), mark, "away"))
            assert back == raw, at
            if number + 1 in parts:
                down = sound(with_item(path.name, raw, (*at, number), mark, "down"))
                assert sorted(down.split(b"\n")) == sorted(raw.split(b"\n"))
                assert with_item(path.name, down, (*at, number + 1), mark, "up") == raw


def test_rows_of_moves_go_with_their_remarks_and_their_columns_stay() -> None:
    [(at, parts)] = lists_in("unit.md", ROWS)
    assert at == ("motifs", "drift", "actions")
    assert list(parts) == [1, 2, 3]
    down = sound(with_item("unit.md", ROWS, (*at, 1), mark_of(parts[1]), "down"))
    lines = down.decode().split("\n")
    assert lines[7:11] == [
        "      - hop | jump | 2",
        "      # first she floats",
        "      - float | travel | 6 | high",
        "",
    ]
    first = with_item("unit.md", ROWS, (*at, 1), mark_of(parts[1]), "up")
    assert first == EditRefused("it is the first already")
    row = "hop | jump | 3"
    made = sound(with_value("unit.md", ROWS, (*at, 2), "hop | jump | 2", row))
    assert made == ROWS.replace(b"hop | jump | 2", row.encode())


def test_a_new_step_has_half_of_the_minutes_of_the_one_before() -> None:
    raw = LESSON.read_bytes()
    before = lesson(raw)["steps"]
    for number, step in enumerate(before):
        made = with_step_after("lesson-2.md", raw, number, mark_of(step))
        after = lesson(sound(made))["steps"]
        assert len(after) == len(before) + 1
        assert sum(one["minutes"] for one in after) == sum(one["minutes"] for one in before)
        assert after[number + 1]["task"] == "Write here what pupils do."
        assert after[:number] + after[number + 2 :] == before[:number] + before[number + 1 :]


def test_the_minutes_of_a_step_that_is_taken_away_go_to_its_neighbour() -> None:
    raw = LESSON.read_bytes()
    before = lesson(raw)["steps"]
    for number, step in enumerate(before):
        after = lesson(sound(without_step("lesson-2.md", raw, number, mark_of(step))))["steps"]
        assert [one["does"] for one in after] == [
            one["does"] for n, one in enumerate(before) if n != number
        ]
        assert sum(one["minutes"] for one in after) == sum(one["minutes"] for one in before)


def test_what_was_changed_meanwhile_is_left_alone() -> None:
    raw = LESSON.read_bytes()
    assert isinstance(with_item("lesson-2.md", raw, ("steps", 0), "another", "down"), EditRefused)
    assert isinstance(with_step_after("lesson-2.md", raw, 0, "another"), EditRefused)
    assert isinstance(without_step("lesson-2.md", raw, 40, "another"), EditRefused)
    made = with_value("lesson-2.md", raw, ("minutes",), 41, 45)
    assert isinstance(made, EditRefused)
    assert made.conflict


def test_remarks_and_line_ends_stay() -> None:
    raw = LESSON.read_bytes().replace(
        b"  - phase: recall\n", b"  # what she said\n  - phase: recall  # again\n"
    )
    raw = b"\xef\xbb\xbf" + raw.replace(b"\n", b"\r\n")
    steps = lesson(raw)["steps"]
    down = sound(with_item("lesson-2.md", raw, ("steps", 1), mark_of(steps[1]), "down"))
    assert sorted(down.split(b"\r\n")) == sorted(raw.split(b"\r\n"))
    assert b"  # what she said\r\n  - phase: recall  # again\r\n" in down
    new = sound(with_step_after("lesson-2.md", raw, 0, mark_of(steps[0])))
    assert b"Write here what pupils do.\r\n  # what she said\r\n" in new


@pytest.mark.parametrize("new", ["moving", "make # now", 6.5, True, "", "[alone]"])
def test_only_what_may_stand_there_is_written(new: Any) -> None:
    raw = LESSON.read_bytes()
    phase = lesson(raw)["steps"][0]["phase"]
    made = with_value("lesson-2.md", raw, ("steps", 0, "phase"), phase, new)
    assert isinstance(made, EditRefused)
