"""How soon a lesson page is first painted beside the same words on the publisher's plain theme.

    .venv/bin/python benchmarks/first_paint.py [--runs 15] [--slowed 4]

Both pages are opened in turn in one browser, the processor slowed; the median of first
contentful paint (W3C, Paint Timing) over the runs is told for each, in milliseconds, and the
median of what each pair of runs differs by. Other work on the machine moves these by half, so
what the page's own thread had to work before that paint is told too, as the system counts it.
"""

from __future__ import annotations

import argparse
import json
import os
import statistics
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import Browser

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from build_tools.project.tools_for_tests import tools  # noqa: E402
from tests.support.browser import launched  # noqa: E402
from tests.support.built_sites import CONTENT, build, lesson_pages  # noqa: E402
from tests.support.plain_theme import build_plain, words_of  # noqa: E402

WORK_RUNS = 7
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


def work_before_paint(browser: Browser, page: Path, scratch: Path) -> float:
    """Milliseconds that the page's main thread is at work before the first contentful paint.

    Processor time, not slowed: waiting is not counted.
    """
    trace = scratch / "trace.json"
    browser.start_tracing(path=str(trace), categories=["toplevel", "loading", "blink.user_timing"])
    tab = browser.new_page(viewport={"width": 390, "height": 844}, offline=True)
    tab.goto(page.resolve().as_uri())
    tab.evaluate(PAINTED)
    browser.stop_tracing()
    tab.close()
    events = json.loads(trace.read_text(encoding="utf-8"))["traceEvents"]
    paint = [event for event in events if event["name"] == "firstContentfulPaint"][-1]
    start = max(
        event["ts"]
        for event in events
        if event["name"] == "navigationStart"
        and event["pid"] == paint["pid"]
        and event["ts"] < paint["ts"]
    )
    tasks = (
        event.get("tdur", 0)
        for event in events
        if event["name"] == "ThreadControllerImpl::RunTask"
        and (event["pid"], event["tid"]) == (paint["pid"], paint["tid"])
        and start <= event["ts"] < paint["ts"]
    )
    return float(sum(tasks)) / 1000


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
        work: dict[Path, list[float]] = {ours: [], plain: []}
        for run in range(given.runs):
            for page in (ours, plain) if run % 2 else (plain, ours):
                times[page].append(first_paint(browser, page, given.slowed))
        for _ in range(WORK_RUNS):
            for page in (ours, plain):
                work[page].append(work_before_paint(browser, page, Path(scratch)))
    for name, page in (("the lesson page", ours), ("the plain theme", plain)):
        print(
            f"{name}: {told(times[page])} ms slowed {given.slowed:g} times; "
            f"{told(work[page])} ms of work, not slowed"
        )
    differences = [one - other for one, other in zip(times[ours], times[plain], strict=True)]
    print(f"a pair differs by {told(differences)} ms (under 0: the lesson page is first)")


def told(values: list[float]) -> str:
    """The median and the quartiles."""
    low, middle, high = statistics.quantiles(values, n=4)
    return f"{middle:.0f} ({low:.0f} to {high:.0f})"


if __name__ == "__main__":
    main()
