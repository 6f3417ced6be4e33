"""A unit goes out as a word-processor file and comes back as a draft that says the same."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

import pytest

from build_tools.building.word_file.unit_document import word_file
from build_tools.drafting.from_document.draft_from_document import DraftFromDocument
from build_tools.model.lesson import Lesson
from build_tools.views.lesson.lesson_wording import question_said
from build_tools.views.words.open_places import MARK
from build_tools.views.words.punctuation import sentence
from tests.drafting.from_document.making import fields_of, sound, tokens, told, without_clock
from tests.support.banks import CONTENT
from tests.support.sound_bank import real_bank, real_unit
from tests.support.word_files import shown

UNIT = real_unit()


@cache
def data() -> bytes:
    return word_file(real_bank(), UNIT, CONTENT / "units" / UNIT.slug, UNIT.lessons).data


@cache
def back() -> DraftFromDocument:
    return sound(data())


@pytest.mark.parametrize("lesson", UNIT.lessons, ids=lambda one: str(one.number))
def test_a_lesson_comes_back(lesson: Lesson) -> None:
    found = fields_of(back(), f"lesson-{lesson.number}.md").data
    for name in ("title", "minutes", "pupils_make", "not_dancing"):
        assert found[name] == getattr(lesson, name), name
    assert found["focus"] == sentence(lesson.focus)
    assert found["collect"] == list(lesson.collect)
    assert found["safety"] == list(lesson.safety)
    assert found.get("classroom_first", []) == list(lesson.classroom_first)
    assert found.get("story_so_far") == lesson.story_so_far
    for name, words in found["if"].items():
        if not words.startswith(MARK):
            # the page names the step that makes, where the author says "the make step"
            assert words == lesson.trouble[name] or "the make step" in lesson.trouble[name]
    assert found.get("change", {}) == dict(lesson.change)


@pytest.mark.parametrize("lesson", UNIT.lessons, ids=lambda one: str(one.number))
def test_its_steps_come_back(lesson: Lesson) -> None:
    found = fields_of(back(), f"lesson-{lesson.number}.md").data["steps"]
    assert len(found) == len(lesson.steps)
    for one, step in zip(found, lesson.steps, strict=True):
        for name in ("phase", "does", "minutes", "grouping", "task", "you", "easier", "harder"):
            assert one.get(name) == getattr(step, name), (step.does, name)
        assert tokens(one.get("say", "")) == tokens(step.say or "")
        assert tokens(one.get("into", "")) == tokens(step.into or "")
        assert one.get("look_for") == step.look_for
        assert one.get("counts") == (int(step.counts) if step.counts else None)
        asked = [q["question"] for q in one.get("ask", [])]
        # of the lesson before the page says "last time"
        assert asked == [question_said(question, lesson) for question in step.ask]
        answers = [a for q in one.get("ask", []) for a in q.get("answers", [])]
        assert tokens(" ".join(answers)) == tokens(" ".join(a for q in step.ask for a in q.answers))


def test_it_is_a_draft_that_keeps_the_licence_and_names_its_source() -> None:
    unit = fields_of(back(), "unit.md").data
    assert unit["draft"] is True
    assert unit["licence"] == UNIT.licence
    source = unit["adapted_from"]
    assert (source["title"], source["edition"]) == (UNIT.title, UNIT.edition)
    assert (source["publisher"], source["licence"]) == (UNIT.publisher, UNIT.licence)


def pieces() -> Iterator[str]:
    for one in shown(data()):
        yield from (cell for row in one.rows for cell in row) if one.rows else [one.text]


def test_no_word_of_it_is_lost() -> None:
    whole = tokens(" ".join(without_clock(text) for text in pieces()))
    assert set(whole) - set(told(back())) == set()
