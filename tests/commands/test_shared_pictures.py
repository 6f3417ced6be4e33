"""A picture that units share goes with each: in the site, in a pack, into another bank, whole."""

from __future__ import annotations

import io
import shutil
from pathlib import Path

import pytest
from PIL import Image

from build_tools import cli
from build_tools.building.unit_files import unit_files as published
from build_tools.checking.check_bank import check_folder
from build_tools.checking.quick_check import quick_check
from build_tools.comparing.compare import compare
from build_tools.unit_editions.unit_texts import text_at
from build_tools.use_cases.pack import pack
from tests.support.banks import BASE_UNIT, change
from tests.support.built_packs import unpacked
from tests.support.judged import judging_once
from tests.support.shared_pictures import (
    LIST,
    SECRET,
    UNIT,
    bank_that_shares,
    photograph,
)


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return bank_that_shares(tmp_path)


def test_pages_show_it_upright_with_nothing_hidden_and_with_its_credit(bank: Path) -> None:
    report = check_folder(bank)
    assert report.bank is not None
    (unit,) = report.bank.units
    files = published(report.bank, unit, bank)
    at = f"units/{BASE_UNIT}/"
    with Image.open(io.BytesIO(files[f"{at}media/harbour.jpg"])) as shown:
        assert shown.size == (80, 60)
    assert SECRET.encode() not in files[f"{at}media/harbour.jpg"]
    lesson, wall, prints = (
        files[f"{at}{name}.html"].decode() for name in ("lesson-2", "wall", "to-print")
    )
    for page in (lesson, wall, prints):
        assert 'src=media/harbour.jpg alt="Boats lie still' in page
        assert 'src=media/whirl.png alt="Water turning round a stone."' in page
    assert "The pupils of a Year 4 class" in lesson
    assert "media/whirl.png" not in files[f"{at}lesson-1.html"].decode()
    assert "media/whirl.png" not in wall.partition("id=lesson-3 ")[2]
    of_the_unit = [name for name in files if name.endswith(".html") and "lesson-" not in name]
    assert any(b"The pupils of a Year 4 class" in files[name] for name in of_the_unit)


def test_a_pack_has_it_and_says_its_rights(bank: Path, tmp_path: Path) -> None:
    made = pack(bank, BASE_UNIT)
    assert hasattr(made, "data"), made
    inside = unpacked(made.data, tmp_path / "unpacked") / "data"
    assert (inside / "unit" / "media" / "harbour.jpg").is_file()
    text = (inside / "unit" / "unit.md").read_text(encoding="utf-8")
    assert "shared:" not in text
    assert "file: media/harbour.jpg" in text
    credits = (inside / "credits.txt").read_text(encoding="utf-8")
    assert credits.count("Author: The pupils of a Year 4 class") == 1
    assert "A whirl in a stream" in credits
    assert "data:image/jpeg;base64," in (inside / "pages" / "lesson-2.html").read_text("utf-8")


def test_it_does_not_take_the_place_of_another_banks(
    bank: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    judging_once(monkeypatch)
    packed = tmp_path / "packs"
    assert cli.main(["pack", BASE_UNIT, "--content", str(bank), "--out", str(packed)]) == 0
    other = bank_that_shares(tmp_path / "other")
    theirs = photograph("red")
    (other / "pictures" / "Harbour.JPG").write_bytes(theirs)
    shutil.rmtree(other / UNIT)
    (file,) = packed.iterdir()
    assert cli.main(["take-in", str(file), "--content", str(other), "--yes"]) == 0
    assert (other / "pictures" / "Harbour.JPG").read_bytes() == theirs
    taken = (other / UNIT / "media" / "harbour.jpg").read_bytes()
    with Image.open(io.BytesIO(taken)) as shown:
        _, blue = shown.getchannel("B").getextrema()
        assert isinstance(blue, int)
        assert blue > 80  # as it was sent
    assert [p for p in check_folder(other).problems if p.severity == "error"] == []


def test_its_own_pack_says_what_it_says_and_is_here_already(
    bank: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    judging_once(monkeypatch)
    packed = tmp_path / "packs"
    assert cli.main(["pack", BASE_UNIT, "--content", str(bank), "--out", str(packed)]) == 0
    (file,) = packed.iterdir()
    old, new = text_at(bank / UNIT), text_at(file)
    assert not isinstance(old, list)
    assert not isinstance(new, list)
    assert compare(old, new) == ()
    capsys.readouterr()
    assert cli.main(["take-in", str(file), "--content", str(bank), "--yes"]) == 0
    assert "already" in capsys.readouterr().out


def test_banks_that_are_joined_keep_each_its_own(bank: Path, tmp_path: Path) -> None:
    other = bank_that_shares(tmp_path / "other")
    (other / "pictures" / "Harbour.JPG").write_bytes(photograph("red"))
    (other / UNIT).rename(other / "units" / "ink-drops")
    out = tmp_path / "site"
    line = ["join", str(bank), str(other), "--name", "Both", "--out", str(out)]
    assert cli.main(line) == 0
    blue, red = (
        Image.open(out / "units" / slug / "media" / "harbour.jpg").convert("RGB").getpixel((5, 5))
        for slug in (BASE_UNIT, "ink-drops")
    )
    assert blue != red


def test_what_is_kept_of_a_check_is_asked_again_when_a_shared_picture_changes(
    bank: Path, tmp_path: Path
) -> None:
    kept = tmp_path / "kept" / "one.json"
    before = quick_check(bank, kept)
    assert not [p for p in before.problems if p.severity == "error"]
    assert quick_check(bank, kept) == before
    (bank / "pictures" / "Harbour.JPG").unlink()
    gone = quick_check(bank, kept)
    assert {p.rule for p in gone.problems if p.severity == "error"} == {"shared-picture-missing"}
    (bank / "pictures" / "harbour.jpg").write_bytes(photograph("red"))
    again = quick_check(bank, kept)
    assert not [p for p in again.problems if p.severity == "error"]
    assert again.units[BASE_UNIT].digest != before.units[BASE_UNIT].digest


def test_two_units_show_one_file(bank: Path) -> None:
    shutil.copytree(bank / UNIT, bank / "units" / "ink-drops")
    change(bank / "units" / "ink-drops" / "unit.md", "\ntitle: Paper boats\n", "\ntitle: Ink\n")
    report = check_folder(bank)
    assert [p for p in report.problems if p.severity == "error"] == []
    assert report.bank is not None
    assert {u.media["media/harbour.jpg"] for u in report.bank.units} != {0}
    assert not [p for p in report.problems if p.rule == "shared-picture-unused"]


def test_a_list_of_rights_that_asks_more_than_the_unit_is_told_in_the_unit(bank: Path) -> None:
    text = LIST.replace("CC0-1.0", "CC-BY-NC-4.0")
    (bank / "pictures" / "pictures.yml").write_text(text, encoding="utf-8")
    found = [p for p in check_folder(bank).problems if p.rule == "licence-narrower-in-part"]
    assert {p.file for p in found} == {f"{UNIT}/unit.md", f"{UNIT}/lesson-2.md"}
    line = (bank / UNIT / "unit.md").read_text("utf-8").split("\n").index("    - shared: harbour")
    assert {p.line for p in found if p.file.endswith("unit.md")} == {line + 1}
