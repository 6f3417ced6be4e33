"""The real bank built once a worker, in a folder with a space and an é."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.built_sites import CONTENT, build


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("built") / "école of dance" / "site"
    build(CONTENT, folder)
    return folder
