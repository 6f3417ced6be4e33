"""Each lesson on paper, read from the browser's own PDF: two sides that can be read in the hall.

Sizes: RNIB, "Clear print guidelines" (12 point, never far below); ink: WCAG 2.2, 1.4.6 (7:1) and
1.4.11 (3:1 for what is drawn), of the same print in greys. Two sides, 14 points for what is said
aloud, eleven at least for the rest and 20 mm for a pencil: common practice, no source.
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.lesson_wording import trouble_in_words
from tests.support.browser import address_of, reader
from tests.support.built_sites import heaviest, lesson_pages, lessons_to_open, part_of
from tests.support.paper import Glyph, Print, printed, squeezed
from tests.support.sound_bank import real_bank

SIDES = 2
FURTHER = 2
"""Sides of notes on the steps, after the lesson's own: one sheet more where both are printed."""
MOST_UNIT_SIDES = 6
MARGINS, FOOT, UNIT_MARGIN = (20.0, 15.0, 15.0, 15.0), 18.0, 12.0
"""Left, with room for a pencil, top, right and bottom; common practice, no source."""
OVERHANG = 0.2
"""Millimetres that a j at the beginning of a line hangs over its edge."""
SAID, BODY, IN_DRAWINGS = 14.0, 11.0, 9.5
TEXT_CONTRAST = 7.0
FACE = "AtkinsonHyperlegibleNext"
FIT, FITTED = "#fit=38-7-25-2-half", "fitted for 27, 38 min"
# The words of each step as they stand on the page, piece by piece, and what is said aloud.
PIECES = """
() => [...document.querySelectorAll(".step, .talk")].map((part) => [
  ...part.querySelectorAll("h2, h3, .say, .task, .look-for, .ask strong, .range p, .rows dd"),
].map((piece) => piece.textContent))
"""
# What is sounded and said on the counts of each step, its label apart.
BEATS = """
() => [...document.querySelectorAll(".does > .counts")]
  .map((one) => one.innerText.slice(one.querySelector("b").innerText.length))
"""
SAYS = "() => [...document.querySelectorAll('.say')].map((say) => say.textContent)"
# Letters in the drawings that are printed, which may be smaller; some stand once, shown again.
DRAWN = """
() => [...document.querySelectorAll(":is(.first, .plans, .step-plan) svg :is(text, use)")]
  .map((one) => document.querySelector(one.getAttribute("href") || ":not(*)") || one)
  .map((one) => one.textContent).join("")
"""
# Steps of which what is told again is shown, behind a dot, though all that it tells is hidden.
LONE_DOTS = """
(told) => {
  const seen = (one) => one.checkVisibility();
  for (const step of document.querySelectorAll(".step")) step.dataset.told = told;
  return [...document.querySelectorAll(".shown .again")]
    .filter((one) => seen(one) && ![...one.querySelectorAll("dl")].some(seen))
    .map((one) => one.closest(".step").id);
}
"""


@dataclass(frozen=True, slots=True)
class Sheet:
    """One lesson on paper, and what its page says."""

    paper: Print
    pieces: list[list[str]]
    says: list[str]
    beats: list[str]
    drawn: str


def lessons() -> Iterator[tuple[str, Unit, Lesson]]:
    bank = real_bank()
    for unit in (one for one in bank.units if not one.draft):
        for lesson in unit.lessons:
            yield f"units/{unit.slug}/lesson-{lesson.number}.html", unit, lesson


def contrast(light: float, other: float) -> float:
    dark, bright = sorted((light, other))
    return (bright + 0.05) / (dark + 0.05)


def faults(sheet: Sheet, foot: str) -> list[str]:
    """What is wrong with a lesson's print, whatever it says; `foot` is what each side ends on."""
    paper, wrong = sheet.paper, []
    notes = paper.side_of("Notes for lesson")
    own, every = notes[0] if notes else len(paper.margins), len(paper.margins)
    if own != SIDES or every > SIDES + FURTHER:
        wrong.append(f"{own} sides, and {every - own} of notes")
    if [round(length) for length in paper.size_mm] != [210, 297]:
        wrong.append(f"paper of {paper.size_mm} mm")
    for side, margins in enumerate(paper.margins, start=1):
        if any(edge < least - OVERHANG for edge, least in zip(margins, MARGINS, strict=True)):
            wrong.append(f"side {side}: margins {[round(edge, 1) for edge in margins]} mm")
    for side, said in enumerate(paper.feet, start=1):
        if squeezed(said) != squeezed(f"{foot}Side {side} of {every}"):
            wrong.append(f"side {side}: at its foot {said!r}")
    if paper.usual_size() < BODY:
        wrong.append(f"body text of {paper.usual_size()} points")
    small = "".join(glyph.text for glyph in paper.glyphs if glyph.size < BODY - 0.01)
    if len(small) > len(squeezed(sheet.drawn)):
        wrong.append(f"under {BODY} points: {small[:80]}")
    if min(glyph.size for glyph in paper.glyphs) < IN_DRAWINGS:
        wrong.append(f"under {IN_DRAWINGS} points in a drawing")
    faces = {glyph.face.partition("+")[2] or glyph.face for glyph in paper.glyphs}
    if other := sorted(face for face in faces if not face.startswith(FACE)):
        wrong.append(f"typefaces {other}")
    wrong += [f"said in {sizes} points: {say}" for say, sizes in quiet_says(sheet)]
    pale = "".join(glyph.text for glyph in paper.glyphs if is_pale(glyph))
    if pale:
        wrong.append(f"pale in greys: {pale[:80]}")
    return wrong


def is_pale(glyph: Glyph) -> bool:
    """Whether a letter's ink is pale on paper, or what is seen of it in greys."""
    by_ink = contrast(glyph.light, 1.0)
    return by_ink < TEXT_CONTRAST or contrast(*glyph.shown) < TEXT_CONTRAST


def quiet_says(sheet: Sheet) -> Iterator[tuple[str, list[float]]]:
    """What is said aloud and is not in bold of 14 points, with the sizes it has."""
    for whole in sheet.says:
        say = whole[whole.index("“") :]
        found = sheet.paper.side_of(say)
        assert found, say
        glyphs = sheet.paper.glyphs[found[1] : found[1] + len(squeezed(say))]
        if any(abs(g.size - SAID) > 0.05 or "Bold" not in g.face for g in glyphs):
            yield say, sorted({round(glyph.size, 1) for glyph in glyphs})


def parted(sheet: Sheet) -> list[str]:
    """Steps, and looking and talking, that go on over the end of a side."""
    found = []
    place = 0
    for pieces in sheet.pieces:
        assert pieces
        sides = set()
        for piece in pieces:
            at = sheet.paper.side_of(piece, place)
            assert at, f"{piece} is not on the paper after what stands before it"
            end = at[1] + len(squeezed(piece))
            sides |= {at[0], sheet.paper.glyphs[end - 1].side}
            place = end
        if len(sides) > 1:
            found.append(pieces[0])
    return found


def print_each(
    browser: Browser, site: Path, paths: list[str], fragment: str, greys: bool
) -> dict[str, Sheet]:
    """Each of these lessons on paper, by its path."""
    done = {}
    with reader(browser, site) as at:
        for path in paths:
            at.page.goto(address_of(site, path) + fragment)
            read = [at.page.evaluate(script) for script in (PIECES, SAYS, BEATS, DRAWN)]
            done[path] = Sheet(printed(at.page, FOOT, greys), *read)
    return done


@pytest.fixture(scope="module")
def prints(browser: Browser, site: Path, thorough: bool) -> dict[str, Sheet]:
    """The heaviest lesson of each unit; in the long run every one."""
    return print_each(browser, site, lessons_to_open(site, thorough), "", greys=True)


@pytest.fixture(scope="module")
def fitted(browser: Browser, site: Path, thorough: bool) -> dict[str, Sheet]:
    """The heaviest lesson of the last unit; in the long run every one."""
    chosen = lessons_to_open(site, thorough)
    return print_each(browser, site, chosen if thorough else chosen[-1:], FIT, greys=False)


def feet(site: Path, more: str = "") -> dict[str, str]:
    found = {
        path: f"{unit.title}, lesson {lesson.number}, edition {unit.edition}{more}"
        for path, unit, lesson in lessons()
    }
    # the usual run knows the units that it looks at; the site has every one
    assert set(found) <= set(lesson_pages(site))
    return found


def test_each_lesson_can_be_read_at_arms_length_from_two_sides(
    site: Path, prints: dict[str, Sheet]
) -> None:
    wrong = {
        path: found
        for path, foot in feet(site).items()
        if path in prints and (found := faults(prints[path], foot))
    }
    assert wrong == {}


def test_a_fitted_lesson_prints_as_well_and_says_for_whom_it_is_fitted(
    site: Path, fitted: dict[str, Sheet]
) -> None:
    wrong = {
        path: found
        for path, foot in feet(site, f", {FITTED}").items()
        if path in fitted and (found := faults(fitted[path], foot))
    }
    assert wrong == {}


def test_whatever_is_sounded_and_said_on_the_counts_is_printed(prints: dict[str, Sheet]) -> None:
    """Two teachers had a beat on paper whose words were on no side: one further side was full."""
    for path, one in prints.items():
        assert one.beats, path
        # a bold name of a part is followed by its words on paper as it is here
        assert [said for said in one.beats if not one.paper.side_of(said)] == [], path


def test_what_a_step_does_not_tell_again_leaves_no_dot_on_paper(
    browser: Browser, site: Path
) -> None:
    """An adviser read a lone dot under the step that joins two parts, and missed a line there."""
    path = "units/rope-bridge/lesson-4.html"
    with reader(browser, site) as at:
        at.page.goto(address_of(site, path))
        at.page.emulate_media(media="print")
        assert at.page.locator(".shown .again").count() > 1
        lone = {told: at.page.evaluate(LONE_DOTS, told) for told in range(6)}
    assert lone == {told: [] for told in range(6)}


def test_no_step_and_no_looking_and_talking_goes_on_over_the_end_of_a_side(
    prints: dict[str, Sheet], fitted: dict[str, Sheet]
) -> None:
    for sheets in (prints, fitted):
        assert {path: found for path, one in sheets.items() if (found := parted(one))} == {}


def test_each_side_holds_what_it_is_for(prints: dict[str, Sheet]) -> None:
    """Side one the first screen, the short lines and the opening; side two what comes after."""
    for path, _, lesson in lessons():
        if path not in prints:
            continue
        paper = prints[path].paper
        assert lesson.look_and_talk is not None
        first = [lesson.pupils_make, "You do not need to demonstrate.", *lesson.collect]
        first += [lesson.steps[0].task, lesson.steps[1].task, *lesson.safety]
        second = [lesson.look_and_talk.questions[-1].question, lesson.not_dancing]
        # as the page says them: a step that is named by its kind has its number there
        second += [words for _, words in trouble_in_words(lesson)]
        if lesson.look_and_talk.next:
            second += [lesson.look_and_talk.next.seen[1:], lesson.look_and_talk.next.not_yet[1:]]
        for side, words in ((0, first), (1, second)):
            for line in words:
                last = [found for found in places(paper, line) if found == side]
                assert last, f"{path}: side {side + 1} lacks {line}"


def places(paper: Print, words: str) -> Iterator[int]:
    """Each side that some words start on."""
    at = paper.side_of(words)
    while at:
        yield at[0]
        at = paper.side_of(words, at[1] + 1)


def test_everything_that_is_said_is_on_the_paper(prints: dict[str, Sheet]) -> None:
    missing = []
    for path, _, lesson in lessons():
        if path not in prints:
            continue
        said = [step.say for step in lesson.steps if step.say]
        assert said
        missing += [(path, say) for say in said if not is_printed(prints[path].paper, say)]
    assert missing == []


def is_printed(paper: Print, words: str) -> bool:
    """Whether these words are on the paper, whatever marks stand around what they quote."""
    first, *others = re.split('["“”]', words)
    at = paper.side_of(first)
    while at:
        end = at[1] + len(squeezed(first))
        for piece in others:
            # one letter further, over the mark
            there = paper.side_of(piece, end + 1)
            if not there or there[1] != end + 1:
                break
            end = there[1] + len(squeezed(piece))
        else:
            return True
        at = paper.side_of(first, at[1] + 1)
    return False


def test_no_links_codes_or_rights_are_on_the_paper(prints: dict[str, Sheet]) -> None:
    for path, unit, _ in lessons():
        if path not in prints:
            continue
        text = "".join(glyph.text for glyph in prints[path].paper.glyphs)
        assert not re.search(r"https?:|www\.|\.org|\.html|CCBY|CC0|lastedition", text), path
        assert squeezed(unit.curriculum[0].met_by) not in text, path
        assert squeezed("has not been taught") not in text, path


def test_a_unit_prints_on_six_sides_at_most_with_room_at_its_edges(
    browser: Browser, site: Path, thorough: bool
) -> None:
    """The heaviest unit; in the long run every one."""
    wrong = {}
    folders = {path.rpartition("/")[0] for path in lesson_pages(site)}
    pages = sorted(f"{folder}/index.html" for folder in folders)
    with reader(browser, site) as at:
        for page in pages if thorough else heaviest(site, pages):
            at.page.goto(address_of(site, page))
            sheet = printed(at.page)
            least = min(min(margins) for margins in sheet.margins)
            if len(sheet.margins) > MOST_UNIT_SIDES or least < UNIT_MARGIN - 0.05:
                wrong[page] = (len(sheet.margins), least)
            assert sheet.usual_size() >= BODY
            assert not sheet.side_of("Everything else"), f"{page}: a heading over links alone"
    assert wrong == {}


SPOILT = """
@media print {
  @page lesson { margin: 8mm; @bottom-left { content: "nobody" } }
  * { font-family: serif !important }
  main p, main li { font-size: 9pt !important }
  .task { color: #999 !important }
  .planted { page-break-before: always }
  .step { break-inside: auto !important } .step .task { display: block; break-before: page }
}
"""


def test_these_checks_notice_a_spoilt_print(browser: Browser, site: Path, tmp_path: Path) -> None:
    path = lesson_pages(site)[0]
    folder = part_of(site, tmp_path / "spoilt", path)
    page = folder / path
    styles = os.path.relpath(folder / "planted.css", page.parent)
    planted = f'<link rel="stylesheet" href="{styles}"></body>'
    html = page.read_text(encoding="utf-8").replace("</body>", planted)
    long = '<p class="planted">Planted.</p>' * 3
    page.write_text(html.replace("</main>", f"{long}</main>"), encoding="utf-8")
    (folder / "planted.css").write_text(SPOILT, encoding="utf-8")
    with reader(browser, folder) as at:
        at.page.goto(page.resolve().as_uri())
        read = [at.page.evaluate(script) for script in (PIECES, SAYS, BEATS, DRAWN)]
        sheet = Sheet(printed(at.page, FOOT, greys=True), *read)
    wrong = "\n".join(faults(sheet, "A unit, lesson 1, edition 1"))
    for told in (
        " sides",
        "margins",
        "at its foot",
        "body text of 9.0",
        "under 11.0 points",
        "typefaces",
        "said in [9.0] points",
        "pale in greys",
    ):
        assert told in wrong
    assert parted(sheet)


BEYOND = """
<style>
@page { margin: 20mm } body { margin: 0 } svg, i { display: block; width: 40mm; height: 20mm }
</style>
<svg viewBox="0 0 40 20"><path d="M-15 5h30v5z"/></svg><i style="BOX; border: 1px solid"></i>
"""


def test_what_a_picture_cuts_off_at_its_edge_is_no_fault_what_the_paper_cuts_off_is_one(
    browser: Browser,
) -> None:
    page = browser.new_page()
    for box, left in (("", 20.0), ("margin-left: -10mm", 10.0)):
        page.set_content(BEYOND.replace("BOX", box))
        assert printed(page).margins[0][0] == pytest.approx(left, abs=0.3)
    page.close()


def test_a_slot_too_short_even_for_two_sittings_is_not_called_fitted(
    browser: Browser, site: Path
) -> None:
    page = lesson_pages(site)[0]
    with reader(browser, site) as at:
        feet = {}
        for minutes in (8, 38):
            at.page.goto("about:blank")
            at.page.goto(f"{address_of(site, page)}#fit={minutes}-0-25-2-half")
            feet[minutes] = at.page.evaluate("document.documentElement.dataset.foot")
        assert feet[38].endswith(FITTED)
        assert "fitted" not in feet[8]
