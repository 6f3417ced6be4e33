"""The real bank built once a worker, in a folder with a space and an é; a second browser."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.support.built_sites import CONTENT, build
from tests.support.firefox import Firefox, launched


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("built") / "école of dance" / "site"
    build(CONTENT, folder)
    return folder


@pytest.fixture(scope="session")
def firefox() -> Iterator[Firefox]:
    """One Firefox a worker, with the one tab that `fresh` makes new."""
    with launched() as running:
        yield running
