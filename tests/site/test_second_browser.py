"""Pages and drawings in Firefox, from a folder, with a listener in place of the network.

Nothing is refused, nothing is asked for, nothing goes sideways. The browser, which takes long to
start, is started once for all of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.pictures.attempts import RUN, SVG
from tests.pictures.test_opened_alone import FEW, RAN, chosen, drawings, in_firefox
from tests.support.browser import address_of
from tests.support.built_sites import pages_to_open
from tests.support.firefox import Firefox, launched
from tests.support.listening import Listener, listening
from tests.support.tabs import complaints, wait_for

UNIT = "units/rock-pool/"
CARD, COUNTS = f"{UNIT}lesson-2.html#card", f"{UNIT}counts.html"
WIDTHS = (390, 1280)
EVERY = 7
"""Of so many pages one is opened in the usual run."""
HEARD = "heard.test"
"""Asked for by what has to be heard; a browser may ask again a while later."""


@pytest.fixture(scope="module")
def listener() -> Iterator[Listener]:
    with listening() as found:
        yield found


@pytest.fixture(scope="module")
def firefox(listener: Listener) -> Iterator[Firefox]:
    with launched(listener.port) as running:
        yield running


def asked(listener: Listener) -> list[str]:
    """What was asked for, what has to be heard apart."""
    return [one for one in listener.asked_by_pages() if HEARD not in one]


def test_every_page_opens_without_complaint_and_fits(
    firefox: Firefox, listener: Listener, site: Path, thorough: bool
) -> None:
    paths = pages_to_open(site, thorough)[:: 1 if thorough else EVERY]
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
    assert asked(listener) == []
    assert len(paths) > 3


def test_a_planted_fault_is_noticed(firefox: Firefox, site: Path) -> None:
    """What the policy stops is heard in this browser too."""
    firefox.fresh()
    firefox.open(address_of(site, COUNTS))
    firefox.evaluate(
        f"document.body.append(Object.assign(new Image(), {{src: 'http://{HEARD}/a.png'}}))"
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


def test_the_listener_hears_what_a_drawing_asks_and_sees_a_script(
    firefox: Firefox, listener: Listener, tmp_path: Path
) -> None:
    file = tmp_path / "a.svg"
    file.write_text(f"{SVG}><image href='http://{HEARD}/a.png'/><script>{RUN}</script></svg>")
    firefox.fresh()
    firefox.open(file.as_uri())
    assert firefox.evaluate(RAN) is True
    assert any(HEARD in one for one in listener.asked_by_pages())


def test_a_drawing_opened_alone_does_nothing_but_show_itself(
    firefox: Firefox, listener: Listener, tmp_path: Path, thorough: bool
) -> None:
    firefox.fresh()
    for file in chosen(drawings(tmp_path), FEW, thorough):
        in_firefox(firefox, file)
    assert asked(listener) == []
