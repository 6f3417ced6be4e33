"""The pages in Firefox, from a folder and without a network: nothing refused, nothing sideways."""

from __future__ import annotations

from pathlib import Path

from tests.support.browser import address_of
from tests.support.built_sites import pages_to_open
from tests.support.firefox import Firefox
from tests.support.tabs import complaints, wait_for

UNIT = "units/rock-pool/"
CARD, COUNTS = f"{UNIT}lesson-2.html#card", f"{UNIT}counts.html"
WIDTHS = (390, 1280)


def test_every_page_opens_without_complaint_and_fits(
    firefox: Firefox, site: Path, thorough: bool
) -> None:
    paths = pages_to_open(site, thorough)[:: 1 if thorough else 3]
    firefox.fresh(WIDTHS[0])
    wrong = []
    for path in paths:
        firefox.open(address_of(site, path))
        for width in WIDTHS:
            firefox.resize(width)
            wide = firefox.evaluate("document.documentElement.scrollWidth - innerWidth")
            if wide > 0:
                wrong.append(f"{path}: {wide} px wider than a window of {width}")
        if stopped := complaints(firefox):
            wrong.append(f"{path}: {stopped}")
    assert wrong == []
    assert len(paths) > 10


def test_a_planted_fault_is_noticed(firefox: Firefox, site: Path) -> None:
    """What the policy stops is heard in this browser too."""
    firefox.fresh()
    firefox.open(address_of(site, COUNTS))
    firefox.evaluate(
        "document.body.append(Object.assign(new Image(), {src: 'http://bank.test/a.png'}))"
    )
    wait_for(firefox, "window.violations.length > 0")
    assert complaints(firefox)


def test_the_finder_finds(firefox: Firefox, site: Path) -> None:
    firefox.fresh()
    firefox.open(address_of(site, "index.html"))
    shown = "[...document.querySelectorAll('.unit-card')].filter((one) => one.offsetParent).length"
    assert firefox.evaluate(shown) == 3
    firefox.fill("#finder-word", "rok pools")
    wait_for(firefox, f"{shown} === 1")
    assert complaints(firefox) == []


def test_the_card_starts_and_survives_a_reload(firefox: Firefox, site: Path) -> None:
    firefox.fresh(390)
    firefox.open(address_of(site, CARD))
    firefox.click("[data-start]")
    wait_for(firefox, "document.querySelector('[data-finish]').textContent.startsWith('Finish by')")
    step = "document.querySelector('.step-card[data-now]').dataset.step"
    first = firefox.evaluate(step)
    firefox.click("[data-next]")
    wait_for(firefox, f"{step} !== {first!r}")
    second = firefox.evaluate(step)
    firefox.open("about:blank")
    firefox.open(address_of(site, CARD))
    wait_for(firefox, f"{step} === {second!r}")
    assert complaints(firefox) == []


def test_the_counts_play_from_a_click(firefox: Firefox, site: Path) -> None:
    firefox.fresh()
    firefox.open(address_of(site, COUNTS))
    big = "document.querySelector('[data-big]').textContent"
    assert firefox.evaluate(big) == "–"
    firefox.click("[data-go]")
    wait_for(firefox, f"'5678'.includes({big})")
    wait_for(firefox, f"'1234'.includes({big})")
    assert complaints(firefox) == []
