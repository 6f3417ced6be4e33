"""`compare` takes folders and packs, and says in words what it cannot read."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools import cli
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.built_packs import made

AS_CALLED = "from edition 1.0.0 to 1.0.1, as these changes call for\n"


@pytest.fixture(scope="module")
def packed(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """The unit of the rules' own bank as a pack."""
    return made(copy_base(tmp_path_factory.mktemp("theirs")), BASE_UNIT).data


@pytest.fixture
def pack(packed: bytes, tmp_path: Path) -> Path:
    """That pack as a file, to be changed at will."""
    file = tmp_path / "old.zip"
    file.write_bytes(packed)
    return file


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """The same unit in another bank, with one other word and the edition that this calls for."""
    unit = copy_base(tmp_path / "ours") / "units" / BASE_UNIT
    first = (unit / "lesson-1.md").read_text(encoding="utf-8")
    title = next(line for line in first.splitlines() if line.startswith("title:"))
    change(unit / "lesson-1.md", title, "title: Other words")
    change(unit / "unit.md", "\nedition: 1.0.0\n", "\nedition: 1.0.1\n")
    return unit


def test_a_pack_and_a_folder(pack: Path, folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["compare", str(pack), str(folder)]) == 0
    said = capsys.readouterr().out
    assert said.startswith("Words\n  lesson 1: ")
    assert said.endswith(AS_CALLED)
    assert said.count("\n  ") == 1


def test_the_same_twice(pack: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["compare", str(pack), str(pack)]) == 0
    said = capsys.readouterr().out
    assert (
        said == "nothing changed but, perhaps, the edition and its date\nboth are edition 1.0.0\n"
    )


def test_a_broken_pack_is_refused_in_words(
    pack: Path, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    data = bytearray(pack.read_bytes())
    data[len(data) // 2] ^= 1
    pack.write_bytes(bytes(data))
    assert cli.main(["compare", str(pack), str(folder)]) == 1
    assert capsys.readouterr().out.startswith(f"{pack.as_posix()}: refused: ")


def test_a_folder_with_faults_names_them(
    pack: Path, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    change(folder / "unit.md", "\nedition: 1.0.1\n", "\nedition: soon\n")
    assert cli.main(["compare", str(pack), str(folder)]) == 1
    assert "unit.md" in capsys.readouterr().out


@pytest.mark.parametrize("name", ["", "nothing-here"])
def test_what_is_no_unit_is_misuse(
    pack: Path, tmp_path: Path, name: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main(["compare", str(pack), str(tmp_path / name)]) == 2
    assert "name the folder of a unit, or its pack" in capsys.readouterr().err
