"""A published folder for each test."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools.publishing.publish import publish
from tests.publishing.folders import DAY, TITLE, make_site


@pytest.fixture
def share(tmp_path: Path) -> Path:
    """A folder with one edition in it."""
    target = tmp_path / "share"
    publish(make_site(tmp_path / "first", 2), target, DAY, TITLE)
    return target
