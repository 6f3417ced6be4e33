"""A preview of the small bank, whose pages are made once for all tests and shown in one window."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from build_tools.building.assets import copy_assets
from build_tools.building.preview import server
from build_tools.building.preview.server import Preview, serve
from build_tools.building.preview.state import State
from build_tools.building.unit_files import unit_files
from build_tools.checking.check_bank import check_folder
from tests.building.preview.asking import SOONER
from tests.support.banks import BASE_UNIT, copy_base
from tests.support.shared import made_once


@pytest.fixture(autouse=True, scope="module")
def _servers_stop_at_once() -> Iterator[None]:
    """What waits in the tenth of a second between two looks is the test, and nobody else."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(server, "_ENDS_SECONDS", 0.005)
        yield


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    """The small bank, to be changed at will."""
    return copy_base(tmp_path)


@pytest.fixture
def state() -> State:
    """What the pages are told."""
    return State()


@pytest.fixture
def preview(bank: Path, pages: Path, state: State) -> Iterator[Preview]:
    """The preview of it, on whose pages it can be changed."""
    running = serve(pages, 0, state, bank)
    yield running
    running.stop()


@pytest.fixture(scope="session")
def pages(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The pages of its unit as they are before anything is changed, which nobody writes to."""

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


@pytest.fixture(scope="module")
def window(browser: Browser) -> Iterator[Page]:
    """A window for all tests; a preview is another site each time, by its port."""
    context = browser.new_context(viewport={"width": 1280, "height": 900})
    context.add_init_script(SOONER)
    yield context.new_page()
    context.close()


@pytest.fixture
def unit_page(window: Page, preview: Preview) -> Page:
    """The unit's own page in a window."""
    window.goto(f"{preview.address}units/{BASE_UNIT}/index.html")
    return window


@pytest.fixture
def page(window: Page, preview: Preview) -> Iterator[Page]:
    """The first lesson's page in a window."""
    window.goto(f"{preview.address}units/{BASE_UNIT}/lesson-1.html")
    yield window
    for other in set(window.context.pages) - {window}:
        other.close()
