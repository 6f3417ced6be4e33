"""What the bank teaches, in a browser: it is read and walked by keyboard, and prints whole.

Source of the keyboard and of 320 px: WCAG 2.2, success criteria 2.1.1 Keyboard, 2.4.7
Focus Visible and 1.4.10 Reflow. axe-core looks at the page in test_every_page.py.
"""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import Browser

from build_tools.views.teaching.words_said import HEADINGS_SAID
from tests.support.browser import address_of, reader
from tests.support.paper import printed, squeezed

NARROW = 320
WIDER = """
() => [...document.querySelectorAll(".table")]
  .filter((frame) => frame.scrollWidth > frame.clientWidth).map((frame) => frame.innerText)
"""
STOPS = "() => document.querySelectorAll('a[href], summary, [tabindex=\"0\"]').length"
AT = """
() => {
  const at = document.activeElement, box = at.getBoundingClientRect();
  return [at.tagName, box.width > 0 && getComputedStyle(at).outlineStyle !== "none"];
}
"""


def test_on_a_narrow_screen_nothing_has_to_be_moved_and_all_is_reached_by_keyboard(
    browser: Browser, site: Path
) -> None:
    with reader(browser, site, width=NARROW) as at:
        at.page.goto(address_of(site, "what-is-taught.html"))
        assert at.page.evaluate(WIDER) == []
        seen = []
        for _ in range(at.page.evaluate(STOPS)):
            at.page.keyboard.press("Tab")
            seen.append(at.page.evaluate(AT))
        assert all(shown for _, shown in seen)
        assert {name for name, _ in seen} == {"A", "SUMMARY", "DIV"}


def test_it_prints_whole_on_a4(browser: Browser, site: Path) -> None:
    with reader(browser, site) as at:
        at.page.goto(address_of(site, "what-is-taught.html"))
        paper = printed(at.page)
    text = "".join(glyph.text for glyph in paper.glyphs)
    assert min(min(left, right) for left, _, right, _ in paper.margins) >= 0
    for heading, _ in HEADINGS_SAID.values():
        assert squeezed(f"{heading}, England: units for each school year") in text
    for words in ("What comes back", "Chains", "How old the editions are", "Licences"):
        assert squeezed(words) in text
