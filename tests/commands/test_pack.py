"""`pack` says what it wrote, and refuses in words what cannot go to others yet."""

from __future__ import annotations

import io
import random
import zipfile
from pathlib import Path

import pytest
from PIL import Image

from build_tools import cli
from tests.support.banks import BASE_UNIT, change, copy_base


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


@pytest.fixture
def unit(bank: Path) -> Path:
    return bank / "units" / BASE_UNIT


def pack(bank: Path, out: Path, *units: str) -> int:
    return cli.main(["pack", *units, "--content", str(bank), "--out", str(out)])


def test_a_unit_is_packed_and_named(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert pack(bank, tmp_path / "out", BASE_UNIT) == 0
    written = tmp_path / "out" / "paper-boats-1.0.0.zip"
    size = written.stat().st_size / 1000
    said = capsys.readouterr().out
    assert said == f"packed {written.as_posix()}: {size:,.0f} kB, send it as it is\n"


def test_a_unit_may_be_named_by_its_folder_and_twice(
    bank: Path, unit: Path, tmp_path: Path
) -> None:
    assert pack(bank, tmp_path / "out", BASE_UNIT, str(unit)) == 0
    assert len(list((tmp_path / "out").iterdir())) == 1


def refused(bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> str:
    """What is said when the unit cannot be packed; nothing is written then."""
    assert pack(bank, tmp_path / "out", BASE_UNIT) == 1
    assert not (tmp_path / "out").exists()
    return capsys.readouterr().out


def test_errors_are_named_as_check_names_them(
    bank: Path, unit: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    line = change(unit / "unit.md", "\nlicence: CC-BY-4.0\nlanguage", "\nlicence: mine\nlanguage")
    said = refused(bank, tmp_path, capsys)
    assert f"units/{BASE_UNIT}/unit.md:{line + 1}" in said
    assert "paper-boats was not packed: it has errors" in said


def test_unsettled_rights_are_named(
    bank: Path, unit: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A question of the rights rules is enough: who may watch, here."""
    change(unit / "lesson-3.md", "Half dance while half watch. Swap.", "Dance it for families.")
    said = refused(bank, tmp_path, capsys)
    assert "families-in-audience" in said
    assert "its rights are not settled" in said
    change(
        unit / "unit.md", "\ntried:", "\nallow:\n  families-in-audience: agreed in writing\ntried:"
    )
    assert pack(bank, tmp_path / "out", BASE_UNIT) == 0


def test_errors_of_the_bank_itself_are_named(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    change(bank / "bank.yml", "format: 2", "format: 7")
    said = refused(bank, tmp_path, capsys)
    assert "bank.yml:1" in said
    assert "the bank's own files have errors" in said


def test_a_draft_is_not_packed(
    bank: Path, unit: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    change(unit / "unit.md", "\nlanguage: en-GB\n", "\nlanguage: en-GB\ndraft: true\n")
    assert "take out `draft: true`" in refused(bank, tmp_path, capsys)


def test_the_others_are_packed_when_one_is_not_there(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert pack(bank, tmp_path / "out", "no-such-unit", BASE_UNIT) == 1
    assert "there is no unit in" in capsys.readouterr().out
    assert (tmp_path / "out" / "paper-boats-1.0.0.zip").exists()


def test_what_others_would_refuse_is_not_packed(
    bank: Path, unit: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """More than a pack can hold, though the bank's own site may have it: a picture that moves,
    which is not made smaller."""
    photo = unit / "media" / "boat.png"
    size = (2300, 1150)
    first, second = (
        Image.frombytes("RGB", size, random.Random(n).randbytes(size[0] * size[1] * 3))
        for n in (1, 2)
    )
    first.save(photo, "PNG", save_all=True, append_images=[second], duration=1000, compress_level=0)
    (unit / "media" / "boat.svg").unlink()
    change(unit / "unit.md", "file: media/boat.svg", "file: media/boat.png")
    said = refused(bank, tmp_path, capsys)
    assert "whoever takes it in would refuse it: " in said
    assert "more than 40,000,000" in said


def test_a_drawing_that_runs_something_is_an_error_at_its_line(
    bank: Path, unit: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    drawing = unit / "media" / "boat.svg"
    text = drawing.read_text(encoding="utf-8")
    drawing.write_text(text.replace("</svg>", "<script>1</script></svg>"), encoding="utf-8")
    said = refused(bank, tmp_path, capsys)
    assert "media/boat.svg:4:1: error: the drawing has a part `script`" in said
    assert "[picture-unsound]" in said


def test_pictures_go_without_their_hidden_data_and_those_here_keep_it(
    bank: Path, unit: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    photo = unit / "media" / "boat.jpg"
    Image.new("RGB", (9, 9), "teal").save(photo, "JPEG", comment=b"fifty degrees north")
    (unit / "media" / "boat.svg").unlink()
    change(unit / "unit.md", "file: media/boat.svg", "file: media/boat.jpg")
    before = photo.read_bytes()
    assert pack(bank, tmp_path / "out", BASE_UNIT) == 0
    data = (tmp_path / "out" / "paper-boats-1.0.0.zip").read_bytes()
    inside = zipfile.ZipFile(io.BytesIO(data)).read("paper-boats-1.0.0/data/unit/media/boat.jpg")
    assert b"fifty degrees north" in before
    assert b"fifty degrees north" not in inside
    assert photo.read_bytes() == before
    photo.write_bytes(b"GIF89a")
    capsys.readouterr()
    assert pack(bank, tmp_path / "other", BASE_UNIT) == 1
    assert "media/boat.jpg:1:1: error: it is not a JPEG picture" in capsys.readouterr().out


def test_a_folder_that_cannot_be_written_is_named(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "out").write_text("a file where the folder would be", encoding="utf-8")
    assert pack(bank, tmp_path / "out", BASE_UNIT) == 1
    assert "could not be written" in capsys.readouterr().out
    assert pack(bank, tmp_path / "out" / "below", BASE_UNIT) == 1


def test_used_wrongly_it_ends_with_2(tmp_path: Path) -> None:
    with pytest.raises(SystemExit) as ended:
        cli.main(["pack"])
    assert ended.value.code == 2
    assert cli.main(["pack", "a", "--content", str(tmp_path / "nowhere")]) == 2
