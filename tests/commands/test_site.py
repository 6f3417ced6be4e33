"""`site` publishes a bank without errors, whole or not at all."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from build_tools import cli
from build_tools.building.unit_files import unit_files
from build_tools.checking.check_bank import check_folder
from tests.support.banks import BASE_UNIT, ROOT, change, copy_base

LESSON = f"units/{BASE_UNIT}/lesson-1.md"


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


@pytest.fixture
def run(bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Any:
    def call(*options: str, out: Path = tmp_path / "site") -> tuple[int, str, str]:
        code = cli.main(["site", *options, "--content", str(bank), "--out", str(out)])
        return code, *capsys.readouterr()

    return call


def listing(folder: Path) -> dict[str, bytes]:
    return {
        p.relative_to(folder).as_posix(): p.read_bytes()
        for p in sorted(folder.rglob("*"))
        if p.is_file()
    }


def old_site(tmp_path: Path) -> dict[str, bytes]:
    """A site of an earlier day."""
    (tmp_path / "site" / "assets").mkdir(parents=True)
    (tmp_path / "site" / "index.html").write_bytes(b"old")
    (tmp_path / "site" / "assets" / "old.css").write_bytes(b"old")
    return listing(tmp_path / "site")


def names_beside(tmp_path: Path) -> list[str]:
    return sorted(p.name for p in tmp_path.iterdir())


def test_a_sound_bank_is_published_in_the_place_of_the_old(run: Any, tmp_path: Path) -> None:
    old_site(tmp_path)
    code, out, err = run()
    assert (code, err) == (0, "")
    assert out == f"no problems; 1 unit\nopen {(tmp_path / 'site' / 'index.html').as_posix()}\n"
    built = listing(tmp_path / "site")
    assert built["index.html"] != b"old"
    assert "assets/old.css" not in built
    assert [n for n in built if n.startswith(f"units/{BASE_UNIT}/")]
    assert names_beside(tmp_path) == ["content", "site"]


def test_errors_leave_the_last_good_site_untouched(run: Any, bank: Path, tmp_path: Path) -> None:
    before = old_site(tmp_path)
    line = change(bank / LESSON, "\nminutes: 40\n", "\nminutes: 400\n") + 1
    code, out, err = run()
    assert code == 1
    assert f"content/{LESSON}:{line}:1: error: `minutes` is 400" in out
    assert out.endswith("1 error; the site was not built, and the last one still stands\n")
    assert "rules were not run" in err
    assert listing(tmp_path / "site") == before
    assert names_beside(tmp_path) == ["content", "site"]


def test_errors_in_the_banks_own_files_stop_it_too(run: Any, bank: Path, tmp_path: Path) -> None:
    before = old_site(tmp_path)
    (bank / "vocabulary" / "words.yml").unlink()
    code, out, _ = run()
    assert code == 1
    assert "the file `vocabulary/words.yml` is not there" in out
    assert listing(tmp_path / "site") == before


@pytest.mark.parametrize("stop", [RuntimeError("planted"), KeyboardInterrupt()])
def test_a_crash_in_the_middle_leaves_the_last_good_site_untouched(
    run: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, stop: BaseException
) -> None:
    before = old_site(tmp_path)
    calls = []

    def crashing(*given: Any, **options: Any) -> dict[str, bytes]:
        calls.append(unit_files(*given, **options))
        raise stop

    monkeypatch.setattr("build_tools.building.drawing.unit_files", crashing)
    code, out, err = run()
    assert code == (3 if isinstance(stop, RuntimeError) else 130)
    assert ("planted" in err) == isinstance(stop, RuntimeError)
    assert len(calls) == 1
    assert out == ""
    assert listing(tmp_path / "site") == before
    assert names_beside(tmp_path) == ["content", "site"]


def test_a_question_does_not_stop_it(run: Any, bank: Path, tmp_path: Path) -> None:
    with (bank / "bank.yml").open("a", encoding="utf-8") as file:
        file.write("\ngrades: {minutes-do-not-add-up: question}\n")
    change(bank / LESSON, "\nminutes: 40\n", "\nminutes: 45\n")
    code, out, _ = run()
    assert code == 0
    assert "question: " in out
    assert "1 question; 1 unit\n" in out
    assert (tmp_path / "site" / "index.html").is_file()


def draft(bank: Path) -> None:
    shutil.copytree(bank / "units" / BASE_UNIT, bank / "units" / "half-done")
    file = bank / "units" / "half-done" / "unit.md"
    change(file, "\ntitle:", "\ndraft: true\ntitle:")


def test_a_draft_stays_out_without_stopping_it(run: Any, bank: Path, tmp_path: Path) -> None:
    draft(bank)
    code, out, _ = run()
    assert code == 0, out
    assert "1 unit (1 draft left out)" in out
    built = listing(tmp_path / "site")
    assert not [n for n in built if "half-done" in n]
    assert not [n for n, page in built.items() if b"half-done" in page]


DRAFT = "units/half-done"


def spoil_a_field(draft: Path) -> None:
    change(draft / "lesson-1.md", "\nminutes: 40\n", "\nminutes: 400\n")


def spoil_the_shape(draft: Path) -> None:
    change(draft / "unit.md", "\ntitle:", "\ntitel:")


def spoil_the_yaml(draft: Path) -> None:
    change(draft / "unit.md", "\ntitle:", "\ntitle: [\ntitle:")


def spoil_the_letters(draft: Path) -> None:
    text = (draft / "unit.md").read_text(encoding="utf-8")
    (draft / "unit.md").write_text(text, encoding="utf-16")
    (draft / "lesson-2.md").write_bytes(b"\xff\xfe")


def lose_lessons(draft: Path) -> None:
    for lesson in draft.glob("lesson-*.md"):
        lesson.unlink()


def name_it_oddly(draft: Path) -> None:
    draft.rename(draft.with_name("Half done"))


SPOILED = [
    spoil_a_field, spoil_the_shape, spoil_the_yaml, spoil_the_letters, lose_lessons, name_it_oddly
]  # fmt: skip


IN_TURNS = [
    pytest.param(spoil, marks=pytest.mark.thorough if number % 2 else ())
    for number, spoil in enumerate(SPOILED)
]


@pytest.mark.parametrize("spoil", IN_TURNS[::-1])
def test_a_draft_with_errors_is_left_out_in_one_line(
    run: Any, bank: Path, tmp_path: Path, spoil: Callable[[Path], None]
) -> None:
    draft(bank)
    spoil(bank / DRAFT)
    slug = check_folder(bank).of_grade("error")[0].file.split("/")[1]
    code, out, err = run()
    assert (code, err) == (0, ""), out
    said, rest = out.split("\n", 1)
    assert re.fullmatch(
        rf"left out, being drafts with errors: content/units/{slug} \(\d+ errors?\); "
        r"`check` says what to mend",
        said,
    )
    assert rest.startswith("no problems; 1 unit (1 draft left out)\n")
    built = listing(tmp_path / "site")
    assert [n for n in built if n.startswith(f"units/{BASE_UNIT}/")]
    assert not [n for n, page in built.items() if slug in n or slug.encode() in page]


def second_unit(bank: Path) -> Path:
    """A unit that is no draft, beside the sound one."""
    draft(bank)
    file = bank / DRAFT / "unit.md"
    change(file, "\ndraft: true\n", "\ndraft: false\n")
    change(file, "\ntitle: Paper boats\n", "\ntitle: Half done\n")
    return bank / DRAFT


@pytest.mark.parametrize("spoil", IN_TURNS)
def test_errors_in_one_unit_stop_no_other(
    run: Any, bank: Path, tmp_path: Path, spoil: Callable[[Path], None]
) -> None:
    spoil(second_unit(bank))
    slug = next(p.name for p in (bank / "units").iterdir() if p.name != BASE_UNIT)
    code, out, err = run()
    assert (code, err) == (0, ""), out
    said, rest = out.split("\n", 1)
    where = f"content/units/{slug}"
    assert said.startswith(f"left out: {where} (")
    assert said.endswith(f"; `check {where}` says what to mend")
    assert rest.startswith("no problems; 1 unit\n")
    built = listing(tmp_path / "site")
    assert [n for n in built if n.startswith(f"units/{BASE_UNIT}/")]
    assert not [n for n, page in built.items() if slug in n or slug.encode() in page]


@pytest.mark.parametrize("spoil", SPOILED[:4])
def test_strictly_they_stop_it_all(
    run: Any, bank: Path, tmp_path: Path, spoil: Callable[[Path], None]
) -> None:
    before = old_site(tmp_path)
    spoil(second_unit(bank))
    code, out, _ = run("--strict")
    assert code == 1
    assert f"content/{DRAFT}/" in out
    assert "left out" not in out
    assert listing(tmp_path / "site") == before


def test_its_pages_of_last_time_stay(run: Any, bank: Path, tmp_path: Path) -> None:
    unit = second_unit(bank)
    assert run()[0] == 0
    before = listing(tmp_path / "site")
    spoil_the_yaml(unit)
    code, out, _ = run()
    assert code == 0, out
    assert f"left out: content/{DRAFT} (1 error); `check content/{DRAFT}` says" in out
    after = listing(tmp_path / "site")
    pages = [name for name in before if name.startswith(f"{DRAFT}/")]
    assert pages
    assert {name: after.get(name) for name in pages} == {name: before[name] for name in pages}


def test_errors_of_all_others_stop_it_and_those_of_drafts_stay_one_line(
    run: Any, bank: Path
) -> None:
    draft(bank)
    spoil_a_field(bank / DRAFT)
    change(bank / LESSON, "\nminutes: 40\n", "\nminutes: 400\n")
    code, out, _ = run()
    assert code == 1
    assert [line for line in out.splitlines() if DRAFT in line] == [
        f"left out, being drafts with errors: content/{DRAFT} (1 error); `check` says what to mend"
    ]
    assert out.endswith("1 error; the site was not built, and the last one still stands\n")


def test_an_edition_is_published_without_them(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    draft(bank)
    spoil_the_yaml(bank / DRAFT)
    command = ["publish", str(tmp_path / "share"), "--content", str(bank)]
    assert cli.main(command) == 0
    said = capsys.readouterr().out.splitlines()
    assert said[0].startswith(f"left out, being drafts with errors: content/{DRAFT} (1 error)")
    assert said[1].startswith("published ")
    assert len(said) == 2
    spoil_the_yaml(bank / "units" / BASE_UNIT)
    assert cli.main(command) == 1
    assert "the last edition stands" in capsys.readouterr().out


def test_a_draft_that_joins_a_circle_stops_nobody(run: Any, bank: Path) -> None:
    draft(bank)
    names = "\nbuilds_on: {in_words: Walking to a beat, units: [%s]}\n"
    for slug, other in ((BASE_UNIT, "half-done"), ("half-done", BASE_UNIT)):
        file = bank / "units" / slug / "unit.md"
        text = file.read_text(encoding="utf-8")
        text = re.sub(r"\nbuilds_on:.*?(?=\n\w)", "", text, flags=re.DOTALL)
        file.write_text(text.replace("\nsummary:", names % other + "summary:"), encoding="utf-8")
    assert [p.rule for p in check_folder(bank).of_grade("error")] == ["builds-on-circle"]
    code, out, _ = run()
    assert code == 0, out
    assert f"content/{DRAFT} (1 error)" in out


def test_advisers_see_what_stands_in_a_drafts_way(bank: Path, tmp_path: Path) -> None:
    draft(bank)
    spoil_the_shape(bank / DRAFT)
    out = tmp_path / "site"
    assert cli.main(["site", "--content", str(bank), "--out", str(out), "--review"]) == 0
    page = (out / "review.html").read_text(encoding="utf-8")
    assert "Drafts that cannot be read yet" in page
    assert "half-done/unit.md, line " in page


def test_a_folder_of_other_things_is_never_replaced(run: Any, bank: Path, tmp_path: Path) -> None:
    diary = tmp_path / "documents"
    diary.mkdir()
    (diary / "diary.txt").write_bytes(b"mine")
    a_file = tmp_path / "file"
    a_file.write_bytes(b"mine")
    before = listing(tmp_path)
    for out in (diary, a_file, bank, tmp_path, bank / "units", ROOT, ROOT.parent, Path("/")):
        code, said, err = run(out=out)
        assert (code, said) == (2, ""), out
        assert "publish into another folder" in err or "is a file" in err
    assert listing(tmp_path) == before


def test_a_place_that_cannot_be_made(run: Any, tmp_path: Path) -> None:
    (tmp_path / "file").write_bytes(b"mine")
    code, _, err = run(out=tmp_path / "file" / "site")
    assert code == 2
    assert "cannot" in err


def test_the_folder_is_made_with_those_above_it(run: Any, tmp_path: Path) -> None:
    code, _, _ = run(out=tmp_path / "new" / "é with space" / "site")
    assert code == 0
    assert (tmp_path / "new" / "é with space" / "site" / "index.html").is_file()


def test_an_empty_folder_may_be_used(run: Any, tmp_path: Path) -> None:
    (tmp_path / "site").mkdir()
    assert run()[0] == 0


def test_no_content(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["site", "--content", str(tmp_path / "nowhere")]) == 2
    assert capsys.readouterr().err.startswith("there is no folder")
