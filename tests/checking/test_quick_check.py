"""The quick check says what the whole check says, and reads only what changed."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from pathlib import Path

import pytest

from build_tools.checking import check_bank as pipeline
from build_tools.checking import quick_check as module
from build_tools.checking import stamps
from build_tools.checking.check_bank import check_folder
from build_tools.checking.quick_check import quick_check
from tests.support.banks import change, copy_base
from tests.support.copied_software import copied_software

UNIT = "units/paper-boats"
HOUR = 3_600_000_000_000


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


@pytest.fixture
def kept(tmp_path: Path) -> Path:
    return tmp_path / "kept" / "one.json"


def grow_old(folder: Path) -> None:
    """Every file an hour older, so that its size and time are trusted."""
    for path in folder.rglob("*"):
        if path.is_file():
            time = path.stat().st_mtime_ns - HOUR
            os.utime(path, ns=(time, time))


def read_units(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The units that are read from now on, as they are read."""
    seen: list[str] = []
    check_unit = pipeline.check_unit

    def watched(root: Path, slug: str, grades: object) -> object:
        seen.append(slug)
        return check_unit(root, slug, grades)  # type: ignore[arg-type]

    monkeypatch.setattr(module, "check_unit", watched)
    return seen


def spoil(path: Path) -> None:
    path.write_text(path.read_text("utf-8").replace("\nminutes: ", "\nminutes: 1", 1), "utf-8")


def test_it_says_what_the_whole_check_says(bank: Path, kept: Path) -> None:
    for step in range(3):
        whole = check_folder(bank)
        for keeping in (None, kept):
            quick = quick_check(bank, keeping)
            assert (quick.problems, quick.skipped) == (whole.problems, whole.skipped)
        spoil(bank / UNIT / f"lesson-{step + 1}.md")
    (bank / UNIT / "lesson-2.md").write_bytes(b"\xff")
    assert quick_check(bank, kept).problems == check_folder(bank).problems


def test_nothing_is_read_again_where_nothing_changed(
    bank: Path, kept: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    grow_old(bank)
    first = quick_check(bank, kept)
    seen = read_units(monkeypatch)
    assert quick_check(bank, kept) == first
    assert seen == []


def test_a_changed_file_is_read_again(
    bank: Path, kept: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    grow_old(bank)
    quick_check(bank, kept)
    seen = read_units(monkeypatch)
    spoil(bank / UNIT / "lesson-1.md")
    assert any(p.file == f"{UNIT}/lesson-1.md" for p in quick_check(bank, kept).problems)
    assert seen == ["paper-boats"]


def test_a_change_of_the_same_size_and_time_is_found_while_files_are_young(
    bank: Path, kept: Path
) -> None:
    path = bank / UNIT / "lesson-1.md"
    ahead = time.time_ns() + HOUR  # as from another computer's clock
    os.utime(path, ns=(ahead, ahead))
    before = quick_check(bank, kept)
    stat, text = path.stat(), path.read_text("utf-8")
    path.write_text(text.replace("\nlesson: 1\n", "\nlesson: 9\n", 1), "utf-8")
    os.utime(path, ns=(stat.st_atime_ns, stat.st_mtime_ns))
    assert path.stat().st_size == stat.st_size
    assert quick_check(bank, kept) != before


def test_a_change_of_the_same_size_and_time_is_found_in_an_old_file(
    bank: Path, kept: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """As by a program that puts an earlier copy back with its time. Windows cannot tell it."""
    grow_old(bank)
    before = quick_check(bank, kept)
    # what was kept is older than any doubt about the files
    later = time.time_ns() + HOUR
    os.utime(kept, ns=(later, later))
    digests: list[str] = []
    digest = stamps._digest_if_read

    def watched(entry: os.DirEntry[str]) -> str:
        digests.append(entry.name)
        return digest(entry)

    monkeypatch.setattr(stamps, "_digest_if_read", watched)
    assert quick_check(bank, kept) == before
    assert digests == []
    path = bank / UNIT / "lesson-1.md"
    stat, text = path.stat(), path.read_text("utf-8")
    path.write_text(text.replace("\nlesson: 1\n", "\nlesson: 9\n", 1), "utf-8")
    os.utime(path, ns=(stat.st_atime_ns, stat.st_mtime_ns))
    assert path.stat().st_size == stat.st_size
    assert quick_check(bank, kept).problems == check_folder(bank).problems
    assert quick_check(bank, kept) != before


def test_a_file_written_anew_with_the_same_words_is_not_read_again(
    bank: Path, kept: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    grow_old(bank)
    quick_check(bank, kept)
    seen = read_units(monkeypatch)
    os.utime(bank / UNIT / "lesson-1.md")
    quick_check(bank, kept)
    assert seen == []


CHECK = """
import sys
from pathlib import Path
from build_tools.checking.quick_check import quick_check
for problem in quick_check(Path(sys.argv[1]), Path(sys.argv[2])).problems:
    print(problem.message)
"""


def test_what_is_kept_is_thrown_away_when_a_rule_changes(
    bank: Path, kept: Path, tmp_path: Path
) -> None:
    software = copied_software(tmp_path / "software", "build_tools", "schema")
    change(bank / UNIT / "lesson-1.md", "\nminutes: 40\n", "\nminutes: 41\n")
    grow_old(bank)

    def messages() -> str:
        done = subprocess.run(
            [sys.executable, "-c", CHECK, str(bank), str(kept)],
            env=dict(os.environ) | {"PYTHONPATH": str(software), "PYTHONUTF8": "1"},
            cwd=software,
            capture_output=True,
            encoding="utf-8",
            check=True,
        )
        return done.stdout

    assert "its steps add up to" in messages()
    rule = software / "build_tools" / "rules" / "lesson" / "minutes_do_not_add_up.py"
    words = rule.read_text("utf-8")
    assert "add up to" in words
    rule.write_text(words.replace("add up to", "come to"), "utf-8")
    assert "its steps come to" in messages()


@pytest.mark.parametrize(
    "damage",
    ["", "{", "[]", "null", '{"version": 1}', '{"version": "x", "units": {}}', '{"units": []}'],
)
def test_what_is_kept_may_be_broken(bank: Path, kept: Path, damage: str) -> None:
    first = quick_check(bank, kept)
    kept.write_text(damage, "utf-8")
    assert quick_check(bank, kept) == first


def test_kept_units_of_a_wrong_shape_are_thrown_away(bank: Path, kept: Path) -> None:
    first = quick_check(bank, kept)
    data = json.loads(kept.read_text("utf-8"))
    wrongs: list[object] = [None, [], {"paper-boats": 3}, {"paper-boats": [1, 2]}]
    for wrong in wrongs:
        kept.write_text(json.dumps(data | {"units": wrong}), "utf-8")
        assert quick_check(bank, kept) == first


def test_many_units_on_every_core_say_the_same(bank: Path) -> None:
    source = bank / UNIT
    for number in range(module.FEW + 4):
        folder = bank / "units" / f"boat-{number}"
        folder.mkdir()
        for path in source.glob("*.md"):
            text = path.read_text("utf-8").replace("\ntitle: ", f"\ntitle: {number} ", 1)
            (folder / path.name).write_text(text, "utf-8")
        for path in source.glob("media/*"):
            (folder / "media").mkdir(exist_ok=True)
            (folder / "media" / path.name).write_bytes(path.read_bytes())
    spoil(bank / "units" / "boat-3" / "lesson-2.md")
    assert quick_check(bank, None).problems == check_folder(bank).problems


def test_a_folder_that_cannot_be_written_to_only_costs_time(bank: Path, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("x", "utf-8")
    assert (
        quick_check(bank, tmp_path / "file" / "kept.json").problems == check_folder(bank).problems
    )
