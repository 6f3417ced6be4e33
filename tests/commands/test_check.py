"""`check` from the command line: exit codes, places, data for programs."""

from __future__ import annotations

import json
import os
import shutil
from pathlib import Path
from typing import Any

import pytest

from build_tools import cli
from build_tools.use_cases import check
from tests.support.banks import BASE_UNIT, change, copy_base

LESSON = f"units/{BASE_UNIT}/lesson-1.md"


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


class Said:
    """What one call printed, and its exit code."""

    def __init__(self, code: int, out: str, err: str) -> None:
        self.code, self.out, self.err = code, out, err

    @property
    def data(self) -> list[dict[str, Any]]:
        loaded = json.loads(self.out)
        assert isinstance(loaded, list)
        return loaded


@pytest.fixture
def run(bank: Path, capsys: pytest.CaptureFixture[str]) -> Any:
    def call(*arguments: str | Path, content: Path = bank) -> Said:
        code = cli.main(["check", "--content", str(content), *map(str, arguments)])
        return Said(code, *capsys.readouterr())

    return call


def break_minutes(bank: Path) -> int:
    return change(bank / LESSON, "\nminutes: 40\n", "\nminutes: 400\n") + 1


def raise_question(bank: Path) -> None:
    """Make one rule of the bank a question, and break it."""
    with (bank / "bank.yml").open("a", encoding="utf-8") as file:
        file.write("\ngrades: {minutes-do-not-add-up: question}\n")
    change(bank / LESSON, "\nminutes: 40\n", "\nminutes: 45\n")


def test_a_sound_bank(run: Any) -> None:
    said = run()
    assert (said.code, said.out, said.err) == (0, "no problems\n", "")
    assert run("--json").data == []
    assert run("--strict").code == 0


def test_an_error(bank: Path, run: Any) -> None:
    line = break_minutes(bank)
    said = run()
    assert said.code == 1
    first, second, last = said.out.splitlines()
    assert first == (
        f"content/{LESSON}:{line}:1: error: `minutes` is 400, and 120 is the most [wrong-value]"
    )
    assert second == "    to mend it: write 120 or less"
    assert last == "1 error"
    assert "rules were not run" in said.err


def test_data_for_programs(bank: Path, run: Any) -> None:
    line = break_minutes(bank)
    change(bank / "safety.md", "\ntitle:", "\ntilte:")
    said = run("--json")
    assert said.code == 1
    assert said.data == [
        {
            "rule": "unknown-field",
            "severity": "error",
            "file": "content/safety.md",
            "line": 2,
            "column": 1,
            "message": "`tilte` is not a field that is read here",
            "help": "did you mean `title`?",
        },
        {
            "rule": "wrong-value",
            "severity": "error",
            "file": f"content/{LESSON}",
            "line": line,
            "column": 1,
            "message": "`minutes` is 400, and 120 is the most",
            "help": "write 120 or less",
        },
    ]
    assert "rules were not run" in said.err
    assert "rules were not run" not in said.out


def test_data_is_sorted_by_file_line_and_column(bank: Path, run: Any) -> None:
    folder = bank / "units" / BASE_UNIT
    for name in ("lesson-2.md", "lesson-1.md", "unit.md"):
        text = (folder / name).read_text(encoding="utf-8")
        (folder / name).write_text(
            text.replace("title:", "tilte:", 1).replace("\n---\n", "\nzzz: 1\n---\n", 1),
            encoding="utf-8",
        )
    found = [(e["file"], e["line"], e["column"]) for e in run("--json").data]
    assert len(found) == 6
    assert found == sorted(found)


def test_questions_pass_unless_strict(bank: Path, run: Any) -> None:
    raise_question(bank)
    said = run()
    assert said.code == 0
    assert "question:" in said.out
    assert said.out.endswith("1 question\n")
    assert run("--strict").code == 1
    assert [e["severity"] for e in run("--strict", "--json").data] == ["question"]


def test_notes_pass_even_when_strict(bank: Path, run: Any) -> None:
    raise_question(bank)
    change(bank / "bank.yml", "question}", "note}")
    said = run("--strict")
    assert said.code == 0
    assert said.out.endswith("1 note\n")


def test_a_grade_of_no_rule(bank: Path, run: Any) -> None:
    raise_question(bank)
    change(bank / "bank.yml", "minutes-do-not-add-up", "minutes-do-not-ad-up")
    found = [e for e in run("--json").data if e["file"] == "content/bank.yml"]
    assert [e["rule"] for e in found] == ["unknown-name"]
    assert found[0]["help"] == "did you mean `minutes-do-not-add-up`?"


def test_a_path_limits_what_is_reported_and_not_what_is_read(bank: Path, run: Any) -> None:
    other = bank / "units" / "other"
    shutil.copytree(bank / "units" / BASE_UNIT, other)
    break_minutes(bank)
    change(other / "lesson-2.md", "\nlesson: 2\n", "\nlesson: 1\n")
    everything = run("--json").data
    for path in (bank / LESSON, other, other / "lesson-2.md", bank / "units", bank, "."):
        if path == ".":
            path = bank
        said = run("--json", path)
        start = f"content/{Path(path).relative_to(bank).as_posix()}".removesuffix("/.")
        assert said.data == [
            e for e in everything if e["file"] == start or e["file"].startswith(f"{start}/")
        ]
        assert said.data, path
    only_sound = run(bank / "bank.yml")
    assert (only_sound.code, only_sound.out) == (0, "no problems\n")
    # all is read: the rules that could not run elsewhere are still counted
    assert "rules were not run" in only_sound.err


def test_several_paths(bank: Path, run: Any) -> None:
    break_minutes(bank)
    change(bank / "safety.md", "\ntitle:", "\ntilte:")
    change(bank / "bank.yml", "\nname:", "\nnaem:")
    said = run("--json", bank / LESSON, bank / "safety.md")
    assert [e["file"] for e in said.data] == ["content/safety.md", f"content/{LESSON}"]


def test_a_path_from_the_folder_one_is_in(
    bank: Path, run: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    break_minutes(bank)
    monkeypatch.chdir(bank / "units" / BASE_UNIT)
    assert run("lesson-1.md").code == 1
    assert run(".").code == 1
    assert run("lesson-2.md").code == 0
    assert run("../../bank.yml").code == 0


def test_one_name_that_starts_like_another(bank: Path, run: Any) -> None:
    break_minutes(bank)
    (bank / "units" / BASE_UNIT / "lesson-1").write_bytes(b"x")
    found = run("--json", bank / "units" / BASE_UNIT / "lesson-1").data
    assert [e["rule"] for e in found] == ["file-name-odd"]


@pytest.mark.parametrize(
    "path", ["nowhere.md", "a" * 5_000, "units/nowhere", "nowhere/../bank.yml"]
)
def test_a_path_that_is_not_there(bank: Path, run: Any, path: str) -> None:
    said = run(bank / path)
    assert (said.code, said.out) == (2, "")
    assert said.err.startswith("there is no file or folder ")


def test_a_path_that_leads_in_a_circle(run: Any, tmp_path: Path) -> None:
    (tmp_path / "circle").symlink_to("circle")
    assert run(tmp_path / "circle").code == 2


def test_a_path_outside(run: Any, tmp_path: Path) -> None:
    for path in (tmp_path, "/", os.fspath(tmp_path / "content" / "..")):
        said = run(path)
        assert (said.code, said.out) == (2, "")
        assert "lies outside" in said.err


@pytest.mark.parametrize("content", ["nowhere", "bank.yml", "a" * 5_000])
def test_no_content(bank: Path, run: Any, content: str) -> None:
    said = run(content=bank / content)
    assert (said.code, said.out) == (2, "")
    assert said.err.startswith("there is no folder ")


@pytest.mark.parametrize("arguments", [["--jsn"], ["--strict=yes"]])
def test_an_option_that_is_not_there(run: Any, arguments: list[str]) -> None:
    with pytest.raises(SystemExit) as stop:
        run(*arguments)
    assert stop.value.code == 2


def test_a_bug_has_its_own_exit_code(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError("planted")

    monkeypatch.setattr(check, "quick_check", broken)
    said = run()
    assert (said.code, said.out) == (3, "")
    assert "ZeroDivisionError: planted" in said.err
    assert said.err.endswith("This is a fault of the bank's software, not of your units.\n")


def test_an_interruption_is_no_bug(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupted(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(check, "quick_check", interrupted)
    said = run()
    assert (said.code, said.out, said.err) == (130, "", "")


def test_a_link_to_the_content_is_followed(bank: Path, run: Any, tmp_path: Path) -> None:
    break_minutes(bank)
    (tmp_path / "link").symlink_to(bank)
    said = run("--json", tmp_path / "link" / LESSON, content=tmp_path / "link")
    assert [e["file"] for e in said.data] == [f"content/{LESSON}"]


def test_names_from_any_language_are_printed(bank: Path, run: Any) -> None:
    (bank / "units" / "été").mkdir()
    said = run("--json")
    assert said.data[0]["file"] == "content/units/été"
    assert "units/été" in run().out


def test_rules_not_run_are_no_matter_beside_questions_alone(bank: Path, run: Any) -> None:
    lessons = sorted((bank / "units" / BASE_UNIT).glob("lesson-*.md"))
    change(lessons[1], "joins: [A, B]", "dances: [A, B]")
    said = run()
    assert "question:" in said.out
    assert "not run" not in said.err
