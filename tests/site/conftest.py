"""The real bank built once a worker, in a folder with a space and an é, and a browser for it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from tests.support.browser import launched
from tests.support.built_sites import CONTENT, build


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("built") / "école of dance" / "site"
    build(CONTENT, folder)
    return folder


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    with launched() as found:
        yield found
