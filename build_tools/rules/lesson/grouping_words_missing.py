"""When pupils go into groups, the teacher has the words that get them there.

"Get into fours" is where lessons are lost: friends first, one pupil left, three minutes gone. A
line ready to say, such as "two pairs make a four", does it in seconds: it tells who goes with whom.
It stands in `into`, `say` or `task` of the step itself. A pair for a task that each could do alone
needs no words, nor does a group that was there earlier in the lesson; "find your four" is enough
where fours were made before.

Bad:
    after pairs, grouping: fours
Good:
    after pairs, grouping: fours, into: Two pairs make a four.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.getting_together import NEEDS_A_PARTNER, OWN_GROUP, WHO_WITH_WHOM

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)

_GROUPS = ("pairs", "threes", "fours", "fives", "sixes")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each new grouping that comes without words."""
    known: set[str] = set()
    for lesson in unit.lessons:
        for index in _new_groupings(lesson):
            step = lesson.steps[index]
            if _needs_no_words(step) or _words_for(step, step.grouping in known):
                continue
            before = lesson.steps[index - 1].grouping if index else "the classroom"
            yield Finding(
                lesson.file,
                ("steps", index, "into" if step.into else "grouping"),
                f"step {index + 1} goes from {before} to {step.grouping}, but "
                + (
                    "its `into` does not say who goes with whom"
                    if step.into
                    else "there is no `into` to say how"
                ),
                _help(step),
            )
        known.update(step.grouping for step in lesson.steps)


def _new_groupings(lesson: Lesson) -> Iterator[int]:
    """The steps that bring pupils into groups they were not in before in the lesson."""
    been: set[str] = set()
    for index, step in enumerate(lesson.steps):
        if step.grouping in _GROUPS and step.grouping not in been:
            been.add(step.grouping)
            yield index


def _needs_no_words(step: Step) -> bool:
    if step.grouping != "pairs" or step.into:
        return False
    talks = step.phase == "look and talk"
    return talks or not NEEDS_A_PARTNER.in_any((step.say, step.task))


def _words_for(step: Step, known: bool) -> bool:
    """Whether the step says who goes with whom, or names a group that pupils know by now."""
    texts = (step.into, step.say, step.task, step.you)
    return WHO_WITH_WHOM.in_any(texts) or (known and OWN_GROUP.in_any(texts))


def _help(step: Step) -> str:
    words = {
        "pairs": "Turn to the nearest person. One over makes a three.",
        "fours": "Two pairs make a four. A pair over joins a four.",
    }.get(step.grouping, f"Get into {step.grouping} with those nearest to you.")
    return f"add the words to say, such as `into: {words}`"
