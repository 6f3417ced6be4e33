"""A preview of the small bank, whose pages are made once for all tests."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from build_tools.building.assets import copy_assets
from build_tools.building.preview.server import Preview, serve
from build_tools.building.preview.state import State
from build_tools.building.unit_files import unit_files
from build_tools.checking.check_bank import check_folder
from tests.support.banks import BASE_UNIT, copy_base
from tests.support.shared import made_once


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    """The small bank, to be changed at will."""
    return copy_base(tmp_path)


@pytest.fixture
def state() -> State:
    """What the pages are told."""
    return State()


@pytest.fixture
def preview(bank: Path, tmp_path: Path, state: State) -> Iterator[Preview]:
    """The preview of it, on whose pages it can be changed."""
    site = tmp_path / "site"
    site.mkdir()
    running = serve(site, 0, state, bank)
    yield running
    running.stop()


@pytest.fixture(scope="session")
def pages(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The pages of its unit as they are before anything is changed."""

    def make(folder: Path) -> None:
        bank = copy_base(folder)
        report = check_folder(bank)
        assert report.bank is not None
        copy_assets(folder / "site")
        for name, data in unit_files(report.bank, report.bank.units[0], bank).items():
            path = folder / "site" / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(data)

    return made_once(tmp_path_factory, "pages-to-edit", make) / "site"


@pytest.fixture
def page(browser: Browser, preview: Preview, pages: Path, tmp_path: Path) -> Iterator[Page]:
    """The first lesson's page in a window."""
    shutil.copytree(pages, tmp_path / "site", dirs_exist_ok=True)
    context = browser.new_context(viewport={"width": 1280, "height": 900})
    shown_page = context.new_page()
    shown_page.goto(f"{preview.address}units/{BASE_UNIT}/lesson-1.html")
    yield shown_page
    context.close()
