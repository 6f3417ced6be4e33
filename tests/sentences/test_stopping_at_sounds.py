"""A game that stops at each sound is not stopped besides.

A Reception teacher read "Stop twice: name one thing that you saw" of a game that stops whenever the
bell goes down, and asked: stop what, and how?
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.views.lesson.running_minutes import run_in_words
from tests.support.sound_bank import real_unit

UNIT = real_unit()
STEP = replace(UNIT.lessons[0].steps[0], phase="explore", minutes=5, say=None, task="Try.", you="")
STOPS = [
    {"say": "While the bell rings, the leader walks and we copy. Between rings, be still."},
    {"task": "Go while the shaker sounds. When it stops, settle."},
    {"task": "Walk.", "you": "Roll for four seconds. Between rolls all are still."},
]
GOES_ON = [
    {"say": "In the silence, hold on.", "you": "Roll for four seconds; rest for two."},
    {"say": "While the bell rings, walk as you like."},
    {"say": "Someone in front holds your string. Be still when I show a word."},
    {"task": "Find a still shape while the others watch."},
]


@pytest.mark.parametrize("words", STOPS)
def test_what_was_seen_is_named_while_all_are_still(words: dict[str, str]) -> None:
    assert said(words) == (
        "Twice, while all are still, name one thing that you saw, and let everyone try that next."
    )


@pytest.mark.parametrize("words", GOES_ON)
def test_what_does_not_stop_by_itself_is_stopped(words: dict[str, str]) -> None:
    assert "Stop twice:" in said(words)


def said(words: dict[str, str]) -> str:
    step = replace(STEP, **words)  # type: ignore[arg-type]
    lesson = replace(UNIT.lessons[0], steps=(step,))
    told = run_in_words(UNIT.dance, lesson, 0)
    assert told is not None
    return told
