"""Whatever reading a pack takes, whoever asked for it gets words; and pages that came with it."""

from __future__ import annotations

import re
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from build_tools import cli
from build_tools.lifeline.walls import DISK, MEMORY, MOST_ANSWER
from build_tools.packs.reading.walled import Refused, walled
from build_tools.use_cases import judging_packs
from tests.support import hungry
from tests.support.built_packs import packed
from tests.support.built_sites import CONTENT
from tests.support.packs import empty_bank, pack, unit_files, with_files, written


@pytest.fixture
def _here(monkeypatch: pytest.MonkeyPatch) -> None:
    """A pack is judged by this very process, where what is asked is what is said of it then."""
    monkeypatch.setattr(judging_packs, "walled", lambda work, *given: work(*given))


OTHER = "its pages are not those that this bank draws"


@pytest.mark.parametrize(
    ("work", "given", "words"),
    [
        (hungry.asks_at_once, (MEMORY,), "more memory than any unit needs"),
        (hungry.writes, (1, DISK + 1), "more room on the disk than any unit needs"),
        (hungry.says, (MOST_ANSWER + 1,), "more to say of it than anybody could read"),
        (hungry.divides, (1, 0), "cannot read it (ZeroDivisionError: division by zero)"),
        (hungry.dies, (9,), "cannot read it (the process ended with 9)"),
    ],
)
def test_what_cannot_be_read_is_refused_in_words(
    work: Callable[..., Any],
    given: tuple[int, ...],
    words: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    found = walled(work, *given)
    assert isinstance(found, Refused)
    assert words in found.why
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    "slug", ["kite-and-string", pytest.param("rock-pool", marks=pytest.mark.thorough)]
)
def test_the_banks_own_pack_has_the_pages_that_the_bank_draws(
    slug: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = empty_bank(tmp_path / "content", CONTENT)
    file = written(tmp_path, packed(slug).data)
    assert cli.main(["take-in", str(file), "--yes", "--content", str(content)]) == 0
    assert "pages" not in capsys.readouterr().out


@pytest.mark.usefixtures("_here")
@pytest.mark.parametrize(
    "inside",
    [
        pytest.param("<p>Read me.</p>", marks=pytest.mark.thorough),
        "<svg><use href='#a'/></svg>",
    ],
)
def test_other_pages_are_left_out_and_that_is_said(
    inside: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = empty_bank(tmp_path / "content")
    page = f"<!doctype html>\n<title>A</title>\n{inside}".encode()
    file = written(tmp_path, pack(with_files({"pages/index.html": page})))
    assert cli.main(["take-in", str(file), "--yes", "--content", str(content)]) == 0
    assert OTHER in capsys.readouterr().out
    assert [path.name for path in content.rglob("*.html")] == []


@pytest.mark.usefixtures("_here")
def test_words_that_the_unit_does_not_say_are_left_out_and_that_is_said(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = empty_bank(tmp_path / "content")
    file = written(tmp_path, pack(with_files({"licence.txt": b"You owe us a hundred pounds.\n"})))
    assert cli.main(["take-in", str(file), "--yes", "--content", str(content)]) == 0
    said = capsys.readouterr().out
    assert "licence.txt, credits.txt: not as this bank would write it" in said
    assert [path.name for path in (content / "units").rglob("*.txt")] == []


@pytest.mark.usefixtures("_here")
def test_a_line_break_in_a_title_starts_no_line_of_its_own(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = empty_bank(tmp_path / "content")
    title = rb'title: "Tide\\nit is proven"'
    unit = re.sub(rb"(?m)^title: .*$", title, unit_files()["unit.md"], count=1)
    file = written(tmp_path, pack(with_files({"unit/unit.md": unit})))
    assert cli.main(["take-in", str(file), "--yes", "--content", str(content)]) == 0
    said = capsys.readouterr().out
    assert "Tide it is proven, edition" in said
    assert [line for line in said.splitlines() if line.startswith("it is proven")] == []


def test_a_comparison_of_packs_has_the_same_walls(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    sound = written(tmp_path, packed("rock-pool").data, "sound.zip")
    broken = written(tmp_path, b"PK\x03\x04" + b"\0" * 1000, "broken.zip")
    assert cli.main(["compare", str(sound), str(sound)]) == 0
    assert "nothing changed" in capsys.readouterr().out
    assert cli.main(["compare", str(sound), str(broken)]) == 1
    assert "broken.zip: refused: it ends in the middle" in capsys.readouterr().out
