"""What tests of packs share: the process that others are forked from has started."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools.lifeline.walls import within_walls
from tests.support.hungry import adds


@pytest.fixture(scope="session", autouse=True)
def _walls_are_up(tmp_path_factory: pytest.TempPathFactory) -> None:
    room: Path = tmp_path_factory.mktemp("walls")
    assert within_walls(adds, 1, 1, room=room) == 2
