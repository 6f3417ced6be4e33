"""Each hostile pack is refused with its own words, soon, in little room, with nothing written.

In the usual run each is judged in this process, and each sixth is sent to the command, which judges
it in a process of its own; with `--thorough` each is.
"""

from __future__ import annotations

import os
import sys
import time
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.commands import take_in  # noqa: F401 -- read before writes are watched
from build_tools.packs.reading.walled import Refused
from build_tools.use_cases import judging_packs
from tests.packs import hostile
from tests.support.judged import measuring, took
from tests.support.packs import empty_bank, pack, written

MOST_SECONDS, MOST_BYTES = 4.0, 200 * 2**20
_SENT = list(hostile.EVERY)[::6]
_WRITES = {"open", "os.mkdir", "os.rename", "os.link", "os.symlink", "os.remove", "os.rmdir"}
_watched: list[str] | None = None


def _note(event: str, arguments: tuple[object, ...]) -> None:
    if _watched is None or event not in _WRITES:
        return
    path, *rest = arguments
    if event in ("os.remove", "os.rmdir") and rest and rest[0] != -1:
        return  # a name in a folder held open: the room that is being cleared away
    mode = rest[0] if rest else None
    if event == "open" and isinstance(mode, str) and not set(mode) & set("wax+"):
        return
    if event == "open" and mode is None:
        flags = rest[1] if len(rest) > 1 else 0
        if not isinstance(flags, int) or not flags & (os.O_WRONLY | os.O_RDWR | os.O_CREAT):
            return
    _watched.append(os.fsdecode(path) if isinstance(path, str | bytes | os.PathLike) else "")


sys.addaudithook(_note)


@pytest.fixture(scope="module")
def bank(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return empty_bank(tmp_path_factory.mktemp("bank") / "content")


def test_there_are_more_than_sixty_and_each_has_words_of_its_own() -> None:
    assert len(hostile.EVERY) >= 60
    words = [words for _, words in hostile.EVERY.values()]
    assert len(set(words)) >= 60


@pytest.mark.parametrize("name", hostile.EVERY)
def test_its_own_words_say_why(
    name: str, bank: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    make, words = hostile.EVERY[name]
    scratch = tmp_path / "scratch"
    scratch.mkdir()
    monkeypatch.setattr("tempfile.tempdir", str(scratch))
    file = written(tmp_path, make())
    before = time.process_time()
    found = judging_packs._judge(bank, file)
    assert time.process_time() - before < MOST_SECONDS
    assert isinstance(found, Refused)
    assert words in "\n".join([found.why, *map(str, found.problems)])
    assert not list(scratch.iterdir())
    assert not list((bank / "units").iterdir())


@pytest.mark.parametrize(
    "name",
    [
        pytest.param(name, marks=() if name in _SENT else pytest.mark.thorough)
        for name in hostile.EVERY
    ],
)
def test_it_is_refused(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    global _watched
    make, words = hostile.EVERY[name]
    content = empty_bank(tmp_path / "content")
    scratch = tmp_path / "scratch"
    scratch.mkdir()
    monkeypatch.setattr("tempfile.tempdir", str(scratch))
    file = written(tmp_path, make())
    before = sorted(content.rglob("*"))
    measuring(monkeypatch)
    _watched = []
    code = cli.main(["take-in", str(file), "--yes", "--content", str(content)])
    seen, _watched = _watched, None
    said = capsys.readouterr()
    assert code == 1, said.out
    assert "refused" in said.out
    assert words in said.out
    assert "Traceback" not in said.out + said.err
    assert sorted(content.rglob("*")) == before
    assert not list(scratch.iterdir())
    assert [path for path in seen if not path.startswith(str(scratch)) and path] == []
    used = took(file)
    assert used is not None
    assert used.seconds < MOST_SECONDS
    assert used.memory < MOST_BYTES


def test_the_sound_pack_that_they_are_made_from_is_taken_in(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = empty_bank(tmp_path / "content")
    file = written(tmp_path, pack())
    assert cli.main(["take-in", str(file), "--yes", "--content", str(content)]) == 0
    assert "taken in" in capsys.readouterr().out
    assert (content / "units" / "paper-boats" / "unit.md").is_file()


def test_the_watch_sees_a_write(tmp_path: Path) -> None:
    global _watched
    _watched = []
    (tmp_path / "a").write_text("a", encoding="utf-8")
    (tmp_path / "b").mkdir()
    seen, _watched = _watched, None
    assert {str(tmp_path / "a"), str(tmp_path / "b")} <= set(seen)
