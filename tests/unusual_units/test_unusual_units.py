"""Good units of unusual shape are left in peace: no error, at most two questions, no allowance.

A published unit may allow one thing, with its reason.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from pathlib import Path

import pytest

from build_tools.checking.check_bank import UnitCheck, check_unit
from build_tools.model.unit import Unit

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
MOST_QUESTIONS = 2
PUBLISHED = ROOT / "content"
MOST_ALLOWED = 1
"""Of a published unit: an old dance is learned as it is, whatever a rule wants of a new one."""
BANKS = (HERE, PUBLISHED, ROOT / "tests" / "rules" / "base")
UNITS = [(bank, folder.name) for bank in BANKS for folder in sorted((bank / "units").iterdir())]


@cache
def checked(bank: Path, slug: str) -> UnitCheck:
    return check_unit(bank, slug, {})


def unit_in(bank: Path, slug: str) -> Unit:
    unit = checked(bank, slug).unit
    assert unit is not None
    return unit


@pytest.mark.parametrize(("bank", "slug"), UNITS, ids=[slug for _, slug in UNITS])
def test_a_good_unit_is_left_in_peace(bank: Path, slug: str) -> None:
    check = checked(bank, slug)
    assert check.unit is not None
    assert len(check.unit.allow) <= (MOST_ALLOWED if bank == PUBLISHED else 0)
    assert [p for p in check.problems if p.severity == "error"] == []
    assert len([p for p in check.problems if p.severity == "question"]) <= MOST_QUESTIONS


def sections_made_together(unit: Unit) -> bool:
    made = ({n for s in lesson.steps for n in s.makes if n.isupper()} for lesson in unit.lessons)
    return any(len(letters) > 1 for letters in made)


def kinds(unit: Unit) -> set[str]:
    return {section.kind for section in unit.dance.sections.values()}


def sounds(unit: Unit) -> set[str]:
    return {section.sound.kind for section in unit.dance.sections.values()}


def action_kinds(unit: Unit) -> set[str]:
    motifs = unit.dance.motifs.values()
    return {kind for motif in motifs for action in motif.actions for kind in action.kinds}


SHAPES: dict[str, Callable[[Unit], bool]] = {
    "improvised": lambda u: kinds(u) == {"improvised"},
    "pupils' order": lambda u: u.dance.order_choice is not None,
    "one motif and its variations": lambda u: len(u.dance.motifs) == 1 < len(u.dance.developments),
    "two sections in one lesson": sections_made_together,
    "three lessons": lambda u: len(u.lessons) == 3,
    "a learned dance": lambda u: {m.made_by for m in u.dance.motifs.values()} == {"teacher"},
    "no counts and no music": lambda u: kinds(u) == {"timed"} and sounds(u) == {"silence"},
    "in the round with live sound": lambda u: (
        "pupils live" in sounds(u) and "all sides" in u.dance.front
    ),
    "wheelchair users in every role": lambda u: (
        "wheelchairs" in u.notes and set(action_kinds(u)) <= {"travel", "gesture", "stillness"}
    ),
    "a classroom with the tables pushed back": lambda u: (
        "tables pushed back" in (u.stimulus.where or "")
    ),
    "Reception": lambda u: any("R" in years.years for years in u.years),
}


@pytest.mark.parametrize("shape", SHAPES)
def test_the_shape_is_among_them(shape: str) -> None:
    assert [slug for bank, slug in UNITS if SHAPES[shape](unit_in(bank, slug))]
