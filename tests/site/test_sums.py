"""The scripts of a real lesson page give the answers that the sums give here."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser

from build_tools.pages.page_scripts import SUMS
from tests.support.browser import address_of, reader
from tests.support.built_sites import ROOT
from tests.vectors.make_vectors import FILES, HERE, written

PAGE = "units/rock-pool/lesson-3.html"
ANSWER = """
(cases) => {
  const bank = window.danceUnitBank;
  return cases.map(({ call, args }) => {
    const [part, name] = call.includes(".") ? call.split(".") : ["sums", call];
    return bank[part][name](...args);
  });
}
"""


def cases_of(name: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = json.loads((HERE / name).read_text(encoding="utf-8"))
    return found


@pytest.mark.parametrize("name", FILES)
def test_the_cases_are_up_to_date(name: str) -> None:
    assert (HERE / name).read_text(encoding="utf-8") == written(name), (
        "run `.venv/bin/python -m tests.vectors.make_vectors`"
    )


def test_there_are_enough_cases_of_each_kind() -> None:
    calls = [case["call"] for name in FILES for case in cases_of(name)]
    for call in ("fit", "sittings", "groups", "groupsInWords", "showingPlan", "space"):
        assert calls.count(call) >= 40, call
    assert len(calls) >= 300


def test_the_page_gives_the_same_answers(site: Path, browser: Browser) -> None:
    with reader(browser, site) as seen:
        seen.page.goto(address_of(site, PAGE))
        for name in FILES:
            cases = cases_of(name)
            plain = [{"call": case["call"], "args": case["args"]} for case in cases]
            answers = seen.page.evaluate(ANSWER, plain)
            for case, answer in zip(cases, answers, strict=True):
                assert answer == case["result"], (case["call"], case["args"])
        assert seen.said == []
        assert seen.violations() == []


def test_every_script_of_the_sums_is_on_the_page() -> None:
    folder = ROOT / "site_overrides" / "assets" / "js"
    there = {path.relative_to(folder).as_posix() for path in (folder / "sums").glob("*.js")}
    assert there == {name for name in SUMS if name.startswith("sums/")}
