"""The card's page: for each step what is said, what to look for, one question, what comes next."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.pages.card.card import CardView, card_page
from build_tools.pages.pieces.notes import notes_html
from build_tools.views.lesson.checks_before import ROOM_BESIDE_CHAIRS
from build_tools.views.lesson.lesson_wording import question_said
from build_tools.views.lesson.notes_read import Paragraph, notes_read
from tests.support.sound_bank import real_bank

LESSONS = [(unit, lesson) for unit in real_bank().units for lesson in unit.lessons]
NAMES = [f"{unit.slug} {lesson.number}" for unit, lesson in LESSONS]


def card(at: int) -> CardView:
    view = card_page(real_bank(), *LESSONS[at]).context
    assert isinstance(view, CardView)
    return view


@pytest.mark.parametrize("at", range(len(LESSONS)), ids=NAMES)
def test_every_step_says_what_the_author_says(at: int) -> None:
    _, lesson = LESSONS[at]
    view = card(at)
    assert [step.does for step in view.steps] == [step.does for step in lesson.steps]
    for shown, step in zip(view.steps, lesson.steps, strict=True):
        assert shown.task == step.task
        assert (shown.say is None) == (step.say is None)
        if step.phase != "look and talk":
            assert shown.look_for == step.look_for
            asked = [question_said(question, lesson) for question in step.ask[:1]]
            assert [one.question for one in shown.questions] == asked
    assert [step.after for step in view.steps][:-1] == [step.does for step in lesson.steps][1:]
    assert view.steps[-1].after == "The end of the lesson"


@pytest.mark.parametrize("at", range(len(LESSONS)), ids=NAMES)
def test_the_last_looking_and_talking_has_the_closing_questions(at: int) -> None:
    _, lesson = LESSONS[at]
    talk = lesson.look_and_talk
    assert talk is not None
    (*_, looking) = [
        shown
        for shown, step in zip(card(at).steps, lesson.steps, strict=True)
        if step.phase == "look and talk"
    ]
    assert [one.question for one in looking.questions] == [q.question for q in talk.questions]
    assert looking.talk is not None
    assert talk.at in looking.talk


@pytest.mark.parametrize("at", range(len(LESSONS)), ids=NAMES)
def test_every_line_for_trouble_is_there(at: int) -> None:
    _, lesson = LESSONS[at]
    told = [line.words for line in card(at).trouble]
    assert len(told) == len(lesson.trouble)
    for words in lesson.trouble.values():
        assert [line for line in told if line.startswith(words)], words
    assert card(at).short_of_time == lesson.trouble.get("short_of_time")


def test_what_can_wait_is_what_the_author_says() -> None:
    for at, (_, lesson) in enumerate(LESSONS):
        assert [s.can_wait for s in card(at).steps] == [s.can_wait for s in lesson.steps]
    assert any(step.can_wait for at in range(len(LESSONS)) for step in card(at).steps)


def test_who_has_the_card_alone_has_the_checks_and_both_starts() -> None:
    for at, (unit, lesson) in enumerate(LESSONS):
        view = card(at)
        always = view.safety[len(lesson.safety) : -1]
        assert (*lesson.safety, *always) == view.safety[:-1]
        assert always in ((), (ROOM_BESIDE_CHAIRS,))
        assert view.safety[-1].startswith("Every time: floor clear and dry")
        before = [one for one in unit.lessons if one.number == lesson.number - 1]
        left = [one.look_and_talk.next for one in before if one.look_and_talk]
        starts = [one.not_yet[1:] for one in left if one]
        assert ([view.last_time.not_yet[1:].rstrip(".")] if view.last_time else []) == [
            start.rstrip(".") for start in starts
        ]


def test_a_lesson_without_looking_and_talking_has_a_card_too() -> None:
    unit, lesson = LESSONS[0]
    silent = replace(lesson, look_and_talk=None)
    view = card_page(real_bank(), replace(unit, lessons=(silent,)), silent).context
    assert isinstance(view, CardView)
    assert view.talk is None


def test_no_note_of_the_author_is_missing() -> None:
    """Each stands in its step, or at the start where it is about none."""
    for at, (unit, lesson) in enumerate(LESSONS):
        view = card(at)
        told = " ".join([view.notes, *(step.help.notes for step in view.steps)])
        for piece in notes_read(lesson.notes):
            if isinstance(piece, Paragraph):
                opening = str(notes_html(piece.text, 3)).split("<p>")[-1].split("</p>")[0][:40]
                assert opening in told, (unit.slug, lesson.number, opening)
