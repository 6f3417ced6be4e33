"""In the lesson that teaches a device, no step before calls it by its name.

"Float with a change of speed" tells pupils nothing while they have not met the words. Say what to
do, and give it its name where it is taught.

Bad:
    step 3: say: Dance a canon.
    step 4: teaches: [canon]
Good:
    step 4: say: Each starts four counts after the last. That is a canon.
    teaches: [canon]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import steps_in_order
from build_tools.views.words.devices_said import first_taught, says

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("lesson-numbers-broken",)

_FIELDS = ("say", "task")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each taught device at the first step that names it too soon."""
    waiting = dict(first_taught(unit))
    for place, lesson, step in steps_in_order(unit):
        early = [
            w for w, later in waiting.items() if place < later and later.lesson == place.lesson
        ]
        for word in early:
            field = next((f for f in _FIELDS if says(word, getattr(step, f) or "")), None)
            if field is None:
                continue
            yield Finding(
                lesson.file,
                ("steps", place.step, field),
                f"`{word}` is said in {place}, but it is taught only in {waiting.pop(word)}",
                f"say in plain words what to do, or teach {word} here",
            )
