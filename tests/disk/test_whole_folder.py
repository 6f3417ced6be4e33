"""A finished folder takes the old one's place, whole or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools.disk.whole_folder import staged


def listing(folder: Path) -> dict[str, str]:
    return {
        p.relative_to(folder).as_posix(): p.read_text(encoding="utf-8")
        for p in sorted(folder.rglob("*"))
        if p.is_file()
    }


@pytest.fixture
def site(tmp_path: Path) -> Path:
    target = tmp_path / "site"
    (target / "units").mkdir(parents=True)
    (target / "index.html").write_text("old", encoding="utf-8")
    (target / "units" / "gone.html").write_text("old", encoding="utf-8")
    return target


def test_the_new_takes_the_place_of_the_old(site: Path) -> None:
    with staged(site) as fresh:
        (fresh / "index.html").write_text("new", encoding="utf-8")
        assert listing(site)["index.html"] == "old"
    assert listing(site) == {"index.html": "new"}
    assert [p.name for p in site.parent.iterdir()] == ["site"]


def test_the_first_is_put_where_there_was_none(tmp_path: Path) -> None:
    target = tmp_path / "a" / "b" / "site"
    with staged(target) as fresh:
        (fresh / "index.html").write_text("new", encoding="utf-8")
    assert listing(target) == {"index.html": "new"}
    assert [p.name for p in target.parent.iterdir()] == ["site"]


@pytest.mark.parametrize("stop", [RuntimeError, KeyboardInterrupt, SystemExit, OSError])
def test_work_that_fails_leaves_the_old_untouched(site: Path, stop: type[BaseException]) -> None:
    before = listing(site)

    def stopped_half_way() -> None:
        with staged(site) as fresh:
            (fresh / "index.html").write_text("half", encoding="utf-8")
            raise stop

    with pytest.raises(stop):
        stopped_half_way()
    assert listing(site) == before
    assert [p.name for p in site.parent.iterdir()] == ["site"]


def test_a_swap_that_fails_half_way_puts_the_old_back(
    site: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = listing(site)
    replace = Path.replace

    def refusing(self: Path, target: Path) -> Path:
        if self.name == "fresh":
            raise PermissionError(13, "in use")
        return replace(self, target)

    monkeypatch.setattr(Path, "replace", refusing)
    with pytest.raises(PermissionError), staged(site) as fresh:
        (fresh / "index.html").write_text("new", encoding="utf-8")
    assert listing(site) == before
    assert [p.name for p in site.parent.iterdir()] == ["site"]


def test_an_old_one_that_cannot_be_moved_stays(site: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = listing(site)
    replace = Path.replace

    def refusing(self: Path, target: Path) -> Path:
        if self == site:
            raise PermissionError(13, "in use")
        return replace(self, target)

    monkeypatch.setattr(Path, "replace", refusing)
    with pytest.raises(PermissionError), staged(site) as fresh:
        (fresh / "index.html").write_text("new", encoding="utf-8")
    assert listing(site) == before


def test_the_new_folder_is_open_to_everyone_the_old_one_was(site: Path) -> None:
    (site.parent / "usual").mkdir()
    usual = (site.parent / "usual").stat().st_mode
    with staged(site) as fresh:
        (fresh / "index.html").write_text("new", encoding="utf-8")
    assert site.stat().st_mode == usual
