"""A section that comes back changed: what it does not write is the first's, wherever asked."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools.checking.check_bank import check_folder, check_unit
from build_tools.comparing.change import WrittenUnit
from build_tools.comparing.compare import compare
from build_tools.model.unit import Unit
from build_tools.movement.whole import counts_in_order
from build_tools.unit_editions.unit_texts import text_of_folder
from build_tools.views.dance.dance_in_words import whole_dance_in_words
from build_tools.views.dance.when_made import progress
from build_tools.views.words.changed_return import changed_in_words
from build_tools.views.written.unit_text import fields_of_unit
from tests.support.banks import BASE_UNIT, change, copy_base

LAST = "scattered, facing: front, place: near the own four"
RETURN = """  A':
    returns: A
    end: {formation: scattered, facing: front, place: where the boat came to rest}
motifs:"""


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    """The small bank, with A come back changed at the end of its dance."""
    bank = copy_base(tmp_path)
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, "form: A B C A", "form: A B C A’")
    change(unit, "to: A, as: straight on", "to: A', as: straight on")
    change(unit, "motifs:", RETURN)
    return bank


def built(bank: Path) -> Unit:
    unit = check_unit(bank, BASE_UNIT, {}).unit
    assert unit is not None
    return unit


def test_what_is_not_written_comes_from_the_first(bank: Path) -> None:
    dance = built(bank).dance
    first, again = dance.sections["A"], dance.sections["A'"]
    assert dance.form == ("A", "B", "C", "A'")
    assert (again.counts, again.danced, again.start, again.idea) == (
        first.counts, first.danced, first.start, first.idea,
    )  # fmt: skip
    assert again.end.place == "where the boat came to rest" != first.end.place
    assert (again.returns, again.changes) == ("A", ("end",))
    assert changed_in_words(again) == "A comes back. What differs: how it ends."
    assert changed_in_words(first) is None
    assert counts_in_order(dance) == 24 + 8 + 32 + 8 + 24
    assert "A B C A': a chain that comes back to the start; A comes back changed" in (
        whole_dance_in_words(dance)
    )


def test_another_length_takes_the_place_of_the_first_ones(bank: Path) -> None:
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, "    returns: A\n", "    returns: A\n    timed: {seconds: 20, ends_on: A bell}\n")
    again = built(bank).dance.sections["A'"]
    assert again.kind == "timed"
    assert again.counts is None


def test_it_is_made_where_the_first_is_while_the_same_is_danced(bank: Path) -> None:
    found = progress(built(bank))
    assert found["A'"].made == found["A"].made != ()
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, "    returns: A\n", "    returns: A\n    danced: [{what: [drift], as: unison}]\n")
    assert progress(built(bank))["A'"].made == ()


def test_a_fault_of_the_first_is_found_once(bank: Path) -> None:
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, "    counts: 24", "    counts: 20")
    found = [p for p in check_folder(bank).problems if p.rule == "counts-do-not-fill-section"]
    assert len(found) == 1
    change(unit, "    returns: A\n", "    returns: A\n    counts: 28\n")
    found = [p for p in check_folder(bank).problems if p.rule == "counts-do-not-fill-section"]
    assert [("section A'" in p.message) for p in found] == [False, True]


def test_its_words_are_read_once(bank: Path) -> None:
    read = [one.path for one in fields_of_unit(built(bank))]
    assert ("sections", "A'", "end", "place") in read
    assert ("sections", "A'", "start", "place") not in read
    assert ("sections", "A'", "idea") not in read


@pytest.mark.parametrize(
    ("old", "new", "rule", "said"),
    [
        ("    returns: A\n", "    idea: A boat\n", "missing-field", "`returns` is missing"),
        ("returns: A\n", "returns: B\n", "wrong-value", "its letter says that it is A"),
        ("  A':\n", "  D:\n", "wrong-value", "its letter says that it is another one"),
        ("  A':\n    returns: A\n", "  E':\n    returns: E\n", "unknown-name", "no section E"),
        ("returns: A\n", "returns: A'\n", "wrong-value", "takes the letter of the section"),
        (
            "    returns: A\n",
            "    returns: A\n    counts: 8\n    timed: {seconds: 9, ends_on: A bell}\n",
            "wrong-value",
            "one of counts, timed and improvised at most; 2 are there",
        ),
    ],
)
def test_a_return_of_nothing_is_said(bank: Path, old: str, new: str, rule: str, said: str) -> None:
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, old, new)
    if "idea" in new:
        start = "start: {formation: scattered, facing: front, place: own space}"
        change(unit, "    idea: A boat\n", f"    idea: A boat\n    counts: 24\n    {start}\n")
    found = [p for p in check_folder(bank).problems if p.rule == rule]
    assert any(said in p.message for p in found), [p.message for p in found]


def test_compare_names_what_changed_in_it(bank: Path) -> None:
    folder = bank / "units" / BASE_UNIT
    old = text_of_folder(folder)
    change(folder / "unit.md", "came to rest}", "was folded}")
    new = text_of_folder(folder)
    assert isinstance(old, WrittenUnit)
    assert isinstance(new, WrittenUnit)
    said = [one.sentence for one in compare(old, new)]
    assert len(said) == 1
    assert said[0].startswith("section A': how dancers stand at the end")
