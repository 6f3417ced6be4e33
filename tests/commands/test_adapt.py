"""`adapt` makes a draft that keeps the line, the credits and the licence, or says why it may not.

CC BY 4.0, section 3(a)(1): creators, notice, licence and changes stay named; section 3(b) of the
share-alike licences: the same licence; no changed copy under the no-derivatives licences.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools import cli
from build_tools.adapting.adapt import MOST_EARLIER
from build_tools.checking.check_bank import check_folder
from build_tools.model.unit import Ancestor
from tests.support.banks import BASE_UNIT, change, copy_base


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


@pytest.fixture
def unit(bank: Path) -> Path:
    return bank / "units" / BASE_UNIT


def adapt(bank: Path, *given: str) -> int:
    return cli.main(["adapt", *given, "--content", str(bank)])


def test_it_is_a_draft_of_ones_own_with_one_place_to_write(bank: Path, unit: Path) -> None:
    change(unit / "unit.md", "\nlanguage:", "\ncredit: A teacher of year 4\nlanguage:")
    assert adapt(bank, BASE_UNIT, "our-boats", "--title", 'Our "boats"', "--publisher", "Us") == 0
    report = check_folder(bank)
    assert report.bank is not None
    units = {one.slug: one for one in report.bank.units}
    old, new = units[BASE_UNIT], units["our-boats"]
    assert (new.title, new.publisher, new.edition, new.draft) == (
        'Our "boats"',
        "Us",
        "1.0.0",
        True,
    )
    assert (new.licence, new.issued, new.credit) == (old.licence, report.bank.as_of, None)
    assert not new.tried.taught
    parent = new.adapted_from
    assert parent is not None
    assert (parent.title, parent.publisher, parent.edition) == (
        old.title,
        old.publisher,
        old.edition,
    )
    assert (parent.licence, parent.credit, parent.earlier) == (old.licence, old.credit, ())
    assert new.stimulus == old.stimulus
    assert [one.steps for one in new.lessons] == [one.steps for one in old.lessons]
    own = [(p.rule, p.file) for p in report.problems]
    assert own == [("open-place", "units/our-boats/unit.md")]


def test_the_line_goes_back_through_every_unit(bank: Path) -> None:
    assert adapt(bank, BASE_UNIT, "second", "--publisher", "Two") == 0
    assert adapt(bank, "second", "third", "--publisher", "Three") == 0
    assert adapt(bank, "third", "fourth", "--publisher", "Four") == 0
    report = check_folder(bank)
    assert report.bank is not None
    units = {one.slug: one for one in report.bank.units}
    parent = units["fourth"].adapted_from
    assert parent is not None
    assert parent.publisher == "Three"
    first = units[BASE_UNIT]
    assert parent.earlier == (
        Ancestor(units["second"].title, "Two", "1.0.0", first.licence),
        Ancestor(first.title, first.publisher, first.edition, first.licence),
    )


def test_a_line_too_long_to_be_named_is_refused(
    bank: Path, unit: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    one = "{title: Boats, publisher: Some, edition: 1.0.0, licence: CC-BY-4.0"
    earlier = ", ".join(f"{one}}}" for _ in range(MOST_EARLIER - 1))
    line = f"adapted_from: {one}, changes: Words, earlier: [{earlier}]}}"
    change(unit / "unit.md", "\nlanguage:", f"\n{line}\nlanguage:")
    assert adapt(bank, BASE_UNIT, "last", "--publisher", "Us") == 0
    assert not check_folder(bank).of_grade("error")
    capsys.readouterr()
    assert adapt(bank, "last", "one-more", "--publisher", "Us") == 1
    assert f"comes from {MOST_EARLIER + 1} units" in capsys.readouterr().out
    assert not (bank / "units" / "one-more").exists()


@pytest.mark.parametrize(
    ("own", "wanted", "words"),
    [
        ("CC-BY-ND-4.0", None, "allows no changed copy to be shared"),
        ("CC-BY-NC-ND-4.0", "CC0-1.0", "allows no changed copy to be shared"),
        ("CC-BY-SA-4.0", "CC-BY-4.0", "cannot be under CC-BY-4.0: choose CC-BY-SA-4.0"),
        ("CC-BY-4.0", "my own", "cannot be under my own"),
        ("CC-BY-4.0", "CC0-1.0", "cannot be under CC0-1.0"),
    ],
)
def test_what_the_licence_forbids_is_refused_in_words(
    bank: Path,
    unit: Path,
    capsys: pytest.CaptureFixture[str],
    own: str,
    wanted: str | None,
    words: str,
) -> None:
    change(unit / "unit.md", "\nlicence: CC-BY-4.0\n", f"\nlicence: {own}\n")
    more = ["--licence", wanted] if wanted else []
    assert adapt(bank, BASE_UNIT, "ours", *more) == 1
    said = capsys.readouterr().out
    assert words in said
    assert "nothing was written" in said
    assert [one.name for one in (bank / "units").iterdir()] == [BASE_UNIT]


def test_a_picture_that_the_new_licence_cannot_hold_is_named(
    bank: Path, unit: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    change(unit / "unit.md", "\n      licence: CC-BY-4.0\n", "\n      licence: CC-BY-SA-4.0\n")
    assert adapt(bank, BASE_UNIT, "ours", "--licence", "CC-BY-NC-4.0") == 1
    assert "`A paper boat` in it is under CC-BY-SA-4.0" in capsys.readouterr().out


def test_a_name_that_is_taken_or_cannot_be_used(
    bank: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for slug, words in ((BASE_UNIT, "there is a unit"), ("Our Boats", "cannot name a folder")):
        assert adapt(bank, BASE_UNIT, slug) == 2
        assert words in capsys.readouterr().err


def test_a_unit_that_is_not_there_or_not_sound(
    bank: Path, unit: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert adapt(bank, "no-boats", "ours") == 1
    assert "there is no sound unit no-boats" in capsys.readouterr().out
    (unit / "lesson-1.md").write_text("---\nlesson: [\n---\n", encoding="utf-8")
    assert adapt(bank, BASE_UNIT, "ours") == 1
    assert "lesson-1.md" in capsys.readouterr().out
