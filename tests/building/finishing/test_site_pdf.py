"""`site --pdf` prints each unit with a browser of this system, or says what to install."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.building.finishing import pdf_printing
from tests.support.banks import BASE_UNIT, copy_base
from tests.support.paper import read, squeezed


def printed(bank: Path, out: Path) -> int:
    return cli.main(["site", "--pdf", "--content", str(bank), "--out", str(out)])


def test_each_lesson_and_the_booklet_come_out_as_pdf_files(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bank, out = copy_base(tmp_path), tmp_path / "site é"
    assert printed(bank, out) == 0
    folder = out / "units" / BASE_UNIT
    pages = {page.stem: page for page in pdf_printing.pages_to_print(out)}
    assert {"lesson-1", "booklet"} <= pages.keys() <= {p.stem for p in folder.glob("*.html")}
    assert not [name for name in pages if "keep" in name]
    assert {pdf.stem for pdf in (folder / "pdf").iterdir()} == pages.keys()
    assert f"{len(pages)} PDF files in " in capsys.readouterr().out
    paper = read((folder / "pdf" / "lesson-1.pdf").read_bytes())
    sides = [
        "".join(one.text for one in paper.glyphs if one.side == side)
        for side in range(len(paper.margins))
    ]
    notes = [n for n, side in enumerate(sides) if squeezed("Notes for lesson") in side]
    assert notes == [2], "two sides, and then the notes"
    assert squeezed("Side 1 of") in sides[0]
    assert "file://" not in sides[0]


def test_no_browser_ends_with_what_to_install_and_the_last_site_stands(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def none() -> Iterator[Path]:
        return iter(())

    monkeypatch.setattr(pdf_printing, "installed_browsers", none)
    bank, out = copy_base(tmp_path), tmp_path / "site"
    assert printed(bank, out) == 2
    assert "install Chromium, Chrome or Edge" in capsys.readouterr().err
    assert not out.exists()


def test_a_browser_that_prints_nothing_is_named_and_the_last_site_stands(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    bank, out = copy_base(tmp_path), tmp_path / "site"
    broken = tmp_path / "broken browser"
    broken.write_text("#!/nowhere\n", encoding="utf-8")
    monkeypatch.setenv("BANK_CHROMIUM", str(broken))
    assert printed(bank, out) == 2
    assert "broken browser" in capsys.readouterr().err
    assert not out.exists()
