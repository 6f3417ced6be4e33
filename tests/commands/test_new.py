"""`new` writes a whole draft or nothing, and says in plain words why not."""

from __future__ import annotations

import io
import sys
from pathlib import Path
from typing import Any

import pytest

from build_tools import cli
from build_tools.checking.check_bank import check_folder
from tests.support.banks import BASE_UNIT, copy_base

ANSWERS = {
    "--title": "Harbour lights",
    "--stimulus": "A picture of a harbour at night",
    "--years": "England:3,4",
    "--lessons": "4",
    "--minutes": "45",
    "--pattern": "one-theme",
}


class Terminal(io.StringIO):
    """Somebody who types these lines."""

    def isatty(self) -> bool:
        return True


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


@pytest.fixture
def run(bank: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> Any:
    def call(
        slug: str = "harbour", answers: dict[str, str] = ANSWERS, typed: str | None = None
    ) -> tuple[int, str, str]:
        monkeypatch.setattr(sys, "stdin", io.StringIO() if typed is None else Terminal(typed))
        options = [part for pair in answers.items() for part in pair]
        code = cli.main(["new", slug, *options, "--content", str(bank)])
        return code, *capsys.readouterr()

    return call


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def units(bank: Path) -> list[str]:
    return names(bank / "units")


def without(option: str) -> dict[str, str]:
    return {name: value for name, value in ANSWERS.items() if name != option}


def test_it_writes_a_draft_and_says_what_to_do_next(run: Any, bank: Path) -> None:
    code, out, err = run()
    assert (code, err) == (0, "")
    folder = bank / "units" / "harbour"
    assert names(folder) == [*(f"lesson-{n}.md" for n in (1, 2, 3, 4)), "unit.md"]
    assert units(bank) == ["harbour", BASE_UNIT]
    report = check_folder(bank)
    places = [p for p in report.problems if p.rule == "open-place"]
    assert f"{len(places)} places are still to write" in out
    assert f"python3 build_tools check {folder.as_posix()} --content {bank.as_posix()}" in out
    assert "take `draft: true` out" in out
    assert "draft: true\n" in (folder / "unit.md").read_text(encoding="utf-8")


def test_the_day_is_the_banks_own(run: Any, bank: Path) -> None:
    run()
    as_of = next(
        line for line in (bank / "bank.yml").read_text(encoding="utf-8").split("\n")
        if line.startswith("as_of: ")
    )  # fmt: skip
    text = (bank / "units" / "harbour" / "unit.md").read_text(encoding="utf-8")
    assert f'issued: "{as_of.removeprefix("as_of: ")}"' in text


@pytest.mark.parametrize("option", ANSWERS)
def test_a_missing_answer_names_its_option(run: Any, bank: Path, option: str) -> None:
    code, out, err = run(answers=without(option))
    assert (code, out) == (2, "")
    assert err.startswith(f"{option} is missing. ")
    assert units(bank) == [BASE_UNIT]


def test_on_a_terminal_it_asks_until_the_answer_can_be_used(run: Any, bank: Path) -> None:
    typed = "Harbour lights\nA picture\nsee\nEngland:3\n12\n4\n45\n2\n"
    code, out, err = run(answers={}, typed=typed)
    assert (code, err) == (0, ""), out
    assert "`12` lessons: write a whole number from 1 to 8" in out
    assert "2. one-theme: make one motif" in out
    assert units(bank) == ["harbour", BASE_UNIT]


def test_every_missing_answer_is_named_at_once(run: Any) -> None:
    _, _, err = run(answers={"--title": "Harbour lights"})
    assert err.startswith("--stimulus is missing. ")
    assert err.endswith("Missing too: --years, --lessons, --minutes, --pattern.\n")


def test_who_only_presses_enter_gets_what_is_usual(run: Any, bank: Path) -> None:
    code, out, err = run(answers={}, typed="Harbour lights\nA picture\n\nYears 5-6\n\n\n\n")
    assert (code, err) == (0, ""), out
    assert "[Enter for 4]" in out
    assert len(names(bank / "units" / "harbour")) == 5
    text = (bank / "units" / "harbour" / "unit.md").read_text(encoding="utf-8")
    assert "- nation: England\n    years: 5, 6\n" in text


def test_the_same_answers_give_the_same_files(run: Any, bank: Path) -> None:
    run("harbour")
    run("harbour-again")
    one, other = (bank / "units" / slug for slug in ("harbour", "harbour-again"))
    for name in names(one):
        first = (one / name).read_bytes().replace(b"topics: harbour\n", b"")
        assert first == (other / name).read_bytes().replace(b"topics: harbour-again\n", b"")


def test_someone_who_stops_answering_leaves_nothing(run: Any, bank: Path) -> None:
    code, _, err = run(answers={}, typed="Harbour lights\n")
    assert code == 2
    assert err == "--stimulus is missing, and nothing was written\n"
    assert units(bank) == [BASE_UNIT]


@pytest.mark.parametrize(
    "slug", ["Harbour", "har bour", "../harbour", "a--b", "con", "x" * 41, "", "hafen-ü", "a/b"]
)
def test_an_odd_name_is_refused(run: Any, bank: Path, slug: str) -> None:
    code, out, err = run(slug)
    assert (code, out) == (2, "")
    assert "small letters, figures and single hyphens" in err
    assert units(bank) == [BASE_UNIT]


def test_a_unit_that_is_there_is_left_alone(run: Any, bank: Path) -> None:
    before = (bank / "units" / BASE_UNIT / "unit.md").read_bytes()
    code, _, err = run(BASE_UNIT)
    assert code == 2
    assert err.startswith(f"there is a unit {BASE_UNIT} already")
    assert (bank / "units" / BASE_UNIT / "unit.md").read_bytes() == before


@pytest.mark.parametrize("title", ["Boats <b>now", "a" * 61, "ab"])
def test_a_title_that_cannot_be_used(run: Any, bank: Path, title: str) -> None:
    code, _, err = run(answers={**ANSWERS, "--title": title})
    assert code == 2
    assert "title" in err
    assert units(bank) == [BASE_UNIT]


@pytest.mark.parametrize("title", ["Wind: rise and fall", "- 1", 'Say "go" # now', "no", "{a}"])
def test_a_title_of_any_other_kind_is_written_as_it_is(run: Any, bank: Path, title: str) -> None:
    code, _, err = run(answers={**ANSWERS, "--title": title, "--stimulus": title + " x"})
    if len(title) < 3:
        assert code == 2
        return
    assert code == 0, err
    report = check_folder(bank)
    assert report.bank is not None
    assert title in {unit.title for unit in report.bank.units}


def test_a_bank_whose_own_files_are_broken(run: Any, bank: Path) -> None:
    (bank / "bank.yml").write_text("format: 2\n", encoding="utf-8")
    code, _, err = run()
    assert code == 2
    assert "bank.yml needs mending first" in err
    (bank / "bank.yml").unlink()
    assert run()[0] == 2
    assert units(bank) == [BASE_UNIT]


def test_a_place_that_cannot_be_written(run: Any, bank: Path) -> None:
    for path in sorted((bank / "units").rglob("*"), reverse=True):
        path.rmdir() if path.is_dir() else path.unlink()
    (bank / "units").rmdir()
    (bank / "units").write_text("a file", encoding="utf-8")
    code, _, err = run()
    assert code == 2
    assert "nothing can be written in" in err


def test_a_crash_in_the_middle_leaves_nothing(
    run: Any, bank: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write = Path.write_text

    def crashing(self: Path, *args: Any, **named: Any) -> int:
        if self.name == "lesson-3.md":
            raise OSError(28, "No space left on device")
        return write(self, *args, **named)

    monkeypatch.setattr(Path, "write_text", crashing)
    code, _, err = run()
    assert code == 2
    assert "No space left on device" in err
    assert units(bank) == [BASE_UNIT]


def test_a_bank_without_units_gets_its_folder(run: Any, tmp_path: Path, bank: Path) -> None:
    (bank / "units").rename(tmp_path / "elsewhere")
    assert run()[0] == 0
    assert units(bank) == ["harbour"]


def test_a_topic_is_found_by_its_near_words(run: Any, bank: Path) -> None:
    with (bank / "vocabulary" / "topics.yml").open("a", encoding="utf-8") as file:
        file.write("\nports: {also: [harbour, docks]}\n")
    _, out, _ = run()
    assert "topics found by its words: ports" in out
    report = check_folder(bank)
    assert {p.rule for p in report.problems if "/harbour/" in p.file} == {"open-place"}
