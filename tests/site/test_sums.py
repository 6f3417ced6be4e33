"""The script of a published card gives what its parts give, for lessons of any shape."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from playwright.sync_api import Browser

from build_tools.disk.places import OVERRIDES
from build_tools.pages.page_scripts import PAGE_SCRIPTS
from tests.sums.lessons import GROUPINGS, some_lesson
from tests.support.browser import address_of, reader
from tests.support.page_script import page_script

PAGE = "units/rock-pool/lesson-3.html"
FIT = "card&fit=45-8-27-2-15x9m"
"""A card that is fitted has every sum; some are loaded then."""
ANSWER = """
(calls) => calls.map(([name, given]) =>
  name.split(".").reduce((part, one) => part[one], window.danceUnitBank)(...given))
"""


def calls() -> list[tuple[str, tuple[Any, ...]]]:
    """Every kind of sum, for some lessons and classes."""
    found: list[tuple[str, tuple[Any, ...]]] = []
    for seed in range(40):
        lesson = some_lesson(seed)
        groupings = [one["grouping"] for one in lesson]
        for minutes in (12, 20, 33, 45, 60):
            for name in ("sums.shareMinutes", "sums.sittings", "sums.catchUp"):
                found.append((name, (lesson, minutes)))
        for pupils in (1, 13, 26, 27, 30):
            for grouping in GROUPINGS:
                for name in ("sums.classGroups", "sums.groupsSentence"):
                    found.append((name, (groupings, grouping, pupils)))
    return found


def test_the_page_gives_the_same_answers(site: Path, browser: Browser) -> None:
    asked = calls()
    assert len(asked) > 2000
    with reader(browser, site) as seen:
        seen.page.goto(f"{address_of(site, PAGE)}#{FIT}")
        seen.page.wait_for_function("Boolean(danceUnitBank.danceOnFloor)")
        assert seen.page.evaluate(ANSWER, asked) == page_script().answers(asked)
        assert seen.said == []
        assert seen.violations() == []


def test_every_script_of_the_sums_is_on_a_page() -> None:
    there = {path.relative_to(OVERRIDES).as_posix() for path in (OVERRIDES / "sums").glob("*.js")}
    loaded = {part for parts in PAGE_SCRIPTS.values() for part in parts}
    assert there == {part for part in loaded if part.startswith("sums/")}
