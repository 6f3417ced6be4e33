"""A site is built by doing what changed, and has the bytes of one built anew."""

from __future__ import annotations

import random
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from build_tools.building import assets, input_keys, templates, unit_files
from build_tools.building.input_keys import software_digest
from build_tools.building.site_record import SiteRecord, read_record
from build_tools.disk.places import OVERRIDES
from tests.building.banks import built, built_anew, lead, two_units
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.built_sites import files

EDITS, EDITS_THOROUGH = 15, 200
UNIT = f"units/{BASE_UNIT}"


@pytest.fixture(scope="module")
def built_once(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The bank, its site and what is kept of it, for each test to copy."""
    folder = tmp_path_factory.mktemp("once")
    built(two_units(folder), folder / "site", folder)
    return folder


@pytest.fixture
def bank(built_once: Path, tmp_path: Path) -> Path:
    """The bank of two units, its site built once."""
    shutil.copytree(built_once, tmp_path, dirs_exist_ok=True)
    return tmp_path / "content"


@pytest.fixture
def out(bank: Path) -> Path:
    return bank.parent / "site"


@pytest.fixture(scope="module")
def small_once(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A bank of one unit, its site and what is kept of it, for each test to copy."""
    folder = tmp_path_factory.mktemp("small")
    built(copy_base(folder), folder / "site", folder)
    return folder


@pytest.fixture
def small(small_once: Path, tmp_path: Path) -> tuple[Path, Path]:
    """A bank of one unit and its site, built once."""
    shutil.copytree(small_once, tmp_path, dirs_exist_ok=True)
    return tmp_path / "content", tmp_path / "site"


def times(folder: Path) -> dict[str, int]:
    """When each file and folder was last changed, `folder` itself too."""
    return {str(path): path.stat().st_mtime_ns for path in (folder, *folder.rglob("*"))}


def test_nothing_changed_writes_nothing(bank: Path, out: Path, tmp_path: Path) -> None:
    # what is known of the files is known of these copies once they were looked at
    built(bank, out, tmp_path)
    before = times(tmp_path)
    done = built(bank, out, tmp_path)
    assert (done.units, done.written, done.gone) == (2, (), ())
    assert times(tmp_path) == before


def test_a_changed_unit_writes_its_own_pages_alone(bank: Path, out: Path, tmp_path: Path) -> None:
    change(bank / UNIT / "lesson-2.md", "\nfocus: ", "\nfocus: Now, ")
    done = built(bank, out, tmp_path)
    assert done.written
    assert all(name.startswith(f"{UNIT}/") for name in done.written)
    assert f"{UNIT}/lesson-2.html" in done.written
    assert f"{UNIT}/counts.html" not in done.written
    assert files(out) == files(built_anew(bank, tmp_path / "anew", tmp_path))


def test_a_title_changes_the_lists_it_is_in_too(bank: Path, out: Path, tmp_path: Path) -> None:
    change(bank / UNIT / "unit.md", "\ntitle: Paper boats\n", "\ntitle: Paper rafts\n")
    lists = {name for name in built(bank, out, tmp_path).written if not name.startswith("units/")}
    assert {"index.html", "assets/find/known.js"} <= lists
    same = ("assets/css/", "assets/js/", "assets/fonts/", "rules", "safety")
    assert not {name for name in lists if name.startswith(same)}


def test_a_unit_taken_away_goes_with_all_that_leads_to_it(
    bank: Path, out: Path, tmp_path: Path
) -> None:
    assert BASE_UNIT.encode() in (out / "units/ink-drops/next.html").read_bytes()
    shutil.rmtree(bank / UNIT)
    done = built(bank, out, tmp_path)
    shelves = (f"{UNIT}/", "browse/", "assets/find/")
    assert all(name.startswith(shelves) for name in done.gone)
    assert "units/ink-drops/next.html" in done.written
    assert not (out / UNIT).exists()
    assert files(out) == files(built_anew(bank, tmp_path / "anew", tmp_path))


def test_what_somebody_did_to_the_site_is_mended(small: tuple[Path, Path], tmp_path: Path) -> None:
    bank, out = small
    whole = files(out)
    harmed = {"index.html", f"{UNIT}/lesson-1.html", "assets/css/look.css"}
    for harm in ("gone", "changed", "a folder"):
        for name in harmed:
            (out / name).unlink()
            if harm == "changed":
                (out / name).write_bytes(b"another")
            if harm == "a folder":
                (out / name / "in it").mkdir(parents=True)
                (out / name / "in it" / "file").write_bytes(b"mine")
        (out / "added.html").write_bytes(b"added")
        assert harmed <= {*built(bank, out, tmp_path).written}, harm
        assert files(out) == whole, harm


def test_a_record_that_cannot_be_read_costs_time_only(
    small: tuple[Path, Path], tmp_path: Path
) -> None:
    bank, out = small
    record, whole = tmp_path / "built.site", files(out)
    data = record.read_bytes()
    for spoiled in (b"", data[:-200], b"\x80\x05" + data[40:], b"cos\nsystem\n(S'exit 1'\ntR."):
        record.write_bytes(spoiled)
        assert read_record(record, software_digest()) == SiteRecord()
    assert built(bank, out, tmp_path).written == ()
    assert files(out) == whole
    assert len(record.read_bytes()) > 0.9 * len(data)


class Edits:
    """Changes as they happen to a bank in a year, drawn at random."""

    def __init__(self, bank: Path, overrides: Path, choose: random.Random) -> None:
        self.bank, self.overrides, self.choose, self.count = bank, overrides, choose, 0
        self.waiting: list[Callable[[], None]] = []

    def one(self) -> str:
        """Make one; gives its name."""
        self.count += 1
        if not self.waiting:
            self.waiting = [
                self.words, self.minutes, self.title, self.add, self.rename, self.remove,
                self.leads, self.draft, self.picture, self.settings, self.list_of_words,
                self.template, self.style, self.touch, self.nothing,
            ]  # fmt: skip
            self.choose.shuffle(self.waiting)
        kind = self.waiting.pop()
        kind()
        return kind.__name__

    def unit(self) -> Path:
        return self.choose.choice(sorted((self.bank / "units").iterdir()))

    def substitute(self, file: Path, start: str, words: str) -> None:
        """Another text for the first line of `file` that starts so."""
        lines = file.read_text(encoding="utf-8").split("\n")
        at = next(n for n, line in enumerate(lines) if line.startswith(start))
        lines[at] = f"{start}{words}"
        file.write_text("\n".join(lines), encoding="utf-8")

    def words(self) -> None:
        lesson = self.choose.choice(sorted(self.unit().glob("lesson-*.md")))
        self.substitute(lesson, "focus: ", f"Fold and float with a clear stop {self.count}.")

    def minutes(self) -> None:
        self.substitute(self.unit() / "unit.md", "summary: ", f"A boat sails {self.count} times.")

    def title(self) -> None:
        self.substitute(self.unit() / "unit.md", "title: ", f"Boats number {self.count}")

    def add(self) -> None:
        source, slug = self.unit(), f"unit-{self.count}"
        shutil.copytree(source, self.bank / "units" / slug)
        self.substitute(self.bank / "units" / slug / "unit.md", "title: ", f"New {self.count}")

    def rename(self) -> None:
        self.unit().rename(self.bank / "units" / f"renamed-{self.count}")

    def remove(self) -> None:
        if len(list((self.bank / "units").iterdir())) > 1:
            shutil.rmtree(self.unit())

    def leads(self) -> None:
        one, other = self.unit(), self.unit()
        if one != other:
            lead(self.bank, one.name, other.name)

    def draft(self) -> None:
        file = self.unit() / "unit.md"
        text = file.read_text(encoding="utf-8")
        plain = text.replace("\ndraft: true\n", "\n")
        file.write_text(
            plain if plain != text else text.replace("\ntitle:", "\ndraft: true\ntitle:", 1),
            encoding="utf-8",
        )

    def picture(self) -> None:
        picture = self.unit() / "media" / "boat.svg"
        text = picture.read_text(encoding="utf-8")
        shape = f'<path d="M{self.count} 1h1"/></svg>'
        picture.write_text(text.replace("</svg>", shape), encoding="utf-8")

    def settings(self) -> None:
        self.substitute(self.bank / "bank.yml", "name: ", f"Bank of year {self.count}")

    def list_of_words(self) -> None:
        with (self.bank / "vocabulary" / "topics.yml").open("a", encoding="utf-8") as file:
            file.write(f"\ntopic-{self.count}: {{also: [things {self.count}]}}\n")

    def template(self) -> None:
        page = self.overrides / self.choose.choice(("front/front.html", "wall/wall.html"))
        with page.open("a", encoding="utf-8") as file:
            file.write("\n")
        frame = self.overrides / "frame" / "frame.html"
        text = frame.read_text(encoding="utf-8")
        frame.write_text(text.replace("</body>", f"<!--{self.count}--></body>"), encoding="utf-8")

    def style(self) -> None:
        with (self.overrides / "card" / "card.css").open("a", encoding="utf-8") as file:
            file.write(f".card {{ order: {self.count} }}\n")

    def touch(self) -> None:
        (self.unit() / "unit.md").touch()

    def nothing(self) -> None:
        """Build again as it is."""


def forget_templates() -> None:
    """Let templates and what is made of them once be read anew."""
    templates.templates.cache_clear()
    unit_files.assets_once.cache_clear()


@pytest.fixture
def overrides(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """Templates, styles and scripts to edit; no later test is left with what became of them."""
    copied = tmp_path / "overrides"
    shutil.copytree(OVERRIDES, copied)
    for module in (assets, input_keys, templates):
        monkeypatch.setattr(module, "OVERRIDES", copied)
    yield copied
    forget_templates()


def test_incremental_and_cold_builds_give_the_same_after_any_edits(
    bank: Path, overrides: Path, tmp_path: Path, thorough: bool
) -> None:
    edits = Edits(bank, overrides, random.Random(20261129))
    out, told, written = tmp_path / "site", [], 0
    for _ in range(EDITS_THOROUGH if thorough else EDITS):
        told.append(edits.one())
        if told[-1] in ("template", "style"):
            forget_templates()
        written += len(built(bank, out, tmp_path).written)
        again = built(bank, out, tmp_path)
        assert (again.written, again.gone) == ((), ()), told
        if thorough or len(told) in (EDITS // 2, EDITS):
            anew = built_anew(bank, tmp_path / "anew", tmp_path)
            assert files(out) == files(anew), told
            shutil.rmtree(anew)
    assert len(set(told)) == EDITS, told
    assert written > len(told)
