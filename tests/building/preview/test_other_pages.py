"""The preview in a browser: its own pages follow the author, and no other page learns a thing."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from build_tools.building.preview.server import Preview, serve
from build_tools.building.preview.state import State
from tests.building.preview.asking import SOONER
from tests.support.banks import ROOT
from tests.support.tabs import served

SECRET_WORDS = "Year 4 dance the storm"
POLICY = (ROOT / "site_overrides" / "frame" / "head.html").read_text().split('content="')[1]
PAGE = f"""<!doctype html><html lang="en"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{POLICY.partition('"')[0]}">
<link rel="icon" href="data:,"><link rel="stylesheet" href="look.css"><title>Storm</title></head>
<body><p id="words">{SECRET_WORDS}</p></body></html>"""
PICTURE = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'
TRIES = """async (at) => {
  const seen = {};
  const loads = (tag, set) => new Promise((done) => {
    const made = document.createElement(tag);
    made.onload = () => done("loaded");
    made.onerror = () => done("refused");
    set(made);
    document.head.append(made);
  });
  const hears = (made) => new Promise((done) => {
    made.onopen = made.onmessage = () => done("heard");
    made.onerror = () => done("refused");
  });
  const fetched = async (address, how) => {
    try {
      const answer = await fetch(address, how);
      return `read: ${answer.status} ${await answer.text()}`;
    } catch { return "refused"; }
  };
  window.bankPreview = (state) => { seen.told = JSON.stringify(state); };
  for (const name of ["", "index.html", "preview.js", "preview-state.json", "preview-state.js",
                      "look.css", "picture.svg"]) {
    const address = at + name;
    seen[`script ${name}`] = await loads("script", (tag) => { tag.src = address; });
    seen[`module ${name}`] = await loads("script", (tag) => {
      tag.type = "module";
      tag.src = address;
    });
    seen[`style ${name}`] = await loads("link", (tag) => {
      tag.rel = "stylesheet";
      tag.href = address;
    });
    seen[`picture ${name}`] = await loads("img", (tag) => { tag.src = address; });
    for (const mode of ["cors", "no-cors"]) {
      for (const credentials of ["omit", "include"]) {
        const how = { mode, credentials };
        seen[`fetch ${mode} ${credentials} ${name}`] = await fetched(address, how);
      }
    }
    seen[`post ${name}`] = await fetched(address, { method: "POST", mode: "no-cors", body: "a" });
    seen[`events ${name}`] = await hears(new EventSource(address));
    seen[`socket ${name}`] = await hears(new WebSocket(address.replace("http", "ws")));
  }
  for (const frame of ["iframe", "embed", "object"]) {
    const made = document.createElement(frame);
    made[frame === "object" ? "data" : "src"] = at + "index.html";
    document.body.append(made);
  }
  const other = window.open(at + "index.html");
  await new Promise((done) => setTimeout(done, 1500));
  try { seen.window = other.document.body.textContent; } catch { seen.window = "refused"; }
  try { seen.frame = window.frames[0].document.body.textContent; } catch { seen.frame = "refused"; }
  return seen;
}"""


@pytest.fixture
def state() -> State:
    return State()


@pytest.fixture
def preview(tmp_path: Path, state: State) -> Iterator[Preview]:
    site = tmp_path / "site"
    site.mkdir()
    (site / "index.html").write_text(PAGE, encoding="utf-8")
    (site / "look.css").write_text("p { color: green }", encoding="utf-8")
    (site / "picture.svg").write_text(PICTURE, encoding="utf-8")
    state.say(SECRET_WORDS)
    running = serve(site, 0, state)
    yield running
    running.stop()


def texts(page: Page) -> list[str]:
    """What stands in every window and frame that the page made."""
    return [frame.content() for one in page.context.pages for frame in one.frames]


@pytest.mark.parametrize(
    ("knows", "host"),
    [
        pytest.param(True, "localhost", id="knows the secret"),
        # test_server.py asks daily that nobody without it gets a thing, whoever they are
        pytest.param(False, "127.0.0.1", id="does not", marks=pytest.mark.thorough),
        pytest.param(True, "127.0.0.1", id="knows, by number", marks=pytest.mark.thorough),
        pytest.param(False, "localhost", id="does not, by name", marks=pytest.mark.thorough),
    ],
)
def test_a_page_on_another_port_gets_nothing(
    browser: Browser, preview: Preview, tmp_path: Path, host: str, knows: bool
) -> None:
    other = tmp_path / "other"
    other.mkdir()
    (other / "index.html").write_text("<!doctype html><title>other</title><body>", encoding="utf-8")
    context = browser.new_context()
    answers: list[tuple[int, str]] = []
    with served(other) as address:
        page = context.new_page()
        page.goto(address.replace("127.0.0.1", host))
        context.on("response", lambda answer: answers.append((answer.status, answer.url)))
        at = preview.address if knows else preview.address.replace(preview.secret, "guess")
        seen: dict[str, Any] = page.evaluate(TRIES, at)
        after = texts(page)
    context.close()
    got = {what: told for what, told in seen.items() if told != "refused"}
    assert got == {}, json.dumps(got, indent=1)
    assert SECRET_WORDS not in " ".join(after)
    ours = [status for status, url in answers if url.startswith(at)]
    assert ours
    assert min(ours) >= 400


def test_its_own_page_follows_the_author(
    browser: Browser, preview: Preview, state: State, tmp_path: Path
) -> None:
    context = browser.new_context()
    context.add_init_script(SOONER)
    said: list[str] = []
    context.on("console", lambda line: said.append(line.text))
    page = context.new_page()
    page.goto(f"{preview.address}index.html")
    box = page.locator("#preview-problems")
    expect(box).to_have_text(SECRET_WORDS)
    state.say("lesson 2: minutes do not add up")
    expect(box).to_have_text("lesson 2: minutes do not add up")
    state.say("")
    expect(box).to_be_hidden()
    (tmp_path / "site" / "index.html").write_text(PAGE.replace(SECRET_WORDS, "calm"))
    state.rebuilt()
    expect(page.locator("#words")).to_have_text("calm")
    # its words are there before its script, which would not come any more
    expect(box).to_be_attached()
    assert said == []
    preview.stop()
    expect(box).to_contain_text("`watch` has ended")
    context.close()
