"""Every pupil gets a go at every role, and one who was away can find out which is theirs.

If one pupil leads and the rest always follow, the rest never learn to lead. A line such as "swap"
or "a new leader each time" is enough, in the step that has the role. Where a dance has roles, each
lesson after the first tells someone who was away what has been made so far.

Bad:
    task: The leader makes a shape and the others copy.
Good:
    task: The leader makes a shape and the others copy. A new leader each time.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Passage
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.roles import LEADING, PASSED_ON, TWO_ROLES
from build_tools.sentences.sayings import Saying
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)

_DEEDS = ("explore", "make", "develop", "join", "rehearse", "show")


_PLAYS = Saying("drummer|conductor|player")
"""Where pupils play for the dance, somebody does so all through."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each role that is never passed on, and where an absentee is lost."""
    yield from _single_roles(unit)
    roles = [
        (letter, n, passage)
        for letter, section in unit.dance.sections.items()
        for n, passage in enumerate(section.danced)
        if _two_roles(passage)
    ]
    if not roles:
        return
    for letter, n, passage in roles:
        who = passage.who or listed(passage.roles)
        if not _swapped(unit, letter, passage, [other for _, _, other in roles]):
            yield Finding(
                unit.file,
                ("sections", letter, "danced", n),
                f"in section {letter}, {len(passage.what)} parts dance different things "
                f"({who}), and they never swap",
                "dance it again the other way round, write `swap: true`, or say `swap` in a step",
            )
    yield from _absentee(unit)


def _single_roles(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first step of each lesson in which a role stays with one pupil."""
    players = unit.dance.sound.kind == "pupils live"
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            said = LEADING.said(step.task) if step.phase in _DEEDS else None
            if said is None or (players and _PLAYS.said(said.text)):
                continue
            texts = (step.into, step.say, step.task, step.you, step.look_for)
            if PASSED_ON.in_any((*texts, step.easier, step.harder)):
                continue
            yield Finding(
                lesson.file,
                ("steps", index, "task"),
                f'step {index + 1} gives a part to some ("{said.text}"), and nothing in it says '
                "that the part is passed on",
                "add to the task: swap, or somebody new each time",
            )
            break


def _two_roles(passage: Passage) -> bool:
    """Whether named sides of a passage do different things."""
    return (
        passage.fit in ("side by side", "question and answer")
        and len(set(passage.what)) > 1
        and bool(passage.roles or TWO_ROLES.mentioned(passage.who))
    )


def _swapped(unit: Unit, letter: str, passage: Passage, all_: list[Passage]) -> bool:
    """Whether the passage comes again the other way round, or says that its parts swap."""
    if passage.swap:
        return True
    if any(p is not passage and set(p.what) == set(passage.what) for p in all_):
        return True
    section = unit.dance.sections[letter]
    texts = [passage.who or "", section.idea, *section.improvised_rules]
    texts += [
        " ".join(text for text in (step.say, step.task, step.you, step.into) if text)
        for lesson in unit.lessons
        for step in lesson.steps
        if step.phase in _DEEDS and letter in (*step.makes, *step.dances, *step.joins)
    ]
    return PASSED_ON.in_any(texts)


def _absentee(unit: Unit) -> Iterator[Finding]:
    for lesson in unit.lessons[1:]:
        if lesson.story_so_far is None and lesson.never_did_last is None:
            yield Finding(
                lesson.file,
                ("lesson",),
                f"the dance has roles, but lesson {lesson.number} has neither `story_so_far` nor "
                "`never_did_last` for a pupil who was away",
                "add `story_so_far` with a line on what was made and who does what",
            )
            return
