"""Contrast: the formula against figures of others, and the inks of the site against their marks.

Sources: WCAG 2.2, definitions of "contrast ratio" and "relative luminance"
(https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio), whose two ends are 1 and 21. That #777777 on
white is 4.48 and so just short of 4.5 is the W3C working group's own example of why ratios are
not rounded (27 October 2016). The other figures are worked out from the formula; axe-core works
them out again for itself.
"""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import Browser

from build_tools.disk.places import OVERRIDES
from build_tools.views.diagrams.blocks import TINTS
from tests.support import axe
from tests.support.browser import reader
from tests.support.built_sites import ROOT
from tests.support.contrast import contrast, from_hex

ON_WHITE = {
    "#000000": 21.0,
    "#767676": 4.542,
    "#777777": 4.478,
    "#595959": 7.005,
    "#949494": 3.033,
    "#959595": 2.995,
    "#FF0000": 3.998,
    "#FFFFFF": 1.0,
}
WHITE = from_hex("#FFFFFF")
INKS = ("ink", "plum", "moss", "rust", "sea")
AXE_CONTRAST = """
(colours) => colours.map((hex) => {
  const [one, white] = [new axe.commons.color.Color(), new axe.commons.color.Color()];
  one.parseHexString(hex);
  white.parseHexString("#FFFFFF");
  return axe.commons.color.getContrast(white, one);
})
"""


@pytest.mark.parametrize(("colour", "ratio"), ON_WHITE.items())
def test_the_formula_gives_the_known_ratios(colour: str, ratio: float) -> None:
    assert contrast(from_hex(colour), WHITE) == pytest.approx(ratio, abs=0.0005)
    assert contrast(WHITE, from_hex(colour)) == contrast(from_hex(colour), WHITE)


def test_axe_core_works_out_the_same_ratios(browser: Browser) -> None:
    with reader(browser, ROOT, extra_script=axe.source()) as at:
        at.page.goto("about:blank")
        theirs = at.page.evaluate(AXE_CONTRAST, list(ON_WHITE))
    assert theirs == pytest.approx([contrast(from_hex(c), WHITE) for c in ON_WHITE], abs=0.002)


def palettes() -> dict[str, dict[str, str]]:
    """The colours named in the site's styles: those of light paper and those of dark paper."""
    text = "\n".join(path.read_text(encoding="utf-8") for path in sorted(OVERRIDES.rglob("*.css")))
    dark = re.search(r"@media \(prefers-color-scheme: dark\) \{(.*?)\n\}", text, re.DOTALL)
    light = re.search(r"^:root \{(.*?)\n\}", text, re.DOTALL | re.MULTILINE)
    assert light
    assert dark
    return {
        paper: dict(re.findall(r"--([a-z0-9-]+):\s*(#[0-9A-Fa-f]{3,6})\b", block.group(1)))
        for paper, block in (("light", light), ("dark", dark))
    }


@pytest.mark.parametrize(("paper", "least"), [("light", 7.0), ("dark", 9.0)])
@pytest.mark.parametrize("ink", INKS)
def test_each_ink_is_well_clear_of_its_paper(paper: str, least: float, ink: str) -> None:
    """Ours: more than the 4.5 of WCAG 2.2, 1.4.3, and at least the 7 of 1.4.6 (level AAA)."""
    palette = palettes()[paper]
    assert contrast(from_hex(palette[ink]), from_hex(palette["paper"])) >= least


@pytest.mark.parametrize("paper", ["light", "dark"])
def test_quiet_text_is_text_too_and_rules_can_be_seen(paper: str) -> None:
    """WCAG 2.2: 1.4.3 for text, 1.4.11 for the lines that a figure is drawn with."""
    palette = palettes()[paper]
    assert contrast(from_hex(palette["quiet"]), from_hex(palette["paper"])) >= 4.5
    assert contrast(from_hex(palette["rule"]), from_hex(palette["paper"])) >= 3


@pytest.mark.parametrize("paper", ["light", "dark"])
def test_names_can_be_read_on_every_tint(paper: str) -> None:
    """WCAG 2.2, 1.4.6: the ink on the tints of sections and on the wash behind the finder."""
    palette = palettes()[paper]
    grounds = [name for name in palette if name.startswith("tint-")]
    assert len(grounds) == TINTS
    for ground in (*grounds, "wash"):
        assert contrast(from_hex(palette["ink"]), from_hex(palette[ground])) >= 7, ground
