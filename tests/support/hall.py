"""A view for the hall opened at a time of day of the test's own."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from playwright.sync_api import Browser, Locator, Page

from tests.support.browser import Reader, address_of, reader

TEN_PAST_ONE = datetime.datetime(2026, 11, 25, 13, 7)
KEY = "dance-unit-bank"
REFUSED = """
Object.defineProperty(window, "localStorage", {
  get() { throw new DOMException("no", "SecurityError"); },
});
"""
LETTERS_APART = """
for (const element of document.querySelectorAll("main, main *")) {
  element.style.setProperty("letter-spacing", "0.12em", "important");
  element.style.setProperty("word-spacing", "0.16em", "important");
  element.style.setProperty("line-height", "1.5", "important");
}
"""
"""Source: WCAG 2.2, success criterion 1.4.12 Text Spacing; set one property at a time."""


@contextmanager
def opened(
    browser: Browser,
    site: Path,
    path: str,
    *,
    size: tuple[int, int] = (390, 844),
    time: datetime.datetime = TEN_PAST_ONE,
    dark: bool = False,
    script: bool = True,
    served: bool = False,
    extra_script: str = "",
) -> Iterator[Reader]:
    """The page at `path`, which may end in a fragment, as a reader sees it at `time`."""
    with reader(
        browser,
        site,
        width=size[0],
        dark=dark,
        script=script,
        served=served,
        extra_script=extra_script,
    ) as at:
        at.page.set_viewport_size({"width": size[0], "height": size[1]})
        if script:
            at.page.clock.install(time=time)
        page, _, fragment = path.partition("#")
        address = address_of(site, page, served=served)
        at.page.goto(f"{address}#{fragment}" if fragment else address)
        yield at


SMALL = """
(least) => [...document.querySelectorAll("a, button, summary")].flatMap((one) => {
  const { width, height } = one.getBoundingClientRect();
  const seen = width && height && one.checkVisibility({ visibilityProperty: true });
  return seen && (height < least - 0.5 || width < least - 0.5)
    ? [`${one.innerText}: ${Math.round(width)} x ${Math.round(height)}`] : [];
})
"""


def small_targets(page: Page, least: float = 44) -> list[str]:
    """What can be pressed now and is lower or narrower than `least` pixels."""
    found: list[str] = page.evaluate(SMALL, least)
    return found


def font_sizes(found: Locator) -> list[float]:
    """The sizes of type, in pixels, of every element that can be seen."""
    sizes: list[float] = found.evaluate_all(
        "all => all.filter(one => one.checkVisibility())"
        ".map(one => parseFloat(getComputedStyle(one).fontSize))"
    )
    return sizes
