"""`join` publishes several banks as one site; none stops another."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools import cli
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.built_sites import files


@pytest.fixture
def banks(tmp_path: Path) -> list[Path]:
    """Two banks of other publishers with a unit of the same name, and one unit more."""
    found = []
    for name, place in (("North hills", "north"), ("South shore", "south")):
        bank = copy_base(tmp_path / place)
        called = (bank / "bank.yml").read_text(encoding="utf-8")
        start = next(line for line in called.split("\n") if line.startswith("name:"))
        change(bank / "bank.yml", start, f"name: {name}")
        for file in bank.glob("units/*/unit.md"):
            change(file, "\npublisher: The dance unit bank\n", f"\npublisher: {name}\n")
        found.append(bank)
    shutil.copytree(found[1] / "units" / BASE_UNIT, found[1] / "units" / "ink-drops")
    change(found[1] / "units" / "ink-drops" / "unit.md", "\ntitle: Paper boats\n", "\ntitle: Ink\n")
    return found


def joined(out: Path, *folders: Path) -> int:
    return cli.main(["join", *map(str, folders), "--name", "Both", "--out", str(out)])


def test_units_of_one_name_are_told_apart_and_say_who_published_them(
    banks: list[Path], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "site"
    assert joined(out, *banks) == 0
    names = [f"{BASE_UNIT}-north-hills", f"{BASE_UNIT}-south-shore"]
    assert sorted(path.name for path in (out / "units").iterdir()) == ["ink-drops", *names]
    said = capsys.readouterr().out
    assert f"units/{BASE_UNIT} is in 2 banks: here {names[0]} and {names[1]}" in said
    assert "3 units of 2 banks" in said
    front = (out / "index.html").read_text(encoding="utf-8")
    for name, publisher in zip(names, ("North hills", "South shore"), strict=True):
        assert f"href=units/{name}/index.html" in front
        assert publisher in front
        assert publisher in (out / "units" / name / "index.html").read_text(encoding="utf-8")
    safety = (out / "safety.html").read_text(encoding="utf-8")
    assert "As North hills says" in safety
    assert "As South shore says" in safety
    whole = files(out)
    assert joined(out, *banks) == 0
    assert files(out) == whole


def test_one_banks_fault_never_stops_another(
    banks: list[Path], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    lesson = banks[0] / "units" / BASE_UNIT / "lesson-1.md"
    change(lesson, "\nminutes: 40\n", "\nminutes: 400\n")
    out = tmp_path / "site"
    assert joined(out, *banks) == 1
    said = capsys.readouterr().out
    assert f"left out: {banks[0].as_posix()}, 1 error" in said
    assert "`minutes` is 400" in said
    assert sorted(path.name for path in (out / "units").iterdir()) == ["ink-drops", BASE_UNIT]
    (banks[1] / "bank.yml").unlink()
    before = files(out)
    assert joined(out, *banks) == 1
    assert "no bank can be published" in capsys.readouterr().out
    assert files(out) == before


def test_a_bank_alone_is_as_site_builds_it_but_for_its_name(
    banks: list[Path], tmp_path: Path
) -> None:
    out, alone = tmp_path / "site", tmp_path / "alone"
    line = ["join", str(banks[1]), "--name", "South shore", "--out", str(out)]
    assert cli.main(line) == 0
    assert cli.main(["site", "--content", str(banks[1]), "--out", str(alone)]) == 0
    assert files(out) == files(alone)


def test_a_folder_named_twice_is_misuse(banks: list[Path], tmp_path: Path) -> None:
    assert joined(tmp_path / "site", banks[0], banks[0]) == 2
