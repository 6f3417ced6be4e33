"""What nobody wrote is known by its name, and stops nothing that the bank does."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.disk.stray_files import is_beside, is_stray
from build_tools.publishing.verify import verify
from build_tools.source.folder import TAKEN_IN
from tests.support.banks import BASE_UNIT, copy_base
from tests.support.built_sites import files
from tests.support.judged import judging_once
from tests.support.strays import FILES, FOLDERS, strew


@pytest.mark.parametrize("name", [*FILES, *FOLDERS])
def test_what_nobody_wrote_is_known(name: str) -> None:
    assert is_stray(name)
    assert is_stray(name.upper())
    assert is_beside(f"units/{name}")
    assert is_beside(f"{name}/unit.md")


@pytest.mark.parametrize(
    "name",
    [
        "unit.md",
        "lesson-1.md",
        "boat.svg",
        "bank.yml",
        "notes.txt",
        "lesson-1 (copy).md",
        "lesson-1 (conflicted copy 2026-11-28).md",
        "lesson-1.sync-conflict-20261128-101500-ABCDEFG.md",
        "index.html",
        ".htaccess",
        "#",
        "##",
        "thumbs",
        "swp.md",
        "~boats",
    ],
)
def test_what_somebody_may_have_written_is_not_taken_for_it(name: str) -> None:
    assert not is_stray(name)


@pytest.fixture
def clean(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


@pytest.fixture
def strewn(clean: Path, tmp_path: Path) -> Path:
    copy = Path(shutil.copytree(clean, tmp_path / "strewn" / "content"))
    (copy / "earlier").mkdir()
    assert strew(copy) > 150
    return copy


def said_of(folder: Path, capsys: pytest.CaptureFixture[str], *command: str) -> tuple[int, str]:
    """What a command gives and says, without the place of the folder it is about."""
    code = cli.main([*command])
    out = capsys.readouterr()
    return code, (out.out + out.err).replace(folder.as_posix(), "…")


def test_the_check_says_what_it_says_without_them(
    clean: Path, strewn: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    said = [
        said_of(bank.parent, capsys, "check", "--content", str(bank)) for bank in (clean, strewn)
    ]
    assert said[0] == said[1] == (0, "no problems\n")


def test_the_site_is_the_same_also_in_a_folder_that_holds_some(
    clean: Path, strewn: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plain, other = tmp_path / "plain", tmp_path / "other"
    assert said_of(plain, capsys, "site", "--content", str(clean), "--out", str(plain))[0] == 0
    other.mkdir()
    strew(other)
    code, said = said_of(other, capsys, "site", "--content", str(strewn), "--out", str(other))
    assert code == 0, said
    # what nobody wrote stays where it lies, as nothing of ours
    ours = {name: text for name, text in files(other).items() if not is_beside(name)}
    assert files(plain) == ours
    assert len(files(other)) > len(ours)


def test_editions_are_published_verified_and_gone_back_to(
    strewn: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    share = tmp_path / "share"
    share.mkdir()
    command = ["publish", str(share), "--content", str(strewn)]
    for edition in ("1.0.0", "1.1.0"):
        strew_anew(share)
        code, said = said_of(share, capsys, *command)
        assert code == 0, said
        assert "published" in said
        unit = strewn / "units" / BASE_UNIT / "unit.md"
        text = unit.read_text(encoding="utf-8")
        unit.write_text(text.replace(f"edition: {edition}", "edition: 1.1.0"), encoding="utf-8")
    strew_anew(share)
    assert verify(share) == []
    code, said = said_of(share, capsys, "roll-back", str(share))
    assert code == 0, said
    assert verify(share) == []


def strew_anew(share: Path) -> None:
    """Leave strays everywhere, in place of those left before."""
    for path in sorted(share.rglob("*"), reverse=True):
        if path.name in FILES:
            path.unlink()
        elif path.name in FOLDERS:
            shutil.rmtree(path)
    strew(share)


def test_a_pack_has_the_same_bytes_and_is_taken_in_where_they_lie(
    clean: Path,
    strewn: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    judging_once(monkeypatch)
    for bank in (clean, strewn):
        out = tmp_path / f"packs-{bank.parent.name}"
        code, said = said_of(
            bank, capsys, "pack", BASE_UNIT, "--content", str(bank), "--out", str(out)
        )
        assert code == 0, said
    (pack,) = (tmp_path / f"packs-{clean.parent.name}").iterdir()
    assert files(pack.parent) == files(tmp_path / "packs-strewn")
    take = ["take-in", str(pack), "--yes", "--content", str(strewn)]
    code, said = said_of(strewn, capsys, *take)
    assert code == 0, said
    assert "it is here already" in said
    shutil.rmtree(strewn / "units" / BASE_UNIT)
    code, said = said_of(strewn, capsys, *take)
    assert code == 0, said
    assert "taken in: " in said
    taken_in = files(strewn / "units" / BASE_UNIT)
    assert taken_in.pop(TAKEN_IN)
    assert taken_in == files(clean / "units" / BASE_UNIT)


def test_a_unit_is_compared_and_adapted_without_them(
    clean: Path, strewn: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    units = [str(bank / "units" / BASE_UNIT) for bank in (clean, strewn)]
    code, said = said_of(clean, capsys, "compare", *units)
    assert code == 0, said
    assert said.startswith("nothing changed")
    code, said = said_of(clean, capsys, "adapt", BASE_UNIT, "my-boats", "--content", str(strewn))
    assert code == 0, said
    assert set(files(strewn / "units" / "my-boats")) == set(files(clean / "units" / BASE_UNIT))
