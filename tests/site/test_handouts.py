"""What is printed for a class, read from the browser's own PDF.

One side for the unit's sheet, 11 points or more (10.5 for credits), words on cards of 48 points or
more and 15 mm at the edges: common practice, no source. Ink: WCAG 2.2, 1.4.6 is held for every page
in test_contrast.py.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.handouts import looked_for, strips_to_hand
from tests.support.browser import address_of, reader
from tests.support.paper import Print, printed, squeezed
from tests.support.sound_bank import real_bank

BETWEEN = 40
"""Letters that a strip's drawing may have between its words."""
MARGIN, BODY, CREDITS, CARD, IN_DRAWINGS = 15.0, 11.0, 10.5, 48.0, 9.5
# Each strip, word card and the sheet as it stands on the page, in order; small cards are a set
# for each group to hold.
PIECES = """
() => [...document.querySelectorAll(".strips .handed:not([data-out]) .cut")].map((strip) => [
  ...strip.querySelectorAll("p strong, svg text"),
].map((piece) => piece.textContent))
"""
CARDS = """
() => [...document.querySelectorAll(".cards:not(.small, .device) li > .word")]
  .filter((word) => !word.closest("[data-out]"))
  .map((word) => word.textContent)
"""


@dataclass(frozen=True, slots=True)
class Handed:
    """One lesson's handouts on paper, and what the page says."""

    paper: Print
    strips: list[list[str]]
    cards: list[str]


def units() -> tuple[Unit, ...]:
    bank = real_bank()
    return tuple(unit for unit in bank.units if not unit.draft)


def lessons() -> Iterator[tuple[str, Unit, Lesson]]:
    for unit in units():
        for lesson in unit.lessons:
            yield f"units/{unit.slug}/to-print.html#lesson-{lesson.number}", unit, lesson


def handed(browser: Browser, site: Path, paths: list[str]) -> dict[str, Handed]:
    done = {}
    with reader(browser, site) as at:
        for path in paths:
            at.page.goto(address_of(site, path))
            too = at.page.locator("p:not([data-out]) .strips-too")
            if too.count():
                too.check()
            strips, cards = (at.page.evaluate(script) for script in (PIECES, CARDS))
            done[path] = Handed(printed(at.page), strips, cards)
    return done


@pytest.fixture(scope="module")
def prints(browser: Browser, site: Path, thorough: bool) -> dict[str, Handed]:
    """One lesson that makes a motif; in the long run one of each unit, and its last.

    A strip is printed for each pair or group, so that the heaviest is the same over and over.
    """
    chosen: list[str] = []
    for unit in units():
        own = [path for path, of, _ in lessons() if of.slug == unit.slug]
        # the second, in a unit of one lesson the first
        chosen += dict.fromkeys([own[:2][-1], own[-1]])
    return handed(browser, site, chosen if thorough else chosen[:1])


def split(one: Handed) -> list[str]:
    """Strips that go on over the end of a side."""
    found, place = [], 0
    for pieces in one.strips:
        ways = in_order(one.paper, pieces, place)
        least = min(each[-1][1] - each[0][0] for each in ways)
        spots = next(each for each in ways if each[-1][1] - each[0][0] <= least + BETWEEN)
        place = spots[-1][1]
        if len({one.paper.glyphs[at].side for spot in spots for at in (spot[0], spot[1] - 1)}) > 1:
            found.append(pieces[0])
    return found


def in_order(paper: Print, pieces: list[str], place: int) -> list[list[tuple[int, int]]]:
    """From where to where the pieces stand one after another, for each place where they may begin.

    A caption or a card may say the first words of a strip too, long before it.
    """
    ways = []
    start = paper.side_of(pieces[0], place)
    while start:
        spots, at = [], start[1]
        for piece in pieces:
            there = paper.side_of(piece, at)
            if not there:
                break
            at = there[1] + len(squeezed(piece))
            spots.append((there[1], at))
        if len(spots) < len(pieces):
            break
        ways.append(spots)
        start = paper.side_of(pieces[0], start[1] + 1)
    assert ways, f"{pieces} are not on the paper after what stands before them"
    return ways


def test_each_unit_is_on_one_side_and_can_be_read(browser: Browser, site: Path) -> None:
    with reader(browser, site) as at:
        for unit in units():
            at.page.goto(address_of(site, f"units/{unit.slug}/sheet.html"))
            sheet = printed(at.page)
            assert len(sheet.margins) == 1, unit.slug
            assert min(sheet.margins[0]) >= MARGIN - 0.05, (unit.slug, sheet.margins)
            assert sheet.usual_size() >= BODY
            assert min(glyph.size for glyph in sheet.glyphs) >= CREDITS - 0.01
            for words in (unit.title, *(lesson.title for lesson in unit.lessons)):
                assert sheet.side_of(words), (unit.slug, words)


def test_every_strip_is_on_the_paper_and_none_is_split(prints: dict[str, Handed]) -> None:
    for path, unit, lesson in lessons():
        if path in prints:
            copies = sum(one.copies for one in strips_to_hand(unit, lesson))
            assert len(prints[path].strips) == copies
            assert split(prints[path]) == [], path


def test_parts_start_on_new_sides_with_room_at_the_edges(prints: dict[str, Handed]) -> None:
    for path, one in prints.items():
        assert one.cards, path
        last = one.paper.side_of("Observation sheet")
        assert last == (len(one.paper.margins) - 1, last[1] if last else 0), path
        first = one.paper.glyphs[last[1] - 1].side if last else -1
        assert first == len(one.paper.margins) - 2, path
        large = {g.side for g in one.paper.glyphs if g.size >= CARD - 0.01}
        strips = {g.side for g in one.paper.glyphs[: starts_of_cards(one)]}
        assert not large & strips, path
        for margins in one.paper.margins:
            assert min(margins) >= MARGIN - 0.05, (path, margins)
        assert min(glyph.size for glyph in one.paper.glyphs) >= IN_DRAWINGS


def starts_of_cards(one: Handed) -> int:
    return next(n for n, glyph in enumerate(one.paper.glyphs) if glyph.size >= CARD - 0.01)


def test_words_on_cards_are_large_several_to_a_side(prints: dict[str, Handed]) -> None:
    for path, one in prints.items():
        letters = "".join(g.text for g in one.paper.glyphs if g.size >= CARD - 0.01)
        # a number that a drawing says, such as how often, may stand between them
        other, at = "", 0
        for card in one.cards:
            found = letters.find(squeezed(card), at)
            assert found >= 0, (path, card)
            other, at = other + letters[at:found], found + len(squeezed(card))
        assert set(other + letters[at:]) <= set("0123456789×"), path
        sides = {g.side for g in one.paper.glyphs if g.size >= CARD - 0.01}
        assert len(one.cards) > len(sides), path


def test_the_sheet_to_look_with_is_one_side_with_end_points_and_blank_rows(
    prints: dict[str, Handed],
) -> None:
    for path, unit, lesson in lessons():
        if path not in prints:
            continue
        paper = prints[path].paper
        last = len(paper.margins) - 1
        for end in looked_for(unit, lesson):
            for words in (end.every_pupil[1:], end.looks_like[1:]):
                assert any(side == last for side in sides_of(paper, words)), (path, words)
        said = "".join(glyph.text for glyph in paper.glyphs if glyph.side == last)
        # nothing but their numbers stands in the rows
        assert "".join(str(n) for n in range(1, 31)) + "Nopupilisnamedhere" in said, path


def sides_of(paper: Print, words: str) -> Iterator[int]:
    at = paper.side_of(words)
    while at:
        yield at[0]
        at = paper.side_of(words, at[1] + 1)


def test_these_checks_notice_strips_that_are_split(prints: dict[str, Handed]) -> None:
    """A strip that would go on to the last side, where the sheet stands."""
    handing = [one for one in prints.values() if one.strips]
    assert handing
    for one in handing:
        first = one.strips[0][0]
        assert split(replace(one, strips=[[first, "Observation sheet"]])) == [first]
