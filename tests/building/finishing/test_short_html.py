"""A page in fewer letters is read by a browser as the same page (HTML, 13.1.2, "Elements")."""

from __future__ import annotations

import pytest
from playwright.sync_api import Browser

from build_tools.building.finishing.short_html import short_html
from build_tools.building.finishing.smaller import smaller
from build_tools.building.templates import html_of
from build_tools.pages.assemble import unit_pages
from tests.support.sound_bank import real_bank, real_unit

# Every element with its attributes in one order, and every text, lines left blank as one break.
READ = """
(pages) => pages.map((html) => {
  const whole = new DOMParser().parseFromString(html, "text/html");
  const told = [];
  const walk = (node) => {
    if (node.nodeType === Node.TEXT_NODE) {
      told.push(node.data.replace(/\\n\\s*\\n/g, "\\n"));
      return;
    }
    if (node.nodeType !== Node.ELEMENT_NODE) { told.push(node.nodeName); return; }
    const own = [...node.attributes].map(({ name, value }) => `${name}=${JSON.stringify(value)}`);
    own.sort();
    told.push(`<${node.namespaceURI} ${node.nodeName} ${own.join(" ")}>`);
    node.childNodes.forEach(walk);
    told.push("</>");
  };
  whole.childNodes.forEach(walk);
  return told;
})
"""


def read(browser: Browser, pages: list[str]) -> list[list[str]]:
    tab = browser.new_page()
    found: list[list[str]] = tab.evaluate(READ, pages)
    tab.close()
    return found


def test_a_browser_reads_every_page_of_a_unit_as_before(browser: Browser) -> None:
    pages = [smaller(html_of(page)) for page in unit_pages(real_bank(), real_unit(), ())]
    shorter = [short_html(page) for page in pages]
    assert sum(map(len, shorter)) < 0.96 * sum(map(len, pages))
    before, after = read(browser, pages), read(browser, shorter)
    for one, other in zip(before, after, strict=True):
        assert one == other
    assert [short_html(page) for page in shorter] == shorter


@pytest.mark.parametrize(
    ("written", "shorter"),
    [
        ('<p class="a">It&#39;s</p>\n\n\n<p>', "<p class=a>It's</p>\n<p>"),
        ('<path d="M0 0" class="k9"/>', '<path class=k9 d="M0 0"/>'),
        ('<use href="#a" class="k9"/>', "<use href=#a class=k9 />"),
        ('<a data-told="[&#34;a&#34;]">', "<a data-told='[\"a\"]'>"),
        ('<a data-told="&#34;it&#39;s&#34;">', "<a data-told='\"it&#39;s\"'>"),
        ('<a title="it&#39;s a &#34;&#39;&#39;">', "<a title=\"it's a &#34;''\">"),
        ('<img alt="" src="a b">', '<img alt="" src="a b">'),
        ('<input value="a&amp;b" data-x>', "<input value=a&amp;b data-x>"),
        ("<dl><dt>a</dt><dd>b</dd></dl>", "<dl><dt>a<dd>b</dl>"),
        ("<ul><li>a</li>\n<li>b</li></ul>", "<ul><li>a</li>\n<li>b</li></ul>"),
        ("<dl><dt>a</dt>\n<dd>b</dd></dl>", "<dl><dt>a</dt>\n<dd>b</dl>"),
        ('<a href="../">up</a>', '<a href="../">up</a>'),
        ("<tr><td>1</td><td></td></tr>", "<tr><td>1<td></tr>"),
        ("<pre>\n\n&#39;</pre><b>", "<pre>\n\n&#39;</pre><b>"),
        ("a < b <p data-x='a>b'>", 'a < b <p data-x="a>b">'),
    ],
)
def test_by_hand(written: str, shorter: str) -> None:
    assert short_html(written) == shorter
