"""What is heard is said wherever the sound changes.

A drum that is said to stop, and goes on, is danced to. The counts, the player and the saved sound
can only play what is written: where a section has a sound of its own that nobody counts, or the
class plays it, or one sound gives way to another between two sections, somebody has to say what is
heard and for how long. Until then nothing is played there.

Bad:
    A: {counts: 32, sound: {kind: pupils live, what: Knees are patted,
        follows: dancers follow the sound}, …}
Good:
    A: {counts: 32, sound: {kind: pupils live, what: Knees are patted,
        follows: dancers follow the sound}, heard: [{counts: 32, sound: claps, by: class}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.joins import may_follow
from build_tools.views.dance.timeline import join_sounding, section_sounding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
NEEDS = ("unknown-name", "heard-does-not-fill")
SOURCE = "common practice, no source"

_SAYS_HEARD = 2
"""The version of the format from which a unit can say what is heard."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding for all places where nobody knows what is heard."""
    if unit.format < _SAYS_HEARD:
        return
    places = dict(_unknown(unit.dance))
    if places:
        where = tuple(places)
        yield Finding(
            unit.file,
            where[0],
            f"no `heard` says what sounds {listed(tuple(dict.fromkeys(places.values())))}, where "
            "the sound changes or is not counted",
            "write `heard:` there, and below it a line for each piece, set in, with a hyphen: "
            "`- sound: beat` if that sounds all the time; of several, each with its `counts: 8` or "
            "`seconds: 6` on the line below",
        )


def _unknown(dance: Dance) -> Iterator[tuple[FieldPath, str]]:
    """Each place where what is heard is not known, by its field, and how it is called."""
    for letter, section in dance.sections.items():
        if letter in dance.form and not section_sounding(dance, section).known:
            yield ("sections", letter), f"in section {letter}"
    for first, second in may_follow(dance):
        join = transition_between(dance, first, second)
        if join is None:
            continue
        before, after = dance.sections[first], dance.sections[second]
        if not join_sounding(dance, before, join, after).known:
            place: FieldPath = ("transitions", dance.transitions.index(join))
            yield place, f"from {join.start} to {join.end}"
