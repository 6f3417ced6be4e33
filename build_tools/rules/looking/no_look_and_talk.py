"""Every lesson says what pupils look at in the dance and talk about.

Looking at one clear thing and talking about it is how pupils see what makes a dance good, and how
the teacher sees where to go next. It may take five minutes of its own or sit inside another step.

Bad:
    a lesson with no `look_and_talk`
Good:
    look_and_talk: {who: partner, at: the wave, looking_for: a slow sink, questions: …, next: …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import minutes_in_words

GRADE: Grade = "question"
SOURCE = "Smith-Autard, midway model: composing, performing and appreciating belong together"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson without `look_and_talk`."""
    for lesson in unit.lessons:
        if lesson.look_and_talk:
            continue
        step = next((n for n, s in enumerate(lesson.steps) if s.phase == "look and talk"), None)
        minutes = sum(s.minutes for s in lesson.steps if s.phase == "look and talk")
        yield Finding(
            lesson.file,
            ("lesson",) if step is None else ("steps", step),
            f"none of the {len(lesson.steps)} steps looks and talks, and there is no "
            "`look_and_talk`"
            if step is None
            else f"the lesson keeps {minutes_in_words(minutes)} for looking and talking, but "
            "there is no `look_and_talk` that says what to look at",
            "write `look_and_talk`: who looks, at what, for what, and what to ask",
        )
