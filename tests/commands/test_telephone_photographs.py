"""A telephone's own file (.heic) goes every road as a JPEG: check, site, pack, another bank."""

from __future__ import annotations

import io
import shutil
from pathlib import Path

import pytest
from PIL import Image

from build_tools import cli
from build_tools.building.unit_files import unit_files
from build_tools.checking.check_bank import check_folder
from tests.support.banks import BASE_UNIT, ROOT, change, copy_base
from tests.support.judged import judging_once

TAKEN = ROOT / "tests" / "pictures" / "heic" / "sideways.heic"
UNIT = f"units/{BASE_UNIT}"


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    made = copy_base(tmp_path)
    shutil.copy(TAKEN, made / UNIT / "media" / "By the Pond.HEIC")
    item = "    - title: A pond\n      by: The bank\n      licence: CC0-1.0\n      source: Ours\n"
    more = "      file: media/by-the-pond.jpg\n      text_version: Red above, blue below.\n"
    change(made / UNIT / "unit.md", "  items:\n", f"  items:\n{item}{more}")
    return made


def upright(data: bytes) -> bool:
    with Image.open(io.BytesIO(data)) as picture:
        return picture.format == "JPEG" and picture.size == (48, 64) and b"Morning" not in data


def test_the_check_says_how_it_is_published_and_the_site_has_it_so(bank: Path) -> None:
    report = check_folder(bank)
    (note,) = [p for p in report.problems if p.file.endswith("By the Pond.HEIC")]
    assert note.severity == "note"
    assert "as by-the-pond.jpg" in note.message
    assert "without what it carries unseen" in note.message
    assert report.bank is not None
    (unit,) = report.bank.units
    assert upright(unit_files(report.bank, unit, bank)[f"{UNIT}/media/by-the-pond.jpg"])


def test_it_is_packed_so_and_taken_in(
    bank: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    judging_once(monkeypatch)
    assert cli.main(["pack", BASE_UNIT, "--content", str(bank), "--out", str(tmp_path)]) == 0
    (file,) = tmp_path.glob("*.zip")
    other = copy_base(tmp_path / "other")
    shutil.rmtree(other / UNIT)
    assert cli.main(["take-in", str(file), "--content", str(other), "--yes"]) == 0
    assert upright((other / UNIT / "media" / "by-the-pond.jpg").read_bytes())


def test_what_is_only_called_so_is_told(bank: Path) -> None:
    (bank / UNIT / "media" / "By the Pond.HEIC").write_bytes(b"a drawing, in truth")
    found = [p for p in check_folder(bank).problems if p.rule == "picture-unsound"]
    assert "save it as a JPEG (.jpg)" in found[0].message
