"""Each lesson on paper, read from the browser's own PDF: two sides that can be read in the hall.

Common practice, no source: two sides of A4, 12 mm for a printer's edge, 11 points for reading and
never under 9.5.
"""

from __future__ import annotations

import os
import shutil
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from build_tools.pipeline import check_folder
from build_tools.site_building import published_units
from tests.support.browser import address_of, reader
from tests.support.built_sites import CONTENT, lesson_pages
from tests.support.paper import Print, printed, squeezed

MOST_SIDES = 2
MOST_UNIT_SIDES = 6
LEAST_MARGIN = 12.0
LEAST_BODY, LEAST_TEXT = 11.0, 9.5
FACE = "AtkinsonHyperlegibleNext"
# Each step's heading and the line that follows it: what is said aloud, else what pupils do.
STEPS = """
() => [...document.querySelectorAll(".step")].map((step) => [
  step.querySelector("h3").textContent, step.querySelector(".say, .task").textContent,
])
"""


def faults(sheet: Print) -> list[str]:
    """What is wrong with a lesson's print, whatever it says."""
    wrong = []
    if len(sheet.margins) > MOST_SIDES:
        wrong.append(f"{len(sheet.margins)} sides")
    if [round(length) for length in sheet.size_mm] != [210, 297]:
        wrong.append(f"paper of {sheet.size_mm} mm")
    for side, margins in enumerate(sheet.margins, start=1):
        if min(margins) < LEAST_MARGIN - 0.05:
            wrong.append(f"side {side}: margins {[round(edge, 1) for edge in margins]} mm")
    if sheet.usual_size() < LEAST_BODY:
        wrong.append(f"body text of {sheet.usual_size()} points")
    small = "".join(glyph.text for glyph in sheet.glyphs if glyph.size < LEAST_TEXT - 0.01)
    if small:
        wrong.append(f"under {LEAST_TEXT} points: {small[:80]}")
    faces = {glyph.face.partition("+")[2] or glyph.face for glyph in sheet.glyphs}
    if other := sorted(face for face in faces if not face.startswith(FACE)):
        wrong.append(f"typefaces {other}")
    return wrong


@pytest.fixture(scope="module")
def prints(browser: Browser, site: Path) -> dict[str, tuple[Print, list[list[str]]]]:
    """Each lesson's print, and each step's heading and say line as the page has them."""
    done = {}
    with reader(browser, site) as at:
        for path in lesson_pages(site):
            at.page.goto(address_of(site, path))
            steps: list[list[str]] = at.page.evaluate(STEPS)
            done[path] = (printed(at.page), steps)
    return done


def test_each_lesson_can_be_read_at_arms_length_from_two_sides(
    prints: dict[str, tuple[Print, list[list[str]]]],
) -> None:
    wrong = {path: found for path, (sheet, _) in prints.items() if (found := faults(sheet))}
    assert prints
    assert wrong == {}


def test_everything_that_is_said_is_on_the_paper(
    prints: dict[str, tuple[Print, list[list[str]]]],
) -> None:
    bank = check_folder(CONTENT).bank
    assert bank is not None
    missing = []
    for unit in published_units(bank):
        for lesson in unit.lessons:
            sheet, _ = prints[f"units/{unit.slug}/lesson-{lesson.number}.html"]
            said = [step.say for step in lesson.steps if step.say]
            assert said
            missing += [(unit.slug, lesson.number, say) for say in said if not sheet.side_of(say)]
    assert missing == []


def test_no_step_is_parted_from_its_heading_by_the_end_of_a_side(
    prints: dict[str, tuple[Print, list[list[str]]]],
) -> None:
    parted = []
    for path, (sheet, steps) in prints.items():
        assert steps, path
        place = 0
        for heading, say in steps:
            heading_at = sheet.side_of(heading, place)
            assert heading_at, f"{path}: {heading} is not on the paper"
            place = heading_at[1] + len(squeezed(heading))
            say_at = sheet.side_of(say, place)
            assert say_at, f"{path}: {say} does not follow {heading} on the paper"
            if say_at[0] != heading_at[0]:
                parted.append((path, heading))
    assert parted == []


def test_a_unit_prints_on_six_sides_at_most_with_room_at_its_edges(
    browser: Browser, site: Path
) -> None:
    wrong = {}
    with reader(browser, site) as at:
        for folder in sorted({path.rpartition("/")[0] for path in lesson_pages(site)}):
            at.page.goto(address_of(site, f"{folder}/index.html"))
            sheet = printed(at.page)
            least = min(min(margins) for margins in sheet.margins)
            if len(sheet.margins) > MOST_UNIT_SIDES or least < LEAST_MARGIN - 0.05:
                wrong[folder] = (len(sheet.margins), least)
            assert sheet.usual_size() >= LEAST_BODY
    assert wrong == {}


def test_these_checks_notice_a_spoilt_print(browser: Browser, site: Path, tmp_path: Path) -> None:
    folder = tmp_path / "spoilt"
    shutil.copytree(site, folder)
    page = folder / lesson_pages(site)[0]
    styles = os.path.relpath(folder / "planted.css", page.parent)
    planted = f'<link rel="stylesheet" href="{styles}"></head>'
    html = page.read_text(encoding="utf-8").replace("</head>", planted)
    long = '<p class="planted">Planted.</p>' * 3
    page.write_text(html.replace("</main>", f"{long}</main>"), encoding="utf-8")
    (folder / "planted.css").write_text(
        "@media print { @page { margin: 8mm } * { font-family: serif !important }"
        "main p, main li { font-size: 9pt !important } .planted { page-break-before: always } }",
        encoding="utf-8",
    )
    with reader(browser, folder) as at:
        at.page.goto(page.resolve().as_uri())
        wrong = "\n".join(faults(printed(at.page)))
    for told in (" sides", "margins", "body text of 9.0", "under 9.5 points", "typefaces"):
        assert told in wrong
