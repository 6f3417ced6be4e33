"""The player's beats on a clock of the test's own: jitter, hidden pages, changes of tempo, loops.

Source: a beat lasts 60 / tempo seconds (the definition of a metronome mark), so beat k falls
k x 60 / tempo after the first.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from tests.support.browser import address_of, reader
from tests.support.sound_bank import real_unit

PAGE = f"units/{real_unit().slug}/counts.html"
MINUTES = 10
LATENCY = 0.18
# Plays on a made-up audio clock. `step` gives the seconds till the next look at each turn of the
# script below; frames come about 60 a second, or not at all while the page is hidden.
PLAY = """
async ({ score, seconds, timer, hidden, latency, changes, seed }) => {
  const { counts } = window.danceUnitBank;
  let now = 3.25, random = seed, look = null, frame = null;
  let nextLook = Infinity, nextFrame = Infinity;
  const chance = () => {
    random = (random * 1103515245 + 12345) % 2147483648;
    return random / 2147483648;
  };
  const sounds = [], shown = [], states = [];
  const isHidden = () => hidden.some(([from, to]) => from <= now && now < to);
  let reshown = () => {};
  const player = counts.player({
    open: async () => "",
    now: () => now,
    heard: () => now - latency,
    hidden: isHidden,
    sound: (kind, time) => {
      const one = { kind, time, asked: now, cancelled: false };
      sounds.push(one);
      return () => { one.cancelled ||= now < time; };
    },
    every: (_, fn) => { look = fn; nextLook = now; return () => { nextLook = Infinity; }; },
    frames: (fn) => { frame = fn; nextFrame = now; return () => { nextFrame = Infinity; }; },
    onHidden: (fn) => { reshown = fn; },
    onLost: () => {},
  });
  player.load(score);
  player.onCount((at) => shown.push({ ...at, heard: now - latency, hidden: isHidden() }));
  player.onState((is) => states.push({ ...is, now }));
  await player.play();
  const turns = [...changes];
  const end = now + seconds;
  while (now < end && player.state() !== "stopped") {
    const was = isHidden();
    now = Math.min(nextLook, nextFrame, now + 0.05);
    if (turns.length && now >= turns[0].at) {
      const { name, value } = turns.shift();
      player[name](value);
    }
    if (isHidden() !== was) reshown();
    if (now >= nextLook) {
      look();
      const [least, most] = isHidden() ? [timer.hidden, timer.hidden] : timer.shown;
      nextLook = now + least + (most - least) * chance();
    }
    if (now >= nextFrame) {
      if (!isHidden()) frame();
      nextFrame = now + 0.010 + 0.020 * chance();
    }
  }
  return { sounds: sounds.filter((one) => !one.cancelled), shown, states, state: player.state() };
}
"""

HEARD = """
({ stamp, ...rest }) => danceUnitBank.counts.heardTime({
  currentTime: 10, ...rest, ...(stamp ? { getOutputTimestamp: () => stamp } : {}),
}, 1000)
"""


@pytest.fixture(scope="module")
def page(browser: Browser, site: Path) -> Iterator[Page]:
    with reader(browser, site) as at:
        at.page.goto(address_of(site, PAGE))
        yield at.page


def drummed(name: str, counts: int, **more: Any) -> dict[str, Any]:
    """A stretch with a beat on every count, the first of each eight louder."""
    every = list(range(max(0, counts)))
    beat = {"sound": "beat", "from": 0, "to": counts, "strokes": every, "loud": every[::8]}
    return {"name": name, "counts": counts, "heard": [beat] if every else [], **more}


def played(page: Page, **asked: Any) -> dict[str, Any]:
    score = {
        "tempo": 108,
        "phrase": 8,
        "loop": True,
        "stretches": [drummed("wave", 16)],
    }
    usual = {
        "score": score,
        "seconds": 60 * MINUTES,
        "timer": {"shown": [0.2, 2.5], "hidden": 60},
        "hidden": [],
        "latency": LATENCY,
        "changes": [],
        "seed": 7,
    }
    found: dict[str, Any] = page.evaluate(PLAY, usual | asked)
    return found


def times(found: dict[str, Any]) -> list[float]:
    return [one["time"] for one in found["sounds"]]


@pytest.mark.parametrize(
    "tempo",
    [60, 97, 180, *(pytest.param(tempo, marks=pytest.mark.thorough) for tempo in (108, 131))],
)
def test_every_beat_is_where_a_product_puts_it_for_ten_minutes(page: Page, tempo: int) -> None:
    score = {
        "tempo": tempo,
        "phrase": 8,
        "loop": True,
        "stretches": [drummed("wave", 12)],
    }
    found = played(page, score=score)
    due = times(found)
    assert len(due) >= MINUTES * tempo
    assert max(abs(time - due[0] - k * 60 / tempo) for k, time in enumerate(due)) < 0.001
    assert all(one["time"] > one["asked"] for one in found["sounds"])


def test_the_shown_count_is_the_one_heard_within_50_ms(page: Page) -> None:
    found = played(page)
    due = times(found)
    apart = [one["heard"] - due[k] for k, one in enumerate(found["shown"])]
    assert len(apart) > MINUTES * 100
    assert min(apart) > -0.001
    assert max(apart) < 0.05
    numbers = [one["shown"] for one in found["shown"][:12]]
    assert numbers == [5, 6, 7, 8, 1, 2, 3, 4, 5, 6, 7, 8]
    kinds = [one["kind"] for one in found["sounds"][:13]]
    assert kinds == ["in"] * 4 + ["beat!"] + ["beat"] * 7 + ["beat!"]


def test_a_hidden_page_loses_no_beat_and_shows_the_right_one_when_it_comes_back(
    page: Page,
) -> None:
    # Chromium lets the timers of a page hidden for long run once a minute.
    found = played(page, hidden=[[20, 320], [400, 405.5]])
    due = times(found)
    assert max(abs(time - due[0] - k * 60 / 108) for k, time in enumerate(due)) < 0.001
    assert len(due) >= MINUTES * 108
    assert all(one["time"] > one["asked"] for one in found["sounds"])
    back = next(one for one in found["shown"] if one["heard"] > 320 - LATENCY)
    beat = int((back["heard"] - due[0]) * 108 / 60 + 1e-6)
    assert (back["shown"] - 1) % 8 == (beat - 4) % 8


def test_a_change_of_tempo_takes_hold_on_a_beat_and_loses_none(page: Page) -> None:
    changes = [
        {"at": 15.03, "name": "tempo", "value": 96},
        {"at": 30.4, "name": "tempo", "value": 144},
    ]
    found = played(page, seconds=50, changes=changes)
    gaps = [b - a for a, b in pairwise(times(found))]
    assert all(min(abs(gap - 60 / tempo) for tempo in (108, 96, 144)) < 1e-6 for gap in gaps)
    order = [min((108, 96, 144), key=lambda tempo: abs(gap - 60 / tempo)) for gap in gaps]
    assert list(dict.fromkeys(order)) == [108, 96, 144]
    assert order == sorted(order, key=[108, 96, 144].index)
    shown = [one["shown"] for one in found["shown"]]
    assert all((b - a) % 8 == 1 for a, b in pairwise(shown))


def test_a_loop_that_is_let_go_ends_with_its_round(page: Page) -> None:
    found = played(page, changes=[{"at": 30, "name": "loop", "value": False}])
    assert found["state"] == "stopped"
    assert (len(found["sounds"]) - 4) % 16 == 0
    assert len(found["shown"]) == len(found["sounds"])
    last = found["states"][-1]["now"] - LATENCY
    assert abs(last - (times(found)[-1] + 60 / 108)) < 0.05


def test_a_span_waits_for_next_and_a_join_after_it_needs_no_count_in(page: Page) -> None:
    stretches = [
        drummed("A", 8),
        {"name": "storm", "least": 20, "most": 30, "lasts": 25},
        drummed("on the way", 4, join=True),
        drummed("A", 8),
        {"name": "calm", "least": 5, "most": 9, "lasts": 7},
        drummed("B", 8),
    ]
    score = {"tempo": 120, "phrase": 8, "stretches": stretches}
    changes = [
        {"at": 60, "name": "next", "value": None},
        {"at": 100, "name": "next", "value": None},
    ]
    found = played(page, score=score, changes=changes, seconds=300)
    states = [(is_["state"], is_["stretch"]) for is_ in found["states"]]
    assert states == [
        ("playing", 0),
        ("waiting", 1),
        ("playing", 2),
        ("waiting", 4),
        ("playing", 5),
        ("stopped", None),
    ]
    kinds = "".join(one["kind"][-1] for one in found["sounds"])
    assert kinds == "nnnn" + "!ttttttt" + "!ttt" + "!ttttttt" + "nnnn" + "!ttttttt"
    assert found["states"][2]["now"] >= 60


def test_where_sections_overlap_both_are_lit(page: Page) -> None:
    stretches = [
        drummed("A", 8),
        drummed("on the way", -2, join=True),
        drummed("B", 8),
    ]
    found = played(page, score={"tempo": 120, "phrase": 8, "stretches": stretches})
    assert len(found["sounds"]) == 4 + 8 - 2 + 8
    lit = [[(x["stretch"], x["count"]) for x in one["lit"]] for one in found["shown"][4:]]
    assert lit[5] == [(0, 6)]
    assert lit[6] == [(0, 7), (2, 1)]
    assert lit[7] == [(0, 8), (2, 2)]
    assert lit[8] == [(2, 3)]


@pytest.mark.parametrize(
    ("context", "heard"),
    [
        ({"outputLatency": 0.2}, 9.8),
        ({"outputLatency": 0, "baseLatency": 0.01}, 9.99),
        ({}, 10),
        ({"stamp": {"contextTime": 9.7, "performanceTime": 950}}, 9.75),
        # nonsense of a device: a stamp ahead of the clock, one long ago, and none yet
        ({"stamp": {"contextTime": 12, "performanceTime": 950}}, 10),
        ({"stamp": {"contextTime": 2, "performanceTime": 950}}, 10),
        ({"stamp": {"contextTime": 0, "performanceTime": 0}}, 10),
    ],
)
def test_what_is_heard_is_what_was_sent_less_the_way_to_the_speaker(
    page: Page, context: dict[str, Any], heard: float
) -> None:
    found = page.evaluate(HEARD, context)
    assert found == pytest.approx(heard)


def test_in_the_real_browser_the_shown_count_is_the_one_heard(browser: Browser, site: Path) -> None:
    with reader(browser, site) as at:
        at.page.goto(address_of(site, PAGE))
        at.page.evaluate(
            """
            () => {
              const { counts } = window.danceUnitBank;
              const device = counts.device(), sound = device.sound;
              window.planned = []; window.seen = [];
              device.sound = (kind, time) => { planned.push(time); return sound(kind, time); };
              const player = counts.player(device);
              const beat = { sound: "beat", from: 0, to: 4, strokes: [0, 1, 2, 3], loud: [] };
              const stretches = [{ name: "wave", counts: 4, heard: [beat] }];
              player.load({ tempo: 180, phrase: 8, stretches });
              player.onCount(() => seen.push(device.heard()));
              window.over = new Promise((done) => {
                player.onState(({ state }) => { if (state === "stopped") done(); });
              });
              document.addEventListener("pointerdown", () => player.play());
            }
            """
        )
        at.page.mouse.click(5, 5)
        planned, seen = at.page.evaluate("over.then(() => [planned, seen])")
    assert len(planned) == len(seen) == 8
    assert max(abs(t - planned[0] - k / 3) for k, t in enumerate(planned)) < 0.001
    assert max(abs(s - p) for s, p in zip(seen, planned, strict=True)) < 0.05
