"""A lesson's own pictures in a browser: on the wall one by one, in the file that is kept, in print.

Text for every picture: Web Content Accessibility Guidelines 2.2, 1.1.1.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from build_tools.building.unit_files import assets_once, unit_files
from build_tools.checking.check_bank import check_folder
from tests.site.test_one_file import SHAPE, as_made_here, kept
from tests.support.banks import BASE_UNIT
from tests.support.browser import address_of, reader
from tests.support.paper import printed
from tests.support.shared_pictures import bank_that_shares

AT = f"units/{BASE_UNIT}/lesson-2"
WALL = f"units/{BASE_UNIT}/wall.html#lesson-2"
PRINTED = f"units/{BASE_UNIT}/to-print.html#lesson-2"
SEEN = """() => [...document.querySelectorAll(".wall-root > section")]
  .filter((one) => one.checkVisibility()).map((one) => one.querySelector("img")?.alt ?? "a step")"""
ALTS = "[...document.images].filter(i => i.naturalWidth).map(i => i.alt)"
WIDTHS = "[...document.querySelectorAll('.shown-picture img')].map(i => i.naturalWidth)"
HARBOUR = "Boats lie still on flat water: one has its sail up."
WHIRL = "Water turning round a stone."


@pytest.fixture(scope="module")
def shown(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The unit's pages with what they load, as they are published."""
    folder = tmp_path_factory.mktemp("shown")
    bank = bank_that_shares(folder)
    report = check_folder(bank)
    assert report.bank is not None
    (unit,) = report.bank.units
    for name, data in {**assets_once(), **unit_files(report.bank, unit, bank)}.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(data)
    return folder


def test_the_wall_shows_each_alone_before_the_first_step(browser: Browser, shown: Path) -> None:
    with reader(browser, shown, script=True) as at:
        at.page.goto(address_of(shown, WALL))
        seen = []
        for _ in range(3):
            seen += at.page.evaluate(SEEN)
            at.page.keyboard.press("ArrowRight")
        assert seen[:2] == [HARBOUR, WHIRL]
        assert seen[2] not in (HARBOUR, WHIRL)
        at.page.keyboard.press("ArrowLeft")
        at.page.keyboard.press("ArrowLeft")
        assert at.page.evaluate(SEEN) == [WHIRL]


def test_without_scripts_every_picture_is_there(browser: Browser, shown: Path) -> None:
    with reader(browser, shown) as at:
        for page in (WALL, f"{AT}.html", PRINTED):
            at.page.goto(address_of(shown, page))
            alts = at.page.evaluate(ALTS)
            assert {HARBOUR, WHIRL} <= set(alts), page


def test_the_file_that_is_kept_holds_them(browser: Browser, shown: Path, tmp_path: Path) -> None:
    with reader(browser, shown, script=True) as at, reader(browser, tmp_path) as alone:
        html = kept(at, shown, f"{AT}.html")
        made = as_made_here(shown, f"{AT}.html")
        shapes = [alone.page.evaluate(SHAPE, one) for one in (html, made)]
        assert shapes[0] == shapes[1]
        (tmp_path / "kept.html").write_text(html, encoding="utf-8")
        alone.page.goto(address_of(tmp_path, "kept.html"))
        widths = alone.page.evaluate(WIDTHS)
        assert widths == [80, 40]


def test_they_are_printed_after_the_lessons_own_two_sides(browser: Browser, shown: Path) -> None:
    with reader(browser, shown, script=True) as at:
        at.page.goto(address_of(shown, f"{AT}.html"))
        paper = printed(at.page)
    found = paper.side_of("Pictures for lesson 2")
    assert found is not None
    assert found[0] == 2
