"""Edits put in what they say, and only where the data is what they say it was."""

from __future__ import annotations

from typing import Any

import pytest

from tests.rules.edits import CaseMistake, Edit, edited, is_there, path_in

DATA: dict[str, Any] = {
    "title": "Paper boats",
    "steps": [{"does": "Walk, freeze, bounce"}, {"does": "Fold"}, {"does": "Drift"}],
    "sections": {"A": {"counts": 24}},
}


def changed(*edits: Edit) -> dict[str, Any]:
    new = edited(DATA, edits)
    assert isinstance(new, dict)
    return new


def test_puts_one_value_in_place_of_another_and_leaves_the_rest() -> None:
    assert changed(Edit("sections/A/counts", 24, 16)) == DATA | {"sections": {"A": {"counts": 16}}}
    assert DATA["sections"] == {"A": {"counts": 24}}


def test_takes_out_and_adds_where_nothing_was() -> None:
    new = changed(Edit("title", "Paper boats", "none"), Edit("topics", "none", ["rivers"]))
    assert new == {"steps": DATA["steps"], "sections": DATA["sections"], "topics": ["rivers"]}


def test_every_place_is_counted_before_any_edit() -> None:
    new = changed(
        Edit("steps/0", {"does": "Walk…"}, "none"),
        Edit("steps/1", "none", {"does": "Press"}, insert=True),
        Edit("steps/2/does", "Drift", "Float"),
        Edit("steps/3", "none", {"does": "Rest"}, insert=True),
    )
    assert [step["does"] for step in new["steps"]] == ["Press", "Fold", "Float", "Rest"]


def test_an_item_behind_the_last_needs_no_insert() -> None:
    assert changed(Edit("steps/3", "none", {"does": "Rest"}))["steps"][-1] == {"does": "Rest"}


@pytest.mark.parametrize(
    "before",
    [
        DATA["steps"],
        [{"does": "Walk, freeze, …"}, "…"],
        [{"…": None, "does": "Walk, freeze, bounce"}, {"does": "Fold"}, {"does": "D…"}],
    ],
)
def test_the_first_words_of_what_was_there_are_enough(before: Any) -> None:
    assert changed(Edit("steps", before, []))["steps"] == []


@pytest.mark.parametrize(
    ("edit", "mend"),
    [
        (Edit("title", "Boats", "Red"), 'the base has now "Paper boats"; write `before: "Pap'),
        (Edit("title", "none", "Red"), 'write `before: "Paper boats"`'),
        (Edit("topics", ["rivers"], []), "write `before: none`"),
        (Edit("title", "…", "Red"), "the base has now"),
        (Edit("steps", [{"does": "Fold"}, "…"], []), "the base has now"),
        (Edit("steps/0", {"task": "Walk", "…": None}, "none"), "the base has now"),
        (Edit("title", "Paper boats", "Paper boats"), "nothing is changed"),
        (Edit("topics", "none", "none"), "nothing is changed"),
        (Edit("steps/first", "none", {}), "`first` is no place in a list"),
        (Edit("steps/7", "none", {}), "the list has 3 items"),
        (Edit("sections/B/counts", "none", 8), "nothing stands around it"),
        (Edit("title/first", "none", "P"), '"Paper boats" stands around it'),
        (Edit("topics", "none", ["rivers"], insert=True), "insert only into lists"),
    ],
)
def test_a_stale_or_misplaced_edit_is_refused_with_its_mend(edit: Edit, mend: str) -> None:
    with pytest.raises(CaseMistake) as refused:
        changed(edit)
    assert str(refused.value).startswith(f"at: {edit.at}: ")
    assert mend in str(refused.value)


def test_two_edits_of_one_place_are_refused() -> None:
    whole = Edit("sections/A", {"counts": 24}, "none")
    with pytest.raises(CaseMistake, match="one edit"):
        changed(whole, Edit("sections/A/counts", 24, 16))
    with pytest.raises(CaseMistake, match="one edit"):
        changed(whole, whole)


def test_knows_the_fields_that_are_there() -> None:
    assert path_in(DATA, "steps/1/does") == ("steps", 1, "does")
    assert path_in(DATA, "") == ()
    there = [is_there(DATA, path_in(DATA, at)) for at in ("", "steps/2", "steps/3", "title/x")]
    assert there == [True, True, False, False]
