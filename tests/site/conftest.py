"""The real bank built once a run, in a folder with a space and an é; a second browser."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.support.built_sites import CONTENT, build
from tests.support.firefox import Firefox, launched
from tests.support.shared import made_once


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Nobody changes it: whoever wants to spoil a page copies it first."""
    inside = Path("école of dance") / "site"
    return made_once(tmp_path_factory, "built", lambda at: build(CONTENT, at / inside)) / inside


@pytest.fixture(scope="session")
def firefox() -> Iterator[Firefox]:
    """One Firefox a worker, with the one tab that `fresh` makes new."""
    with launched() as running:
        yield running
