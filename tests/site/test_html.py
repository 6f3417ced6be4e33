"""Pages held to the HTML standard by the Nu HTML checker.

In the usual run the heaviest of each template; in the long run every page. With them the page for
advisers, which is made where it is asked for, and the plan of a year.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
from pathlib import Path

import pytest

from tests.pages.review import built as review
from tests.site import test_year_plan
from tests.support.built_sites import heaviest, html_pages
from tests.support.shared import made_once

# Warnings that are no fault here: what the whole message looks like, and why.
FINE = {
    r"Resource violates Content Security Policy .*“(\.\./)*(assets|media|units)/.* blocked.*": (
        "the checker holds that no file is of the same origin as another; browsers, to which "
        "test_every_page.py listens, hold that a file's folder is"
    ),
}


SPOILT = "spoilt.html"
PLANTED = '<p id="twice"><p id="twice"></div></main>'


def complaints(folder: Path, paths: list[str]) -> dict[str, list[str]]:
    """What the checker says by page: errors, and warnings with no reason noted."""
    # it is over before code that is compiled with more care would have paid; quick code needs room
    soon = ("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xss8m", "-Xms400m", "-Xmn300m")
    checker = [os.environ["BANK_JAVA"], *soon, "-jar", os.environ["BANK_VNU_JAR"]]
    done = subprocess.run(
        [*checker, "--format", "json", "--exit-zero-always", "--stdout", *paths],
        cwd=folder,
        capture_output=True,
        encoding="utf-8",
        check=True,
    )
    found: dict[str, list[str]] = {}
    for said in json.loads(done.stdout)["messages"]:
        if not any(re.fullmatch(fine, said["message"]) for fine in FINE):
            told = f"{said.get('lastLine')}: {said['message']}"
            found.setdefault(said["url"].rpartition("/")[2], []).append(told)
    return found


@pytest.fixture(scope="module")
def said(
    site: Path, thorough: bool, tmp_path_factory: pytest.TempPathFactory
) -> dict[str, list[str]]:
    """What the checker says of the pages and of a spoilt one; its start is what takes time."""
    spoilt = tmp_path_factory.mktemp("html") / SPOILT
    page = (site / "index.html").read_text(encoding="utf-8")
    spoilt.write_text(page.replace("</main>", PLANTED), encoding="utf-8")
    beside = made_once(tmp_path_factory, "review", review.make) / "review" / "review.html"
    plan = made_once(tmp_path_factory, "year-plan", test_year_plan.make) / "plan" / "plan.html"
    paths = html_pages(site) if thorough else heaviest(site, html_pages(site))
    assert len(paths) > 20
    return complaints(site, [*paths, str(beside), str(plan), str(spoilt)])


def test_no_page_has_an_error(said: dict[str, list[str]]) -> None:
    faults = [f"{page}:{line}" for page, lines in said.items() for line in lines if page != SPOILT]
    assert not faults, "\n".join(faults)


def test_the_checker_notices_a_spoilt_page(said: dict[str, list[str]]) -> None:
    assert any("Duplicate ID" in fault for fault in said[SPOILT])
    assert any("Stray end tag" in fault for fault in said[SPOILT])
