"""`plan` says the plan and writes it into a folder of its own, or says in plain words why not."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools import cli
from tests.support.banks import copy_bank
from tests.support.built_sites import files


@pytest.fixture(scope="module")
def bank(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return copy_bank(tmp_path_factory.mktemp("plan"))


def run(bank: Path, out: Path, *more: str) -> int:
    site = out.with_name("none")
    return cli.main(["plan", "--content", str(bank), "--out", str(out), "--site", str(site), *more])


def test_a_plan_is_said_and_written_the_same_each_time(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out, term = tmp_path / "plan", ("--term", "Autumn: 6 from 2026-09-07, 3")
    assert run(bank, out, "--year", "4", *term) == 0
    said = capsys.readouterr().out
    assert "1. Autumn, 6 lessons: Twelve hours in a rock pool (6 lessons)" in said
    assert "2. Autumn, 3 lessons: nothing fits" in said
    before = files(out)
    assert {"plan.html", "plan.ics"} <= set(before)
    assert run(bank, out, "--year", "4", *term) == 0
    assert files(out) == before
    page = before["plan.html"].decode()
    assert "7 September 2026" in page
    assert "--term &#34;Autumn: 6 from 2026-09-07, 3&#34;" in page


def test_a_topic_that_nobody_teaches_stops_it_and_the_last_plan_stands(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "plan"
    assert run(bank, out, "--year", "3") == 0
    before = files(out)
    assert "plan.ics" not in before
    assert run(bank, out, "--year", "3", "--topic", "romans") == 1
    assert "No unit for Year 3 (England) teaches romans" in capsys.readouterr().out
    assert files(out) == before


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (("--year", "9"), "no unit is for year 9"),
        (("--year", "4", "--topic", "rivver"), "did you mean rivers"),
        (("--year", "4", "--topic", "9=rivers"), "there is no slot 9"),
        (("--year", "4", "--topic", "?"), "not understood"),
        (("--year", "4", "--unit", "rock-pol"), "did you mean rock-pool"),
        (("--year", "4", "--term", "Autumn"), "is no term"),
        (("--year", "4", "--term", 'A"utumn: 6'), "is no term"),
        (("--year", "4", "--term", "Autumn: six"), "is no slot"),
        (("--year", "4", "--term", "Autumn: 6 from soon"), "is no day"),
        (("--year", "4", "--term", "Autumn: " + "6, " * 12 + "6"), "too many"),
        (("--year", "4", "--no-lesson", "2026-02-30"), "is no day"),
    ],
)
def test_what_cannot_be_asked_is_told(
    bank: Path, tmp_path: Path, typed: tuple[str, ...], said: str,
    capsys: pytest.CaptureFixture[str],
) -> None:  # fmt: skip
    assert run(bank, tmp_path / "plan", *typed) == 2
    assert said in capsys.readouterr().err
    assert not (tmp_path / "plan").exists()


def test_a_folder_with_something_else_is_left_alone(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "plan.html").write_text("mine", encoding="utf-8")
    (tmp_path / "letters.txt").write_text("mine", encoding="utf-8")
    assert run(bank, tmp_path, "--year", "4") == 2
    assert "something other than a plan" in capsys.readouterr().err


def test_a_topic_is_known_by_its_near_words(bank: Path, tmp_path: Path) -> None:
    assert run(bank, tmp_path / "plan", "--year", "4", "--topic", "1=cliffs") == 0
