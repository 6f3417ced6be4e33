"""Whose a unit is: a pack only says so, what was written here stays, and what came says whence."""

from __future__ import annotations

import io
import json
import shutil
from datetime import date
from pathlib import Path

import pytest

from build_tools.checking.check_bank import check_folder
from build_tools.packs.taking_in.placing import same_name
from build_tools.source.folder import TAKEN_IN, read_unit_folder
from build_tools.use_cases.adapt import Adapted, Wishes, adapt
from build_tools.use_cases.pack import pack as made_of
from tests.packs.test_taking_in import files_in, of_edition, packed, take_in
from tests.support.judged import judging_once
from tests.support.packs import SLUG, empty_bank, unit_files

OURS = b"Another bank"


@pytest.fixture(autouse=True)
def _judged_once(monkeypatch: pytest.MonkeyPatch) -> None:
    judging_once(monkeypatch)


@pytest.fixture
def content(tmp_path: Path) -> Path:
    """A bank with the unit as it was written here."""
    folder = empty_bank(tmp_path / "content")
    for name, data in of_edition("1.0.0", publisher=OURS).items():
        path = folder / "units" / SLUG / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
    return folder


def longer() -> dict[str, bytes]:
    """A later edition, as it says, of the unit that was written here."""
    files = of_edition("2.0.0", b"\nMore.\n", OURS)
    files["lesson-1.md"] = files["lesson-1.md"].replace(b"title: ", b"title: Again, ", 1)
    return files


def test_a_unit_written_here_never_gives_up_its_place_unasked(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    before = files_in(content / "units")
    assert take_in(content, packed(tmp_path, longer(), "2.0.0"), "--yes") == 0
    said = capsys.readouterr().out
    assert files_in(content / "units") == before
    assert files_in(content / "earlier" / f"{SLUG}-2.0.0") == longer()
    assert "nothing proves that the pack is yours" in said
    assert "it says that it is a later edition of a unit written here" in said
    assert "beside the one here:" in said
    assert "  lesson 1: the title" in said
    assert "the unit: the notes were reworded" in said


@pytest.mark.parametrize(("answer", "taken"), [("instead", True), ("yes", False), ("no", None)])
def test_somebody_who_saw_the_difference_may_ask_for_it(
    content: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    answer: str,
    taken: bool | None,
) -> None:
    before = files_in(content / "units" / SLUG)
    monkeypatch.setattr("sys.stdin", io.StringIO(f"{answer}\n"))
    assert take_in(content, packed(tmp_path, longer(), "2.0.0")) == 0
    assert "Keep it beside yours? yes or no, or instead" in capsys.readouterr().out
    here = files_in(content / "units" / SLUG)
    kept = sorted(path.name for path in (content / "earlier").glob("*"))
    if taken:
        assert here == longer()
        assert kept == [f"{SLUG}-1.0.0"]
        assert files_in(content / "earlier" / kept[0]) == before
    else:
        assert here == before
        assert kept == ([] if taken is None else [f"{SLUG}-2.0.0"])


def test_every_pack_is_told_to_be_unproven(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shutil.rmtree(content / "units" / SLUG)
    take_in(content, packed(tmp_path, dict(unit_files()), "1.0.0"), "--yes")
    assert "so the pack says, and nothing proves it" in capsys.readouterr().out


@pytest.mark.parametrize(
    "name", ["another  bank", "ANOTHER BANK", "\uff21nother bank", " Another bank"]
)
def test_names_that_read_alike_are_one(name: str) -> None:
    assert same_name(name, "Another bank")
    assert not same_name(name, "Another banks")


def test_what_was_taken_in_says_where_it_came_from_and_when(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shutil.rmtree(content / "units" / SLUG)
    file = packed(tmp_path, dict(unit_files()), "1.0.0")
    assert take_in(content, file, "--yes") == 0
    folder = read_unit_folder(content, SLUG)
    assert folder.problems == []
    assert folder.taken_in is not None
    told = folder.taken_in.data
    assert told["file"] == file.name
    assert told["says_publisher"] == "The dance unit bank"
    assert told["edition"] == "1.0.0"
    assert told["taken_in"] == date.today().isoformat()
    assert len(told["sha512"]) == 128
    assert not check_folder(content).of_grade("error")
    # and once more: the file that says so is none of the unit's own
    assert take_in(content, file, "--yes") == 0
    assert "it is here already" in capsys.readouterr().out


def test_it_stays_here_and_moves_with_the_unit(content: Path, tmp_path: Path) -> None:
    shutil.rmtree(content / "units" / SLUG)
    take_in(content, packed(tmp_path, dict(unit_files()), "1.0.0"), "--yes")
    first = (content / "units" / SLUG / TAKEN_IN).read_bytes()
    made = made_of(content, SLUG)
    assert TAKEN_IN.encode() not in getattr(made, "data", b"")
    assert isinstance(adapt(content, SLUG, "my-pool", Wishes()), Adapted)
    assert not (content / "units" / "my-pool" / TAKEN_IN).exists()
    take_in(content, packed(tmp_path, of_edition("1.1.0", b"\nMore.\n"), "1.1.0"), "--yes")
    assert (content / "earlier" / f"{SLUG}-1.0.0" / TAKEN_IN).read_bytes() == first
    assert (content / "units" / SLUG / TAKEN_IN).read_bytes() != first


def test_an_odd_name_of_a_file_does_not_harm_it(content: Path, tmp_path: Path) -> None:
    shutil.rmtree(content / "units" / SLUG)
    sent = packed(tmp_path, dict(unit_files()), "1.0.0")
    odd = sent.rename(tmp_path / "a <b> \u202e\x1b[31m\n: 'x' \".zip")
    assert take_in(content, odd, "--yes") == 0
    assert not check_folder(content).of_grade("error")


def test_check_looks_at_the_file(content: Path) -> None:
    (content / "units" / SLUG / TAKEN_IN).write_text("file: a.zip\n", encoding="utf-8")
    found = {(p.file, p.rule) for p in check_folder(content).of_grade("error")}
    assert found == {(f"units/{SLUG}/{TAKEN_IN}", "missing-field")}


def broken() -> dict[str, bytes]:
    """A unit whose minutes do not add up, which is an error."""
    files = dict(unit_files())
    files["lesson-1.md"] = files["lesson-1.md"].replace(b"    minutes: ", b"    minutes: 5", 1)
    return files


def test_a_unit_with_errors_is_not_taken_in_unasked(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shutil.rmtree(content / "units" / SLUG)
    assert take_in(content, packed(tmp_path, broken(), "1.0.0"), "--yes") == 1
    said = capsys.readouterr().out
    assert "nothing of the bank could be published" in said
    assert "nothing was taken in" in said
    assert files_in(content / "units") == {}


def test_nor_is_one_whose_title_the_bank_has(
    content: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (content / "units" / SLUG).rename(content / "units" / "tide-pool")
    assert take_in(content, packed(tmp_path, dict(unit_files()), "1.0.0"), "--yes") == 1
    said = capsys.readouterr().out
    assert f"units/{SLUG}/unit.md: " in said or "units/tide-pool/unit.md: " in said
    assert "nothing of the bank could be published" in said
    assert not (content / "units" / SLUG).exists()


def test_it_may_be_kept_beside_one_that_is_here(content: Path, tmp_path: Path) -> None:
    assert take_in(content, packed(tmp_path, broken(), "1.0.0"), "--yes") == 0
    assert files_in(content / "earlier" / f"{SLUG}-1.0.0") == broken()
    assert not check_folder(content).of_grade("error")


def planted(content: Path, steps: object, raw: bytes | None = None) -> None:
    room = content / ".taking-in"
    (room / "unit").mkdir(parents=True)
    (room / "unit" / "unit.md").write_text("x", encoding="utf-8")
    (room / "journal.json").write_bytes(json.dumps(steps).encode() if raw is None else raw)


PLANTED: dict[str, object] = {
    "out of the bank": [[f"units/{SLUG}", "../stolen"]],
    "to the top of the disk": [[f"units/{SLUG}", "/tmp/stolen"]],
    "from elsewhere": [["../secret", f"units/{SLUG}"]],
    "the bank's own files": [["vocabulary", "earlier/a-1.0.0"]],
    "one after another": [
        [f"units/{SLUG}", f"earlier/{SLUG}-1.0.0"],
        [".taking-in/unit", f"units/{SLUG}"],
        ["vocabulary", "earlier/b-1.0.0"],
    ],
    "another unit": [
        [f"units/{SLUG}", f"earlier/{SLUG}-1.0.0"],
        [".taking-in/unit", "units/elsewhere"],
    ],
    "no steps": {},
    "numbers": [[1, 2]],
    "one number": 7,
    "words": "abc",
    "three in a step": [["a", "b", "c"]],
}


@pytest.mark.parametrize("case", PLANTED)
def test_a_planted_journal_moves_nothing(
    content: Path, tmp_path: Path, case: str, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "secret").mkdir()
    before = files_in(content)
    planted(content, PLANTED[case])
    file = packed(tmp_path, of_edition("1.0.0", publisher=OURS), "1.0.0")
    assert take_in(content, file, "--yes") == 0
    assert "it is here already" in capsys.readouterr().out
    assert files_in(content) == before
    assert (tmp_path / "secret").is_dir()
    assert not (tmp_path / "stolen").exists()
    assert not (content / ".taking-in").exists()


@pytest.mark.parametrize("raw", [b"", b"[[", b"\xff\xfe", b"[" * 3000, b" " * 100_000, b"nul"])
def test_a_broken_journal_is_cleared_away(content: Path, tmp_path: Path, raw: bytes) -> None:
    before = files_in(content)
    planted(content, None, raw)
    file = packed(tmp_path, of_edition("1.0.0", publisher=OURS), "1.0.0")
    assert take_in(content, file, "--yes") == 0
    assert files_in(content) == before
    assert not (content / ".taking-in").exists()


@pytest.mark.parametrize("name", [".taking-in", "earlier", ".taking-in.lock"])
def test_links_that_lead_out_are_not_followed(
    content: Path, tmp_path: Path, name: str, capsys: pytest.CaptureFixture[str]
) -> None:
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    (elsewhere / "kept").write_text("mine", encoding="utf-8")
    is_file = name.endswith(".lock")
    (content / name).symlink_to(elsewhere / "kept" if is_file else elsewhere)
    file = packed(tmp_path, longer(), "2.0.0")
    code = take_in(content, file, "--yes")
    said = capsys.readouterr().out
    assert code == (0 if name == ".taking-in" else 1), said
    assert [path.name for path in elsewhere.iterdir()] == ["kept"]
    assert (elsewhere / "kept").read_text(encoding="utf-8") == "mine"
    if name == "earlier":
        assert "earlier is a link that leads out of" in said
