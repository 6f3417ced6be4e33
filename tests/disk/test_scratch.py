"""Folders for work in hand: gone when it is done, cleared by the next run when it was killed."""

from __future__ import annotations

import signal
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest

from build_tools.disk.scratch import WITHIN, scratch
from build_tools.disk.whole_folder import staged

HOLD = """
import sys, time
from pathlib import Path
from build_tools.disk.scratch import scratch
with scratch("held", beside=Path(sys.argv[1])) as room:
    (room / "half").write_text("half")
    print(room, flush=True)
    time.sleep(60)
"""


def holding(place: Path) -> tuple[subprocess.Popen[str], Path]:
    child = subprocess.Popen(
        [sys.executable, "-c", HOLD, str(place)], stdout=subprocess.PIPE, text=True
    )
    assert child.stdout is not None
    return child, Path(child.stdout.readline().strip())


def test_it_goes_with_the_work(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(tempfile, "gettempdir", lambda: str(tmp_path))
    with pytest.raises(FileExistsError), scratch("pages") as room:
        room.mkdir()
    assert list(tmp_path.iterdir()) == []


def test_what_a_killed_run_left_goes_and_what_is_in_use_stays(tmp_path: Path) -> None:
    killed, left = holding(tmp_path)
    killed.send_signal(signal.SIGKILL if sys.platform != "win32" else signal.SIGTERM)
    killed.wait()
    assert (left / "half").exists()
    using, used = holding(tmp_path)
    try:
        assert not left.exists()
        with scratch("held", beside=tmp_path):
            assert (used / "half").exists()
        with scratch("other", beside=tmp_path):
            assert (used / "half").exists()
    finally:
        using.kill()
        using.wait()


def test_a_folder_of_that_name_that_is_not_ours_is_left_alone(tmp_path: Path) -> None:
    strange = tmp_path / ".dance-unit-bank-held-mine"
    strange.mkdir()
    (strange / "mine.txt").write_text("mine")
    goal = tmp_path / "goal"
    goal.mkdir()
    (goal / "mine.txt").write_text("mine")
    (goal / ".in-use").write_text("")
    (tmp_path / ".dance-unit-bank-held-link").symlink_to(goal, target_is_directory=True)
    with scratch("held", beside=tmp_path):
        pass
    assert (strange / "mine.txt").exists()
    assert (goal / "mine.txt").exists()


def test_a_site_whose_swap_was_cut_off_has_its_name_again(tmp_path: Path) -> None:
    room = tmp_path / ".dance-unit-bank-site-abc" / WITHIN / "old"
    room.mkdir(parents=True)
    (room / "index.html").write_text("the last good one")
    with pytest.raises(ValueError, match="errors"), staged(tmp_path / "site"):
        raise ValueError("errors")
    assert (tmp_path / "site" / "index.html").read_text() == "the last good one"
