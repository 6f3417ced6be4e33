"""What a lesson names as the next step is where the next lesson starts.

`next` is written so that what was seen today decides tomorrow's start. If the next lesson opens
with something else, the teacher of that lesson has nowhere to act on it; and nobody can start from
what is made only later in that lesson.

Bad:
    lesson 1: seen: start with a film of the sea
Good:
    lesson 1: seen: dance part A once
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from build_tools.model.dance import Motif
from build_tools.model.lesson import Lesson, Next, Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.going_back import one_move_alone, promised_otherwise, says_alone
from build_tools.sentences.telling import telling_words
from build_tools.views.dance.when_made import held, inside, names_in, progress
from build_tools.views.words.parts_said import NamedPart, first_made, parts_said

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Hattie and Timperley, The Power of Feedback, 2007: where to next is one of three questions"
)
NEEDS = ("next-step-missing", "unknown-name", "lesson-numbers-broken")
_THEN = re.compile(r"\bthen\b", re.IGNORECASE)
OPENING = 3
"""So many steps are the start of a lesson."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line of `next` that the next lesson does not take up."""
    for lesson, following in zip(unit.lessons, unit.lessons[1:], strict=False):
        talk = lesson.look_and_talk
        if talk is None or talk.next is None:
            continue
        lines = {"seen": talk.next.seen, "not_yet": talk.next.not_yet}
        # what comes after a "then" is on the way, and may be new
        named = {f: parts_said(unit, _THEN.split(line)[0]) for f, line in lines.items()}
        told = [
            Finding(lesson.file, ("look_and_talk", "next", field), message, help_)
            for field, parts in named.items()
            for message, help_ in _astray(unit, field, parts, following)
        ]
        if not told:
            told = list(_promised(unit, lesson, talk.next.seen, following))
        yield from told
        if not told and not any(named.values()) and not _goes_on(unit, talk.next, following):
            number = min(OPENING, len(following.steps))
            yield Finding(
                lesson.file,
                ("look_and_talk", "next"),
                f"`next` says where lesson {following.number} starts, but none of its first "
                f"{number} steps takes that up",
                f"say it in a recall step of lesson {following.number}: what to dance first, and "
                "what if it was not seen yet",
            )


def _astray(
    unit: Unit, field: str, named: tuple[NamedPart, ...], following: Lesson
) -> Iterator[tuple[str, str]]:
    """What is wrong with one line, and how to mend it."""
    number = following.number
    for one in named:
        made = first_made(unit, one.parts)
        if made is not None and made.lesson >= number:
            yield (
                f"`{field}` lets lesson {number} start from `{one.said}`, which is first made in "
                f"{made}",
                f"name what lesson {number - 1} has made, as pupils will dance it again",
            )
            return
    opening = following.steps[:OPENING]
    if any(step.phase == "recall" and not names_in(step) for step in opening):
        return
    danced, words = _danced(unit, opening), _words(opening)
    if named and not any(
        danced & held(unit.dance, one.parts) or telling_words((one.said,)) & words for one in named
    ):
        said = named[0].said
        yield (
            f"`{field}` lets lesson {number} start from `{said}`, but none of its first "
            f"{len(opening)} steps dances or names it",
            f"put a recall step with `{said}` at the start of lesson {number}, or name what it "
            "starts from",
        )


def _promised(unit: Unit, lesson: Lesson, seen: str, following: Lesson) -> Iterator[Finding]:
    """Yield a finding where `seen` lets the lesson start in a way in which it does not start."""
    opening = following.steps[:OPENING]
    told = [text for step in opening for text in _told(step)]
    said = promised_otherwise(seen, told)
    if said is None and not says_alone(told):
        said = next(
            (
                move
                for name, motif in unit.dance.motifs.items()
                if (move := one_move_alone(seen, (name,), _moves(motif)))
            ),
            None,
        )
    if said is not None:
        yield Finding(
            lesson.file,
            ("look_and_talk", "next", "seen"),
            f"`seen` lets lesson {following.number} start from `{said}`, but none of its first "
            f"{len(opening)} steps does",
            f"write in `seen` how lesson {following.number} starts, or start it so",
        )


def _moves(motif: Motif) -> tuple[str, ...]:
    return tuple(action.word for action in motif.actions if action.word)


def _told(step: Step) -> Iterator[str]:
    """What the step says of itself: its words, its grouping, and whether it makes or shows."""
    yield from (step.does, step.task, f"in {step.grouping}")
    yield from (text for text in (step.into, step.say) if text)
    yield from (question.question for question in step.ask)
    if step.makes:
        yield "make a new motif"
    if step.shows or step.phase == "show":
        yield "show it to the others"


def _goes_on(unit: Unit, next_: Next, following: Lesson) -> bool:
    """Whether the opening dances something earlier, or has a telling word of `next`."""
    opening = following.steps[:OPENING]
    if any(step.phase == "recall" and not names_in(step) for step in opening):
        return True
    ways = progress(unit)
    for name in inside(unit.dance, (n for s in opening for n in names_in(s))):
        if any(place.lesson < following.number for place in ways[name].made[:1]):
            return True
    return not telling_words((next_.seen, next_.not_yet)).isdisjoint(_words(opening))


def _danced(unit: Unit, steps: Iterable[Step]) -> frozenset[str]:
    return held(unit.dance, (part for step in steps for part in names_in(step)))


def _words(steps: Iterable[Step]) -> frozenset[str]:
    return telling_words(
        text
        for step in steps
        for text in (step.does, step.say, step.task, step.you, *(one.question for one in step.ask))
    )
