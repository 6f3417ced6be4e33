"""How soon a lesson page is first painted beside the same words on the publisher's plain theme.

    .venv/bin/python benchmarks/first_paint.py [--runs 15] [--slowed 4]

Both pages are opened in turn in one browser, the processor slowed; the median of first
contentful paint (W3C, Paint Timing) over the runs is told for each, in milliseconds.
"""

from __future__ import annotations

import argparse
import os
import statistics
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import Browser

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from build_tools.commands.tools_for_tests import tools  # noqa: E402
from tests.support.browser import launched  # noqa: E402
from tests.support.built_sites import CONTENT, build, lesson_pages  # noqa: E402
from tests.support.plain_theme import build_plain, words_of  # noqa: E402

PAINTED = """
() => new Promise((done) => {
  const look = () => {
    const found = performance.getEntriesByName("first-contentful-paint")[0];
    if (found) done(found.startTime); else requestAnimationFrame(look);
  };
  look();
})
"""


def first_paint(browser: Browser, page: Path, slowed: float) -> float:
    """Milliseconds from the start of loading to the first contentful paint, in a fresh tab."""
    context = browser.new_context(viewport={"width": 390, "height": 844}, offline=True)
    try:
        tab = context.new_page()
        context.new_cdp_session(tab).send("Emulation.setCPUThrottlingRate", {"rate": slowed})
        tab.goto(page.resolve().as_uri())
        return float(tab.evaluate(PAINTED))
    finally:
        context.close()


def main() -> None:
    """Build both, measure, and print the medians."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("--runs", type=int, default=15, help="times that each page is opened")
    parser.add_argument("--slowed", type=float, default=4, help="how many times slower")
    given = parser.parse_args()
    os.environ.update(tools().environment())
    with tempfile.TemporaryDirectory() as scratch, launched() as browser:
        site = Path(scratch) / "site"
        build(CONTENT, site)
        ours = site / max(lesson_pages(site), key=lambda path: (site / path).stat().st_size)
        plain = build_plain(words_of(browser, ours), Path(scratch) / "plain")
        times: dict[Path, list[float]] = {ours: [], plain: []}
        for _ in range(given.runs):
            for page, found in times.items():
                found.append(first_paint(browser, page, given.slowed))
        for name, page in (("the lesson page", ours), ("the plain theme", plain)):
            median = statistics.median(times[page])
            print(f"{name}: {median:.0f} ms, {min(times[page]):.0f} to {max(times[page]):.0f}")


if __name__ == "__main__":
    main()
