"""Those who look are there in the step in which there is something to look at.

`who: another group` needs a step in which pupils are in groups, and half the class can watch only
where the other half dances. Looking at yourself, or all together, fits anywhere.

A question about "the half you watched" wants a half that watched; and where half shows to half,
those who watch look at them, and not each at their own dancing.

Bad:
    look_and_talk: {who: half the class, …}
    every step: grouping: fours
Good:
    look_and_talk: {who: half the class, …}
    a step: grouping: half class, shows: [wave]
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.words.plain_words import listed
from build_tools.views.written.questions import asked

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_FITS: Mapping[str, tuple[str, ...]] = {
    "partner": ("pairs", "threes", "half class"),
    "another pair": ("pairs", "threes", "fours", "half class"),
    "another group": ("threes", "fours", "fives", "sixes", "half class"),
    "half the class": ("half class",),
}
"""For those who look, the groupings in which they can."""
_LOOKS = ("show", "look and talk")


_WATCHED = Saying(
    """
    half|pair|group|row|four|partner|dancer ~1 you ~1 watched|saw|looked
    other half|group|pair|row
    first|second|two|both @groups ~3 or|and|look|looked|was|were|danced|kept
    two|both @groups
    =others|they|them|partner ~1 danced|dancing|perform|performed
    see|watch|notice ~2 partner|=them|=others|dancers
    while|as|when ~1 you ~2 =watching|=watched
    where you =sat|=watched
    somebody|someone|anybody|anyone ~1 whose
    whose ~3 was|were|looked
    you ~3 audience|watchers
    """,
    {"groups": "half group pair row four"},
)
"""A question to those who watched others."""


def _watched_nobody(lesson: Lesson) -> Iterator[Finding]:
    """Yield a finding for each question about others, where all look at their own dancing."""
    for one in asked(lesson):
        if one.step is None and (said := _WATCHED.said(one.text)):
            yield Finding(
                lesson.file,
                one.path,
                f'the question is about others ("{said.text}"), but `who` looks at their own '
                "dancing",
                "ask what pupils noticed in their own dance, or let some watch",
            )


def _watchers_look_for_nothing(lesson: Lesson) -> Iterator[Finding]:
    """Yield a finding where half shows to half, and all are to look at their own dancing."""
    for number, step in enumerate(lesson.steps, start=1):
        if step.shows and step.grouping == "half class":
            yield Finding(
                lesson.file,
                ("look_and_talk", "who"),
                f"half the class shows in step {number}, but `who` is yourself: those who watch "
                "look for nothing",
                "write half the class, or let all dance at once",
            )
            return


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson with no step in which those who look could look."""
    for lesson in unit.lessons:
        talk = lesson.look_and_talk
        if talk is not None and talk.who == "yourself":
            yield from _watched_nobody(lesson)
            yield from _watchers_look_for_nothing(lesson)
        if talk is None or talk.who not in _FITS:
            continue
        steps = [s for s in lesson.steps if s.shows or s.dances or s.phase in _LOOKS]
        if not steps or any(step.grouping in _FITS[talk.who] for step in steps):
            continue
        groupings = listed(list(dict.fromkeys(f"`{step.grouping}`" for step in steps)))
        yield Finding(
            lesson.file,
            ("look_and_talk", "who"),
            f"`who` looks is {talk.who}, but where pupils dance, show and look the grouping is "
            f"{groupings}",
            "write who can look in that grouping, or change the grouping of the step",
        )
