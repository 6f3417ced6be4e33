"""A published style holds the rules that were written, and a browser reads the same from both."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page

from build_tools.building.finishing.plain_style import plain_style
from build_tools.disk.places import OVERRIDES

STYLES = sorted(OVERRIDES.rglob("*.css"))
_NOUGHT = re.compile(r"(?<![\w.])0(?=\.\d)")
RULES = """(text) => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(text);
  return [...sheet.cssRules].map((rule) => rule.cssText);
}"""


@pytest.fixture(scope="module")
def tab(browser: Browser) -> Iterator[Page]:
    """An empty page, on which nothing is left of a style that was read there."""
    page = browser.new_page()
    yield page
    page.close()


def test_comments_indents_and_spaces_go_and_texts_stay() -> None:
    written = '/* a\n note */\n@media print {\n  .a, .b::after { content: ". "; color: red; }\n}\n'
    assert plain_style(written) == '@media print{.a,.b::after{content: ". ";color:red}}\n'
    written = ".a > .b ~ p { margin: 0.5rem -0.1rem 10.25px; width: calc(1rem + 0.2em); }\n"
    plain = ".a>.b~p{margin:.5rem -.1rem 10.25px;width:calc(1rem + .2em)}\n"
    assert plain_style(written) == plain


@pytest.mark.parametrize("style", STYLES, ids=lambda path: path.stem)
def test_a_browser_reads_the_same_rules(style: object, tab: Page) -> None:
    text = OVERRIDES.joinpath(str(style)).read_text(encoding="utf-8")
    # what is worked out of a variable a browser gives as it is written, nought and all
    plain, written = (
        [_NOUGHT.sub("", rule) for rule in tab.evaluate(RULES, one)]
        for one in (plain_style(text), text)
    )
    assert plain == written
    assert len(plain_style(text)) < len(text)


def test_no_text_of_a_style_holds_what_would_go() -> None:
    """Texts are what stands between quotation marks, such as what stands before a heading."""
    for style in STYLES:
        for text in re.findall(r'"([^"\n]*)"', style.read_text(encoding="utf-8")):
            assert not re.search(r"[;:{,] .| \{|; \}|/\*| [>~] |\b0\.\d", text), (style.name, text)
