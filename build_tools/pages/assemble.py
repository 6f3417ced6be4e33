"""All the pages there are: those of the whole bank, and those of one unit."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.page_words.speaking import speaking
from build_tools.pages.about.about import Notice, UnitRights, about_page, unit_rights
from build_tools.pages.advisers.advisers import advisers_page
from build_tools.pages.assess.assess import assess_page
from build_tools.pages.before_you_sign.before_you_sign import sign_page
from build_tools.pages.booklet.booklet import booklet_page
from build_tools.pages.browse.browse import browse_pages
from build_tools.pages.counts.counts import counts_page
from build_tools.pages.dance_from_above.dance_from_above import dance_page
from build_tools.pages.dance_in_full.dance_in_full import parts_page
from build_tools.pages.first_unit.first_unit import first_unit_page
from build_tools.pages.front.front import front_page
from build_tools.pages.get_ready.get_ready import ready_page
from build_tools.pages.glossary.glossary import words_page
from build_tools.pages.handouts.handouts import handouts_page
from build_tools.pages.lesson.lesson import lesson_page
from build_tools.pages.moves.moves import moves_page
from build_tools.pages.page import Page
from build_tools.pages.pieces.shelved import Shelved, shelved
from build_tools.pages.rules.rules import RuleEntry, rules_page
from build_tools.pages.safety.safety import safety_page
from build_tools.pages.start_here.start_here import start_page
from build_tools.pages.stimulus_on_screen.stimulus_on_screen import show_page
from build_tools.pages.unit.unit import unit_page
from build_tools.pages.unit_sheet.unit_sheet import sheet_page
from build_tools.pages.wall.wall import wall_page
from build_tools.pages.what_is_taught.what_is_taught import taught_page
from build_tools.pages.what_next.what_next import next_page
from build_tools.pages.writing.schema_guide import Schemas
from build_tools.pages.writing.writing import Examples, examples_of, writing_page
from build_tools.views.finding.related import related
from build_tools.views.teaching.covers import Covers, covers


@dataclass(frozen=True, slots=True)
class Listed:
    """All that the pages of the whole bank say of one unit.

    It is small and is kept, so that a change in one unit needs no other unit read.
    """

    slug: str
    """The unit's folder."""
    shelved: Shelved
    """Wherever units are listed, and in the finder."""
    rights: UnitRights
    """On the page about the bank."""
    examples: Examples
    """On the page on how to write a unit."""
    covers: Covers
    """On the page on what the bank teaches."""


def listed(bank: Bank, unit: Unit) -> Listed:
    """What the pages of the whole bank say of `unit`; it depends on the bank's settings too."""
    return Listed(
        unit.slug, shelved(bank, unit), unit_rights(unit), examples_of(unit), covers(unit)
    )


def shared_pages(
    bank: Bank,
    units: Sequence[Listed],
    rules: Sequence[RuleEntry],
    notices: Sequence[Notice],
    schemas: Schemas,
) -> list[Page]:
    """The pages of the whole bank over the published `units`; `schemas` by the kind of file."""
    first = min(units, key=lambda one: one.slug).examples if units else None
    shelves = [one.shelved for one in units]
    found = [one.found for one in shelves]
    near = related(found)
    cards = {one.found.slug: one.card for one in shelves}
    return [
        front_page(bank, shelves),
        start_page(bank),
        *browse_pages(bank, shelves),
        *(next_page(bank, one, near[one.slug], cards) for one in found),
        advisers_page(bank),
        taught_page(bank, [one.covers for one in units]),
        words_page(bank),
        safety_page(bank),
        first_unit_page(bank),
        writing_page(bank, first, schemas),
        rules_page(bank, rules),
        about_page(bank, [one.rights for one in units], notices),
    ]


def unit_pages(bank: Bank, unit: Unit, published: Collection[str] = ()) -> list[Page]:
    """The pages of one unit.

    They depend on the unit, on the bank's settings, and on which of the unit's neighbours (the
    units that it builds on or leads to) are among those `published`. Their words are in the unit's
    language, where there is a table of it.
    """
    with speaking(unit.language):
        return _unit_pages(bank, unit, published)


def _unit_pages(bank: Bank, unit: Unit, published: Collection[str]) -> list[Page]:
    return [
        unit_page(bank, unit),
        *further_pages(bank, unit, published),
        sign_page(bank, unit),
        show_page(bank, unit),
        *(lesson_page(bank, unit, lesson) for lesson in unit.lessons),
        wall_page(bank, unit),
        counts_page(bank, unit),
        dance_page(bank, unit),
        booklet_page(bank, unit),
        handouts_page(bank, unit),
        sheet_page(bank, unit),
    ]


def further_pages(bank: Bank, unit: Unit, published: Collection[str] = ()) -> list[Page]:
    """The pages behind the doors of the unit's own page."""
    moves = [moves_page(bank, unit)] if unit.dance.motifs else []
    return [
        ready_page(bank, unit),
        parts_page(bank, unit),
        *moves,
        assess_page(bank, unit, published),
    ]
