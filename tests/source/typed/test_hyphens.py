"""A hyphen a space too few or too many: its line is read where it stands, with one note.

From a trial: an adviser's hyphen gave 25 errors, and advice that made two steps one.
"""

from __future__ import annotations

import re

import pytest

from build_tools.problem import Problem
from build_tools.source.front_matter import Document, read_markdown
from tests.support.banks import ROOT

BASE = ROOT / "tests" / "rules" / "base" / "units" / "paper-boats"
LESSON = (BASE / "lesson-1.md").read_text(encoding="utf-8")
HYPHENS = [m.start() for m in re.finditer(r"^ +(?=- [a-z_]+: )", LESSON, re.MULTILINE)]


def read(text: str) -> Document | list[Problem]:
    return read_markdown("units/paper-boats/lesson-1.md", text.encode())


def sound(text: str) -> Document:
    found = read(text)
    assert isinstance(found, Document), [(one.line, one.message) for one in found]
    return found


def test_there_are_hyphens_of_steps_and_of_lists_within_them() -> None:
    assert len(HYPHENS) >= 7
    assert len({LESSON[at:].index("-") for at in HYPHENS}) >= 2


@pytest.mark.parametrize("spaces", [-1, 1, 2])
def test_a_hyphen_set_in_otherwise_is_read_where_it_stands(spaces: int) -> None:
    whole = sound(LESSON)
    for at in HYPHENS:
        start = LESSON.index("-", at) - at
        moved = LESSON[:at] + " " * (start + spaces) + LESSON[at + start :]
        found = sound(moved)
        assert found.data == whole.data, moved[at : at + 60]
        assert found.fitting is not None
        line = LESSON.count("\n", 0, at) + 1
        told = [guess for guess in found.guesses if "set in otherwise" in guess.message]
        # a first hyphen may stand anywhere that its fields allow
        assert [guess.line for guess in told] in ([line], []), told


def test_a_step_that_is_set_in_whole_is_a_step() -> None:
    starts = [m.start() for m in re.finditer(r"^  - ", LESSON, re.MULTILINE)]
    steps = [at for at in starts if LESSON.index("steps:") < at < LESSON.rindex("\n---")]
    second, third = steps[1], steps[2]
    set_in = "".join(f"  {line}\n" for line in LESSON[second:third].splitlines())
    assert sound(LESSON[:second] + set_in + LESSON[third:]).data == sound(LESSON).data


def test_what_starts_no_part_of_a_list_is_still_told() -> None:
    step = LESSON.index("  - ", LESSON.index("steps:"))
    end = LESSON.index("\n", step)
    found = read(f"{LESSON[:end]}\n    - bananas: 3{LESSON[end:]}")
    assert not isinstance(found, Document)
    assert any("bananas" in one.message for one in found)
