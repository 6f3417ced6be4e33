"""How many frames a second the dance from above shows, and how far picture and sound are apart.

    .venv/bin/python benchmarks/dance_frames.py [--seconds 120] [--slowed 4] [--browser chromium]

Thirty dancers, opened from a folder at half speed, so that the counted parts before the first span
last about two minutes. Each picture drawn is noted with the moment of the dance that it shows, and
beside it the moment of the sound that is heard then, by the audio clock and the first stroke that
was sent to it. Chromium slows its processor as its own tools do; Firefox has no such tool, so the
time that its frames take is what it is on this machine.
"""

from __future__ import annotations

import argparse
import json
import os
import statistics
import sys
import tempfile
import time
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from playwright.sync_api import sync_playwright  # noqa: E402

from build_tools.project.tools_for_tests import tools  # noqa: E402
from tests.support.built_sites import CONTENT, build  # noqa: E402
from tests.support.firefox import launched  # noqa: E402

UNIT = "weaving-shed"
WATCH = """(() => {
  const bank = window.danceUnitBank, at = bank.paths.at;
  const noted = (window.noted = { frames: [], work: [], apart: [], first: null });
  let context = null;
  const open = bank.counts.heardTime;
  bank.counts.heardTime = (made, now) => { context = made; return open(made, now); };
  const start = AudioScheduledSourceNode.prototype.start;
  AudioBufferSourceNode.prototype.start = function (when) {
    noted.first ??= when;
    return start.call(this, when);
  };
  bank.paths.at = (paths, moment) => {
    if (context && noted.first !== null) {
      const beat = (open(context, performance.now()) - noted.first) * TEMPO / 60 - 4;
      if (beat > 1) noted.apart.push((moment - beat) * 60000 / TEMPO);
    }
    return at(paths, moment);
  };
  const ask = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (drawn) => ask((now) => {
    const begun = performance.now();
    drawn(now);
    noted.work.push(performance.now() - begun);
  });
  let last = null;
  const frame = (now) => {
    if (last !== null) noted.frames.push(now - last);
    last = now;
    ask(frame);
  };
  ask(frame);
})()"""
SLOWER = "for (let n = 0; n < 5; n += 1) document.querySelector('[data-slower]').click()"
TEMPO = "JSON.parse(document.querySelector('[data-dance]').dataset.dance).tempo"


def told(name: str, noted: dict[str, Any], slowed: str) -> str:
    """The figures of one run in a line."""
    frames, work, apart = sorted(noted["frames"]), sorted(noted["work"]), noted["apart"]
    slow = frames[int(0.95 * len(frames))]
    last = [abs(one) for one in apart[-100:]]
    shown = f"5th percentile {1000 / slow:.0f}, median {1000 / statistics.median(frames):.0f}"
    took = f"median {statistics.median(work):.1f} ms, 95th percentile {work[-len(work) // 20]:.1f}"
    off = (
        f"median {statistics.median(last):.1f} ms, most {max(last):.1f} ms"
        if last
        else "not known, no sound was heard (a browser without a sound device has no audio clock)"
    )
    return (
        f"{name}, {slowed}: {len(frames)} frames; frames a second: {shown}; "
        f"script for a picture: {took}; picture and sound apart at the end: {off}"
    )


def in_chromium(address: str, seconds: int, slowed: float) -> str:
    """One run in Chromium, its processor slowed so many times."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=os.environ["BANK_CHROMIUM"],
            args=["--autoplay-policy=no-user-gesture-required"],
        )
        page = browser.new_page(viewport={"width": 1280, "height": 900})
        page.goto(address)
        half = round(page.evaluate(TEMPO) / 2)
        page.evaluate(WATCH.replace("TEMPO", str(half)))
        page.evaluate(SLOWER)
        session = page.context.new_cdp_session(page)
        session.send("Emulation.setCPUThrottlingRate", {"rate": slowed})
        page.click("[data-go]")
        time.sleep(seconds)
        noted = page.evaluate("window.noted")
        browser.close()
    return told("Chromium", noted, f"slowed {slowed:g} times")


def in_firefox(address: str, seconds: int) -> str:
    """One run in Firefox, as fast as the machine is."""
    with launched() as firefox:
        firefox.fresh()
        firefox.open(address)
        half = round(firefox.evaluate(TEMPO) / 2)
        firefox.evaluate(WATCH.replace("TEMPO", str(half)))
        firefox.evaluate(f"(() => {{ {SLOWER} }})()")
        firefox.click("[data-go]")
        time.sleep(seconds)
        noted = json.loads(firefox.evaluate("JSON.stringify(window.noted)"))
    return told("Firefox", noted, "not slowed")


def main() -> None:
    """Build the pages in a folder of their own, run, and tell."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seconds", type=int, default=120)
    parser.add_argument("--slowed", type=float, default=4)
    parser.add_argument("--browser", choices=("chromium", "firefox"))
    parser.add_argument("--site", type=Path, help="pages already made")
    asked = parser.parse_args()
    os.environ.update(tools().environment())
    with tempfile.TemporaryDirectory() as folder:
        site = asked.site or Path(folder) / "site"
        if asked.site is None:
            build(CONTENT, site)
        address = (site / "units" / UNIT / "dance.html").resolve().as_uri()
        if asked.browser != "firefox":
            print(in_chromium(address, asked.seconds, asked.slowed), flush=True)
        if asked.browser != "chromium":
            print(in_firefox(address, asked.seconds), flush=True)


if __name__ == "__main__":
    main()
