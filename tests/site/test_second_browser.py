"""The pages in Firefox, from a folder and without a network: nothing refused, nothing sideways."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.support.browser import address_of
from tests.support.built_sites import html_pages
from tests.support.firefox import Firefox, firefox
from tests.support.tabs import wait_for

UNIT = "units/rock-pool/"
CARD, COUNTS = f"{UNIT}lesson-2-card.html", f"{UNIT}counts.html"


@pytest.fixture(scope="module")
def tab() -> Iterator[Firefox]:
    with firefox() as running:
        yield running


def complaints(tab: Firefox) -> list[str]:
    stopped: list[str] = tab.evaluate("window.violations")
    return stopped + [line for line in tab.said() if line.startswith(("error", "uncaught"))]


@pytest.mark.parametrize("width", [390, 1280])
def test_every_page_opens_without_complaint_and_fits(
    tab: Firefox, site: Path, width: int, thorough: bool
) -> None:
    """All pages when thorough; otherwise those of one unit and those that units share."""
    paths = html_pages(site)
    if not thorough:
        paths = [path for path in paths if not path.startswith("units/") or path.startswith(UNIT)]
    tab.fresh(width)
    wrong = []
    for path in paths:
        tab.open(address_of(site, path))
        wide = tab.evaluate("document.documentElement.scrollWidth - innerWidth")
        if stopped := complaints(tab):
            wrong.append(f"{path}: {stopped}")
        if wide > 0:
            wrong.append(f"{path}: {wide} px wider than the window")
    assert wrong == []
    assert len(paths) > 30


def test_a_planted_fault_is_noticed(tab: Firefox, site: Path) -> None:
    """What the policy stops is heard in this browser too."""
    tab.fresh()
    tab.open(address_of(site, COUNTS))
    tab.evaluate(
        "document.body.append(Object.assign(new Image(), {src: 'http://bank.test/a.png'}))"
    )
    wait_for(tab, "window.violations.length > 0")
    assert complaints(tab)


def test_the_finder_finds(tab: Firefox, site: Path) -> None:
    tab.fresh()
    tab.open(address_of(site, "index.html"))
    shown = "[...document.querySelectorAll('.entry')].filter((one) => one.offsetParent).length"
    assert tab.evaluate(shown) == 3
    tab.fill("#finder-word", "rok pools")
    wait_for(tab, f"{shown} === 1")
    assert complaints(tab) == []


def test_the_card_starts_and_survives_a_reload(tab: Firefox, site: Path) -> None:
    tab.fresh(390)
    tab.open(address_of(site, CARD))
    tab.click("[data-start]")
    wait_for(tab, "document.querySelector('[data-finish]').textContent.startsWith('Finish by')")
    step = "document.querySelector('.step-card[data-now]').dataset.step"
    first = tab.evaluate(step)
    tab.click("[data-next]")
    wait_for(tab, f"{step} !== {first!r}")
    second = tab.evaluate(step)
    tab.open("about:blank")
    tab.open(address_of(site, CARD))
    wait_for(tab, f"{step} === {second!r}")
    assert complaints(tab) == []


def test_the_counts_play_from_a_click(tab: Firefox, site: Path) -> None:
    tab.fresh()
    tab.open(address_of(site, COUNTS))
    big = "document.querySelector('[data-big]').textContent"
    assert tab.evaluate(big) == "–"
    tab.click("[data-go]")
    wait_for(tab, f"'5678'.includes({big})")
    wait_for(tab, f"'1234'.includes({big})")
    assert complaints(tab) == []
