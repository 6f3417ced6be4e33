"""axe-core run on an open page, and by pixels the contrast that it leaves for people to judge."""

from __future__ import annotations

import base64
import io
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

import pytest
from PIL import Image, ImageChops, ImageFilter
from playwright.sync_api import Page

from tests.support.built_sites import ROOT
from tests.support.contrast import Colour, contrast

# Over file:// a browser keeps the text of styles from axe-core, which one rule that is no part of
# these tags would read ("preload").
TAGS = ("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice")
OF_LOOKS = ("color-contrast", "link-in-text-block", "target-size", "scrollable-region-focusable")
"""The rules of axe-core whose verdict changes with the width and the colours of a page alone."""
RUN = """
async ([tags, only, within]) => {
  const found = await axe.run(within ?? document, {
    runOnly: only ? { type: "rule", values: only } : { type: "tag", values: tags },
    resultTypes: ["violations", "incomplete"],
    preload: false,
  });
  const short = (kind) => found[kind].flatMap((rule) => rule.nodes.map((node) => ({
    rule: rule.id,
    target: node.target.map(String).join(" "),
    why: [...node.any, ...node.all, ...node.none].map((check) => check.message).join("; "),
  })));
  return { violations: short("violations"), incomplete: short("incomplete") };
}
"""
SHOWN = """
(targets) => targets.map((target) => {
  const element = document.querySelector(target);
  const look = getComputedStyle(element);
  const box = element.getBoundingClientRect();
  return {
    target,
    ink: element instanceof SVGElement ? look.fill : look.color,
    size: parseFloat(look.fontSize) * (element.getScreenCTM?.().a ?? 1),
    bold: Number(look.fontWeight) >= 700,
    box: [box.left + scrollX, box.top + scrollY, box.right + scrollX, box.bottom + scrollY],
  };
})
"""
LOOK = """
(targets) => targets.map((target) => {
  const element = document.querySelector(target);
  const { color, fill, fontSize, fontWeight } = getComputedStyle(element);
  const own = [element, element.parentElement, element.closest("svg")].map((one) =>
    one && [one.localName, one.getAttribute("class")].join("."));
  return [...own, color, fill, fontSize, fontWeight].join(" ");
})
"""
# Set one property at a time, which the policy allows.
HIDE_TEXT = """
(hidden) => {
  const hide = (which, name) => {
    for (const { style } of document.querySelectorAll(which)) {
      if (hidden) style.setProperty(name, "transparent", "important");
      else style.removeProperty(name);
    }
  };
  hide("text, tspan", "fill");
  hide("body *:not(svg, svg *)", "-webkit-text-fill-color");
}
"""
# Of the ground within a pixel of a letter, how much may be a line that the letter crosses.
CROSSED = 0.1
ROUND = 4
"""Pixels around a text that are pictured with it."""
APART = 3000
"""Pixels between two texts from which on a picture of each takes less time than one of both."""


@dataclass(frozen=True, slots=True)
class Finding:
    """One element that a rule of axe-core names, and why."""

    rule: str
    target: str
    why: str


@dataclass(frozen=True, slots=True)
class Report:
    """What axe-core is sure of, and what it leaves for people to judge."""

    violations: tuple[Finding, ...]
    incomplete: tuple[Finding, ...]


def looks(*widths: int) -> list[Any]:
    """The widths on light and on dark paper, for `parametrize`: `width` and `dark`.

    For a page in the middle of its use: in the usual run the narrowest on dark, since at rest it is
    looked at on the widest and light by `test_every_page.py`; the long run has all.
    """
    usual = usual_looks(*widths)[1:]
    return [
        pytest.param(
            width,
            dark,
            id=f"{width}-{'dark' if dark else 'light'}",
            marks=() if (width, dark) in usual else pytest.mark.thorough,
        )
        for width, dark in every_look(*widths)
    ]


def every_look(*widths: int) -> list[tuple[int, bool]]:
    """The widths, each on light and on dark paper."""
    return [(width, dark) for width in widths for dark in (False, True)]


def usual_looks(*widths: int) -> list[tuple[int, bool]]:
    """The widest on light paper and the narrowest on dark."""
    return [(max(widths), False), (min(widths), True)]


@cache
def source() -> str:
    """axe-core's own text, run as a browser's own tools are: outside the page's policy."""
    return (ROOT / "node_modules" / "axe-core" / "axe.min.js").read_text(encoding="utf-8")


def run(page: Page, within: str | None = None, only: Sequence[str] | None = None) -> Report:
    """Run axe-core on a page of a context that had `source()` as its extra script.

    `within` is a selector, where what stands around it is looked at elsewhere; `only` names rules
    where the others are asked of the page elsewhere.
    """
    found: dict[str, list[dict[str, str]]] = page.evaluate(
        RUN, [list(TAGS), list(only) if only else None, within]
    )
    return Report(
        tuple(Finding(**entry) for entry in found["violations"]),
        tuple(Finding(**entry) for entry in found["incomplete"]),
    )


def too_faint(page: Page, targets: list[str]) -> list[str]:
    """Those of the elements whose ink is too near the ground that is drawn behind it.

    The ground is read from two pictures of the page, with its text and without: what lies within
    a pixel of where they differ. Nine tenths of it has to have the contrast of WCAG 2.2, success
    criterion 1.4.3: 4.5, or 3 where text is at least 24 px, or 18.66 px and bold. The page is
    left as it was.
    """
    if not targets:
        return []
    shown: list[dict[str, Any]] = page.evaluate(SHOWN, targets)
    bands = [(band, Box.around(band)) for band in _bands(shown)]
    written = [_picture(page, box) for _, box in bands]
    page.evaluate(HIDE_TEXT, True)
    blank = [_picture(page, box) for _, box in bands]
    page.evaluate(HIDE_TEXT, False)
    return [
        fault
        for (band, box), before, after in zip(bands, written, blank, strict=True)
        for text in band
        if (fault := _fault(text, box, before, after))
    ]


def of_each_look(page: Page, targets: list[str], most: int) -> list[str]:
    """The first few of those elements that have one name, class, ink and size of letters."""
    looks: Counter[str] = Counter()
    found = []
    for target, look in zip(targets, page.evaluate(LOOK, targets), strict=True):
        looks[look] += 1
        if looks[look] <= most:
            found.append(target)
    return found


@dataclass(frozen=True, slots=True)
class Box:
    """A part of a page that is pictured, in its pixels from the page's corner."""

    left: int
    top: int
    right: int
    bottom: int

    @classmethod
    def around(cls, texts: list[dict[str, Any]]) -> Box:
        edges = list(zip(*(text["box"] for text in texts), strict=True))
        left, top = (max(0, round(min(edge)) - ROUND) for edge in edges[:2])
        right, bottom = (round(max(edge)) + ROUND for edge in edges[2:])
        return cls(left, top, right, bottom)


def _bands(shown: list[dict[str, Any]]) -> Iterator[list[dict[str, Any]]]:
    """The texts from top to bottom, those together that lie near one another."""
    band: list[dict[str, Any]] = []
    reaches = 0.0
    for text in sorted(shown, key=lambda one: float(one["box"][1])):
        if band and text["box"][1] > reaches + APART:
            yield band
            band = []
        band.append(text)
        reaches = max(reaches, text["box"][3]) if len(band) > 1 else text["box"][3]
    yield band


def _picture(page: Page, box: Box) -> Image.Image:
    """That part of the page, packed in haste, which takes the browser a fraction of the time."""
    session = page.context.new_cdp_session(page)
    size = {"x": box.left, "y": box.top}
    size |= {"width": box.right - box.left, "height": box.bottom - box.top, "scale": 1}
    how = {"format": "png", "optimizeForSpeed": True, "captureBeyondViewport": True, "clip": size}
    taken = session.send("Page.captureScreenshot", how)
    session.detach()
    return Image.open(io.BytesIO(base64.b64decode(taken["data"]))).convert("RGB")


def _fault(text: dict[str, Any], box: Box, written: Image.Image, blank: Image.Image) -> str:
    least = 3.0 if text["size"] >= 24 or (text["bold"] and text["size"] >= 18.66) else 4.5
    left, top, right, bottom = (round(edge) for edge in text["box"])
    left, right, top, bottom = left - box.left, right - box.left, top - box.top, bottom - box.top
    ground = blank.crop((left, top, max(right, left + 1), max(bottom, top + 1)))
    differs = ImageChops.difference(
        ground, written.crop((left, top, left + ground.width, top + ground.height))
    )
    letters = differs.convert("L").point(lambda part: 255 if part > 16 else 0)
    if not letters.getbbox():
        return f"{text['target']} cannot be seen"
    ink = _colour(text["ink"])
    ground.putalpha(letters.filter(ImageFilter.MaxFilter(3)))
    # every colour with how often it is there, and near a letter where it is not see-through
    found: Any = ground.getcolors(ground.width * ground.height)
    counted: Counter[Colour] = Counter({near[:3]: number for number, near in found if near[3]})
    crossed, worst = 0, 21.0
    for ratio, number in sorted((contrast(ink, colour), n) for colour, n in counted.items()):
        crossed += number
        if crossed > CROSSED * counted.total():
            worst = ratio
            break
    if worst >= least:
        return ""
    return f"{text['target']}: {worst:.2f} where {least} is the least ({text['ink']})"


def _colour(computed: str) -> Colour:
    """A computed colour: "rgb(31, 29, 43)"; one that is see-through cannot be measured so."""
    name, _, parts = computed.rstrip(")").partition("(")
    if name != "rgb":
        raise ValueError(f"not an opaque colour: {computed}")
    red, green, blue = (int(part) for part in parts.split(","))
    return red, green, blue
