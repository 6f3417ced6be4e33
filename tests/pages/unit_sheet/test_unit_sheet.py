"""The unit on one side: all that it promises is there, for every unit there is.

Credits and licence: Creative Commons, "Recommended practices for attribution" (title, author,
licence).
"""

from __future__ import annotations

import pytest

from build_tools.model.unit import Unit
from build_tools.pages.unit_sheet.unit_sheet import SheetView, sheet_page
from build_tools.views.words.licences import licence_in_words
from tests.support.drawn import page_seen
from tests.support.sound_bank import every_unit, real_bank, real_unit

UNITS = every_unit()


def view_of(unit: Unit) -> SheetView:
    context = sheet_page(real_bank(), unit).context
    assert isinstance(context, SheetView)
    return context


@pytest.mark.parametrize("unit", UNITS, ids=[unit.slug for unit in UNITS])
def test_the_whole_unit_is_on_the_sheet(unit: Unit) -> None:
    page = sheet_page(real_bank(), unit)
    text = page_seen(page).text()
    wanted = [unit.title, *(lesson.title for lesson in unit.lessons), *unit.kit.collect]
    wanted += [end.every_pupil[1:] for end in unit.end_points.values()]
    wanted += [section.idea for section in unit.dance.sections.values()]
    wanted += [*unit.subjects, unit.publisher, licence_in_words(unit.licence)]
    for item in unit.stimulus.items:
        wanted += [item.title, item.by, licence_in_words(item.licence)]
    if unit.adapted_from:
        wanted += [unit.adapted_from.title, unit.adapted_from.publisher]
    assert [words for words in wanted if " ".join(words.split()) not in text] == []


@pytest.mark.parametrize("unit", UNITS, ids=[unit.slug for unit in UNITS])
def test_each_lesson_has_one_line_that_says_what_it_adds(unit: Unit) -> None:
    lessons = view_of(unit).lessons
    assert [one.number for one in lessons] == [lesson.number for lesson in unit.lessons]
    assert all(one.adds.endswith((".", "?", "!")) for one in lessons)


def test_the_rock_pools_third_lesson_by_hand() -> None:
    adds = view_of(real_unit()).lessons[2].adds
    # from its steps: makes crab and C, develops two, settles the answer's size
    assert adds.startswith("Pupils make the crab. They change it: mirror crab and crab answer.")
    assert "They make C: crabs." in adds
    assert "join" not in adds
    # the fourth joins the tide to the anemones, and the crabs to the storm
    assert "They join A and B" in view_of(real_unit()).lessons[3].adds
