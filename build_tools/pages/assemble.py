"""All the pages there are: those of the whole bank, and those of one unit."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.about.about import Notice, about_page
from build_tools.pages.booklet.booklet import booklet_page
from build_tools.pages.card.card import card_page
from build_tools.pages.counts.counts import counts_page
from build_tools.pages.dance.dance import dance_page
from build_tools.pages.front.front import front_page
from build_tools.pages.handouts.handouts import handouts_page
from build_tools.pages.lesson.lesson import lesson_page
from build_tools.pages.page import Page
from build_tools.pages.rules.rules import RuleEntry, rules_page
from build_tools.pages.safety.safety import safety_page
from build_tools.pages.sheet.sheet import sheet_page
from build_tools.pages.unit.unit import unit_page
from build_tools.pages.wall.wall import wall_page
from build_tools.pages.words.words import words_page
from build_tools.pages.writing.schema_guide import Schemas
from build_tools.pages.writing.writing import writing_page


def shared_pages(
    bank: Bank, rules: Sequence[RuleEntry], notices: Sequence[Notice], schemas: Schemas
) -> list[Page]:
    """The pages of the whole bank. Drafts are not listed; `schemas` by the kind of file."""
    units = tuple(unit for unit in bank.units if not unit.draft)
    return [
        front_page(bank, units),
        words_page(bank),
        safety_page(bank),
        writing_page(bank, units, schemas),
        rules_page(bank, rules),
        about_page(bank, units, notices),
    ]


def unit_pages(bank: Bank, unit: Unit) -> list[Page]:
    """The pages of one unit. They depend on the unit and on the bank's settings."""
    return [
        unit_page(bank, unit),
        *(lesson_page(bank, unit, lesson) for lesson in unit.lessons),
        *(card_page(bank, unit, lesson) for lesson in unit.lessons),
        *(wall_page(bank, unit, lesson) for lesson in unit.lessons),
        counts_page(bank, unit),
        dance_page(bank, unit),
        booklet_page(bank, unit),
        *(handouts_page(bank, unit, lesson) for lesson in unit.lessons),
        sheet_page(bank, unit),
    ]
