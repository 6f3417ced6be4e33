"""What one unit covers: what its pupils do, never what a page mentions.

The headings are those of the schemas, asked here of the schemas' own lists; the six actions are
those of Scotland's EXA 1-08a (travel, turn, jump, gesture, pause, fall), from memory.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from build_tools.shapes.schemas import schema
from build_tools.views.dance.coverage import devices_done, met
from build_tools.views.teaching.covers import HEADINGS, covers
from build_tools.views.teaching.words_said import HEADINGS_SAID, word_said
from tests.support.sound_bank import every_unit, real_unit, whole_bank


def test_nothing_is_met_where_no_step_does_anything() -> None:
    unit = real_unit()
    assert {"jump", "canon", "mirror", "travel"} <= met(unit)
    idle = replace(
        unit,
        lessons=tuple(
            replace(
                lesson,
                focus="Jump in canon, mirror and travel",
                steps=tuple(
                    replace(s, makes=(), develops=(), joins=(), dances=(), shows=())
                    for s in lesson.steps
                ),
            )
            for lesson in unit.lessons
        ),
    )
    assert met(idle) == frozenset()
    assert devices_done(idle) == ()
    found = covers(idle).words
    assert {heading for heading, words in found.items() if words} == {"forms", "sound", "stimulus"}


def test_the_rock_pool_covers_what_it_teaches() -> None:
    found = covers(real_unit())
    assert found.years == (("England", "3"), ("England", "4"))
    assert "change of body part" in found.words["devices"]
    assert found.words["sound"] == ("drum", "voice")
    assert set(found.words["stimulus"]) == set(real_unit().stimulus.kinds)
    assert [link.says for link in found.links] == [c.says for c in real_unit().curriculum]
    assert found.lessons == len(real_unit().lessons)


def test_only_known_words_are_covered_each_once_and_in_order() -> None:
    for unit in every_unit():
        for heading, words in covers(unit).words.items():
            known = HEADINGS[heading]
            assert [known.index(word) for word in words] == sorted({*map(known.index, words)})


def listed_in(name: str, *way: str) -> set[str]:
    at: Any = schema(name)
    for step in way:
        at = at[step]
    return set(at["enum"])


@pytest.mark.parametrize(
    ("heading", "known"),
    [
        ("devices", listed_in("unit", "$defs", "development", "properties", "device")),
        ("sound", listed_in("unit", "$defs", "sound", "properties", "kind")),
        ("stimulus", listed_in("unit", "properties", "stimulus", "properties", "kinds", "items")),
        ("dynamics", listed_in("shared", "$defs", "dynamics", "items")),
    ],
)
def test_the_headings_have_every_word_that_a_unit_may_use(heading: str, known: set[str]) -> None:
    assert set(HEADINGS[heading]) == known


def test_every_heading_is_said_and_no_two_words_under_one_are_said_alike() -> None:
    assert HEADINGS_SAID.keys() == HEADINGS.keys()
    for heading, words in HEADINGS.items():
        assert len({word_said(heading, word) for word in words}) == len(words)


def test_an_action_of_effort_covers_its_name_and_its_qualities() -> None:
    """Laban and Lawrence, Effort, 1947: glide is light, sustained and direct."""
    unit = next(one for one in whole_bank().units if one.slug == "magnets")
    assert "glide" in unit.dance.motifs["pull"].actions[2].dynamics
    assert {"glide", "light", "direct", "sustained"} <= set(covers(unit).words["dynamics"])
