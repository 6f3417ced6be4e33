"""Documents to dataclasses: nothing lost, numbers exact, order by lesson number."""

from __future__ import annotations

import dataclasses
import re
import shutil
from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest

from build_tools.checking.check_bank import check_unit
from build_tools.model.build_dance import counts, whole
from build_tools.model.unit import Unit
from build_tools.source.folder import read_unit_folder
from build_tools.source.front_matter import Document
from tests.support.banks import UNIT, change, copy_bank


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_bank(tmp_path)


def build(bank: Path) -> Unit:
    unit = check_unit(bank, UNIT, {}).unit
    assert unit is not None
    return unit


@pytest.mark.parametrize(
    ("written", "exact"),
    [
        (8, 8),
        (8.0, 8),
        ("8", 8),
        ("1/2", Fraction(1, 2)),
        ("1 1/2", Fraction(3, 2)),
        ("12 3/4", Fraction(51, 4)),
        ("1/3", Fraction(1, 3)),
    ],
)
def test_counts_are_exact(written: int | float | str, exact: int | Fraction) -> None:
    assert counts(written) == exact
    assert isinstance(counts(written), Fraction)


@pytest.mark.parametrize(("written", "number"), [(None, None), (4, 4), (4.0, 4), (0, 0)])
def test_whole_numbers_are_whole(written: int | float | None, number: int | None) -> None:
    assert whole(written) == number
    assert not isinstance(whole(written), float)


def test_every_lesson_is_there_in_order(bank: Path) -> None:
    unit = build(bank)
    assert [lesson.number for lesson in unit.lessons] == list(range(1, len(unit.lessons) + 1))
    assert unit.lessons[0].file == f"units/{UNIT}/lesson-1.md"
    assert unit.slug == UNIT


def test_lessons_are_put_in_the_order_of_their_numbers(bank: Path) -> None:
    change(bank / "units" / UNIT / "lesson-1.md", "\nlesson: 1\n", "\nlesson: 12\n")
    assert [lesson.number for lesson in build(bank).lessons][-1] == 12


def leaves(value: Any) -> Iterator[Any]:
    """Every text and number somewhere in plain data or dataclasses."""
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        for one in dataclasses.fields(value):
            yield from leaves(getattr(value, one.name))
    elif isinstance(value, dict):
        for name, inner in value.items():
            yield name
            yield from leaves(inner)
    elif isinstance(value, list | tuple):
        for inner in value:
            yield from leaves(inner)
    else:
        yield value


def texts(value: Any) -> set[str]:
    return {leaf for leaf in leaves(value) if isinstance(leaf, str) and " " in leaf}


def test_no_words_an_author_wrote_are_lost(bank: Path) -> None:
    folder = read_unit_folder(bank, UNIT)
    unit = build(bank)
    assert isinstance(folder.unit, Document)
    built = texts(unit)
    for document in (folder.unit, *folder.lessons):
        written = texts(document.data)
        # the form, a length in seconds and the like become numbers and tuples; so does 1 1/2
        words = {w for w in written - built if not re.fullmatch(r"\d+ \d/\d", w)}
        lost = {w for w in words if " to " not in w and not w.isupper()}
        assert lost == set()
        assert document.body in built
    assert len(built) > 300


def test_a_unit_cannot_be_changed(bank: Path) -> None:
    unit = build(bank)
    with pytest.raises(dataclasses.FrozenInstanceError):
        unit.title = "Another"  # type: ignore[misc]


def test_whole_numbers_written_with_a_point_are_whole(bank: Path) -> None:
    """JSON Schema Validation 2020-12, section 6.1.1: 1.0 is an integer."""
    folder = bank / "units" / UNIT
    change(folder / "unit.md", "    years: [3, 4]\n", "    years: [3.0, 4]\n")
    change(folder / "unit.md", "\n  tempo: 108\n", "\n  tempo: 108.0\n")
    unit = build(bank)
    assert unit.years[0].years == ("3", "4")
    assert [type(n) for n in leaves(unit) if isinstance(n, float)] == []


def test_a_step_without_a_least_time_is_not_squeezed(bank: Path) -> None:
    file = bank / "units" / UNIT / "lesson-1.md"
    text = file.read_text(encoding="utf-8")
    file.write_text(re.sub(r"    least: .*\n", "", text), encoding="utf-8")
    for step in build(bank).lessons[0].steps:
        assert step.least == step.minutes


def test_what_the_unit_says_for_the_safety_of_all_comes_behind_each_lessons_own(bank: Path) -> None:
    folder = bank / "units" / UNIT
    unit, lesson = folder / "unit.md", folder / "lesson-2.md"
    said = "safety:\n  - Shoes that grip.\n  - The floor is clear.\n"
    unit.write_text(unit.read_text(encoding="utf-8").replace("\nkit:", f"\n{said}kit:", 1))
    fields, rest = lesson.read_text(encoding="utf-8").split("\nsafety:\n")
    lesson.write_text(f"{fields}\n---\n{rest.split('---', 1)[1]}", encoding="utf-8")
    first, second, *_ = build(bank).lessons
    assert second.safety == ("Shoes that grip.", "The floor is clear.")
    assert first.safety[-2:] == second.safety
    assert len(first.safety) > 2
    assert first.standing == second.standing == 2


def test_a_section_without_a_sound_has_the_dances(bank: Path) -> None:
    dance = build(bank).dance
    assert dance.sections["A"].sound is dance.sound
    assert dance.sections["B"].sound != dance.sound


def test_kinds_of_section(bank: Path) -> None:
    sections = build(bank).dance.sections
    assert {letter: s.kind for letter, s in sections.items()} == {
        "A": "counted",
        "B": "counted",
        "C": "counted",
        "D": "improvised",
        "A'": "counted",
    }
    improvised = sections["D"].seconds
    assert improvised is not None
    assert 0 < improvised.least <= improvised.most


@pytest.mark.parametrize("missing", ["unit.md", "lesson-1.md"])
def test_a_unit_with_a_broken_file_is_not_built(bank: Path, missing: str) -> None:
    (bank / "units" / UNIT / missing).write_bytes(b"\xff")
    assert check_unit(bank, UNIT, {}).unit is None


def test_a_unit_with_a_file_out_of_shape_is_not_built(bank: Path) -> None:
    change(bank / "units" / UNIT / "lesson-2.md", "\nlesson: 2\n", "\nlesson: 13\n")
    assert check_unit(bank, UNIT, {}).unit is None


def test_media_are_listed_with_their_sizes(bank: Path) -> None:
    media = bank / "units" / UNIT / "media"
    shutil.copy(media / "low-tide.svg", media / "copy.svg")
    assert build(bank).media["media/copy.svg"] == (media / "low-tide.svg").stat().st_size


def test_a_part_of_the_body_that_pupils_choose_is_known_as_chosen(bank: Path) -> None:
    unit = bank / "units" / UNIT / "unit.md"
    change(unit, "body_part: arms, dynamics: [dab]", "body_part: one knee, dynamics: [dab]")
    actions = [a for m in build(bank).dance.motifs.values() for a in m.actions]
    assert "one knee" in {a.body_part for a in actions}
    assert not any(a.chosen for a in actions)
    first = "\nchoices:\n"
    change(
        unit,
        first,
        f"{first}  snap-part: {{what: The part that snaps, from: [one knee, an elbow], "
        "by: each pupil, if_not: One knee.}\n",
    )
    actions = [a for m in build(bank).dance.motifs.values() for a in m.actions]
    assert [a.body_part for a in actions if "body_part" in a.chosen] == ["one knee"]
