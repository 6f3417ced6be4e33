"""Pages held to the HTML standard by the Nu HTML checker.

In the usual run the heaviest of each template in each unit, and all that are of no unit; in the
long run every page.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
from pathlib import Path

from tests.support.built_sites import heaviest_of_each_unit, html_pages

# Warnings that are no fault here: what the whole message looks like, and why.
FINE = {
    r"Resource violates Content Security Policy .*“(\.\./)*(assets|media|units)/.* blocked.*": (
        "the checker holds that no file is of the same origin as another; browsers, to which "
        "test_offline_walk.py listens, hold that a file's folder is"
    ),
}


def complaints(folder: Path, paths: list[str]) -> list[str]:
    """What the checker says against the pages: errors, and warnings with no reason noted."""
    # it is over before code that is compiled with more care would have paid; quick code needs room
    soon = ("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xss8m")
    checker = [os.environ["BANK_JAVA"], *soon, "-jar", os.environ["BANK_VNU_JAR"]]
    done = subprocess.run(
        [*checker, "--format", "json", "--exit-zero-always", "--stdout", *paths],
        cwd=folder,
        capture_output=True,
        encoding="utf-8",
        check=True,
    )
    return [
        f"{said['url'].rpartition('/')[2]}:{said.get('lastLine')}: {said['message']}"
        for said in json.loads(done.stdout)["messages"]
        if not any(re.fullmatch(fine, said["message"]) for fine in FINE)
    ]


def test_no_page_has_an_error(site: Path, thorough: bool) -> None:
    paths = html_pages(site)
    if not thorough:
        own = [path for path in paths if path.startswith("units/")]
        paths = [*sorted(set(paths) - set(own)), *heaviest_of_each_unit(site, own)]
    assert paths
    faults = complaints(site, paths)
    assert not faults, "\n".join(faults)


def test_the_checker_notices_a_spoilt_page(site: Path, tmp_path: Path) -> None:
    shutil.copyfile(site / "index.html", tmp_path / "spoilt.html")
    page = (tmp_path / "spoilt.html").read_text(encoding="utf-8")
    (tmp_path / "spoilt.html").write_text(
        page.replace("</main>", '<p id="twice"><p id="twice"></div></main>'), encoding="utf-8"
    )
    faults = complaints(tmp_path, ["spoilt.html"])
    assert any("Duplicate ID" in fault for fault in faults)
    assert any("Stray end tag" in fault for fault in faults)
