"""How a manual is read, and how `places/` and a unit that moved on are told of."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.rules.catalogue import rule_named
from build_tools.rules.rule import Rule
from tests.manuals.examples import fields_of, lessons_of
from tests.manuals.fields import NotLaid
from tests.manuals.laying import UNITS, Layout, found, layouts, new_findings, published


def rule(name: str, bad: str = "", good: str = "task: Walk.") -> Rule:
    known = rule_named(name)
    assert known is not None
    return replace(known, manual=f"A fact.\n\nBad:\n    {bad}\nGood:\n    {good}\n")


@pytest.mark.parametrize(
    ("block", "fields"),
    [
        ("task: Walk on.", {"task": "Walk on."}),
        ("grouping: fours, into: Turn round.", {"grouping": "fours", "into": "Turn round."}),
        ("minutes: 4\n    A: {counts: 8, …}", {"minutes": 4, "A": {"counts": 8, "…": ""}}),
        ("{from: A, to: B}", {"whole": {"from": "A", "to": "B"}}),
        ("lesson 1: makes: [A]\n    lesson 2: makes: [B]", {"makes": ["A"], "makes 2": ["B"]}),
        ("nobody says so\n    a step: say: Go.", {"say": "Go."}),
        ("step 2: phase: make\n    step 3: phase: show", {"phase": "make", "phase 2": "show"}),
        ("gust-slow: {of: gust}\n    A: {}", {"gust-slow": {"of": "gust"}, "A": {}}),
        (
            "long\n    task: >-\n      Walk\n      on.\n    notes: Why.",
            {"task": "Walk on.", "notes": "Why."},
        ),
    ],
)
def test_a_block_is_read_field_by_field(block: str, fields: dict[str, object]) -> None:
    assert fields_of(rule("minutes-do-not-add-up", block), "bad") == fields


def test_a_field_is_in_the_lesson_named_last_before_it() -> None:
    block = "form: A\n    lesson 1: makes: [A]\n    lesson 3, step 2: dances: [A], settles: [b]"
    asked = rule("minutes-do-not-add-up", block)
    assert lessons_of(asked, "bad") == {"makes": 1, "dances": 3, "settles": 3}


def test_a_unit_adds_to_what_holds_for_every_unit() -> None:
    laid = layouts(
        {
            "every unit": {"task": "lesson-1.md steps/0/task"},
            UNITS[0]: {"ground": {"called": {"gust": "wave"}}},
            UNITS[1]: "it has no such thing",
            "ground": {"without": ["unit.md words"]},
        }
    )
    where = {"task": "lesson-1.md steps/0/task"}
    assert laid[UNITS[0]] == Layout(where, {"gust": "wave"}, ("unit.md words",))
    assert laid[UNITS[1]] == "it has no such thing"
    assert laid[UNITS[2]] == Layout(where, {}, ("unit.md words",))


def test_a_unit_that_moved_on_is_told_with_its_file_and_place() -> None:
    layout = Layout({"task": "lesson-1.md steps/phase=nap/task"})
    with pytest.raises(
        NotLaid, match=r"moved on: in units/.*/lesson-1\.md it has no steps/phase=nap"
    ):
        new_findings(rule("task-too-long"), UNITS[0], "good", layout)


def test_an_example_that_brings_a_unit_out_of_shape_is_told_with_what_is_wrong() -> None:
    layout = Layout({"task": "lesson-1.md steps/0/phase"})
    with pytest.raises(NotLaid, match=r"out of shape: .*`phase` is"):
        new_findings(rule("task-too-long"), UNITS[0], "good", layout)


def test_what_is_laid_into_one_unit_stays_out_of_the_next() -> None:
    before = published(UNITS[0])
    edits = (("lesson-1.md steps/*/task", "Walk."), ("lesson-12.md lesson", 12))
    found(rule("task-too-long"), UNITS[0], edits)
    after = published(UNITS[0])
    assert [one.steps for one in after.lessons] == [one.steps for one in before.lessons]
