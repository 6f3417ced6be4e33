"""Work of another process that may only use so much: an answer, or which limit was hit."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from build_tools.lifeline import walls
from build_tools.lifeline.walls import DISK, MEMORY, MOST_ANSWER, FellError, WallError, within_walls
from tests.support import hungry


def test_what_the_work_gives_comes_back(tmp_path: Path) -> None:
    assert within_walls(hungry.adds, 2, 3, room=tmp_path) == 5


def test_its_temporary_files_lie_in_its_room(tmp_path: Path) -> None:
    assert within_walls(hungry.where, room=tmp_path).startswith(str(tmp_path))
    assert list(tmp_path.iterdir()) == []


def test_it_works_where_temporary_files_lie_deep_down(tmp_path: Path) -> None:
    """The address of a socket in that folder would be longer than systems allow."""
    deep = tmp_path / ("deep" * 25)
    deep.mkdir()
    asked = (
        "from pathlib import Path; from tests.support import hungry; "
        "from build_tools.lifeline.walls import within_walls; "
        f"print(within_walls(hungry.adds, 2, 3, room=Path({str(tmp_path)!r})))"
    )
    done = subprocess.run(
        [sys.executable, "-c", asked],
        env=dict(os.environ) | {"TMPDIR": str(deep)},
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    assert done.stdout == "5\n", done.stderr


def test_its_own_fault_is_told(tmp_path: Path) -> None:
    with pytest.raises(FellError, match="ZeroDivisionError"):
        within_walls(hungry.divides, 1, 0, room=tmp_path)
    with pytest.raises(FellError, match="RecursionError"):
        within_walls(hungry.recurses, 0, room=tmp_path)
    with pytest.raises(FellError, match="ended with 7"):
        within_walls(hungry.dies, 7, room=tmp_path)


@pytest.mark.parametrize(
    ("work", "given", "limit"),
    [
        (hungry.thinks, (), "time"),
        (hungry.remembers, (1000,), "memory"),
        (hungry.asks_at_once, (MEMORY,), "memory"),
        (hungry.asks_at_once, (2**40,), "memory"),
        (hungry.writes, (30, DISK // 20), "disk"),
        (hungry.writes, (1, DISK + 1), "disk"),
        (hungry.says, (MOST_ANSWER + 1,), "words"),
    ],
    ids=["time", "memory", "memory at once", "more than there is", "disk", "one file", "words"],
)
def test_what_wants_too_much_is_ended(
    work: Callable[..., Any], given: tuple[int, ...], limit: str, tmp_path: Path
) -> None:
    # what only thinks is soon at its end; what asks for too much of something else has the time
    with pytest.raises(WallError) as ended:
        within_walls(work, *given, room=tmp_path, seconds=1 if limit == "time" else 4)
    assert ended.value.limit == limit


def test_what_never_works_is_ended_too(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(walls, "WAITING_SECONDS", 0.2)
    start = time.monotonic()
    with pytest.raises(WallError) as ended:
        within_walls(hungry.sleeps, 60.0, room=tmp_path)
    assert ended.value.limit == "time"
    assert time.monotonic() - start < 30


def test_within_the_limits_much_can_be_had(tmp_path: Path) -> None:
    assert within_walls(hungry.remembers, 100, room=tmp_path) == 100
    assert within_walls(hungry.writes, 4, DISK // 5, room=tmp_path) == 4
    assert len(within_walls(hungry.says, MOST_ANSWER // 2, room=tmp_path)) == MOST_ANSWER // 2


def test_a_slower_computer_gets_more_time(monkeypatch: pytest.MonkeyPatch) -> None:
    for pace, slowness in ((0.001, 1.0), (walls.USUAL_PACE * 3, 3.0), (60.0, walls.SLOWEST)):
        monkeypatch.setattr(walls, "_pace", lambda pace=pace: pace)
        assert walls._slowness() == pytest.approx(slowness)
