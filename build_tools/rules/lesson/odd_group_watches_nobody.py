"""Where groups watch one another, it is said what a group over does.

"Watch the next row" needs an even number of rows. Of the classes from 24 to 36 about half make an
odd one, and then a row dances for nobody, or watches nobody. A line about the one over, in the
step or in the notes, keeps it in: it joins the row behind, or three take turns.

Bad:
    grouping: fours, task: Watch the next four, then swap.
Good:
    grouping: fours, task: Watch the next four, then swap. A four over joins two others.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import groups
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_CLASSES = range(24, 37)
_SIZES = {"pairs": 2, "threes": 3, "fours": 4, "fives": 5, "sixes": 6}
_LISTS = {"group": "pair group row three four five six team"}
_WATCH_IN_TWOS = Saying(
    """
    watch|watches ~2 next|other|another|neighbouring ~1 @group
    dance|show|perform ~4 for|to ~2 next|other|another ~1 @group
    sit|face|stand|turn ~3 next|opposite|another|other ~1 @group
    pair|join up with ~2 @group
    find ~2 @group ~1 to watch
    two @group together
    first ~2 dances|watches|shows ~~4 second|other
    dance|show|perform ~3 for|to each-other|them
    each|one|first @group ~2 watch|watches|shows ~3 next|other|another|second
    @group ~1 watches|watch ~2 next|other|another|second
    """,
    _LISTS,
)
_ONE_OVER = Saying(
    """
    @group ~2 over|left|spare|extra|odd
    =odd|spare|extra|left-over|leftover ~2 @group
    odd number of ~2 @group
    @group ~2 nobody|no-one|alone
    @group ~3 on its own
    @group without ~1 nobody|no-one|partner|audience|another
    one ?left over !two|three|four|five|six
    one @group ~1 =left
    fifth|seventh|ninth ~2 watch|watches|join|joins|dance|dances
    if|where|with ~4 three|odd ~2 @group|rows|groups
    three|third @group ~3 take|takes|watch|watches|join|joins|round
    """,
    _LISTS,
)
_NOT_IN_TWOS = Saying(
    """
    come|comes ~3 even|evenly|twos|pairs
    @group =left
    """,
    _LISTS,
)
"""What is denied: the fours don't come out in twos; no four left for you."""
_FIELDS = ("into", "task", "say")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first step in which groups watch by twos, if nobody says more."""
    notes = (unit.notes, *(lesson.notes for lesson in unit.lessons))
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            size = _SIZES.get(step.grouping)
            said = _watching(step) if size else None
            if size is None or said is None:
                continue
            own = (*(getattr(step, f) for f in _FIELDS), step.you, step.easier)
            if _says_of_one_over(*own, *notes):
                return
            odd = [many for many in _CLASSES if len(groups(many, size)) % 2]
            example = min(odd, key=lambda many: abs(many - 28))
            field, text = said
            yield Finding(
                lesson.file,
                ("steps", n, field),
                f'in step {n + 1} {step.grouping} watch by twos ("{text}"), but a class of '
                f"{example} makes {len(groups(example, size))} of them, and {len(odd)} of the "
                f"{len(_CLASSES)} classes from 24 to 36 an odd number: one has nobody to watch it",
                "say what a group over does, such as: a four over joins the next two",
            )
            return


def _says_of_one_over(*texts: str | None) -> bool:
    return any(_ONE_OVER.said(text) or _NOT_IN_TWOS.denied(text) for text in texts)


def _watching(step: Step) -> tuple[str, str] | None:
    for field in _FIELDS:
        said = _WATCH_IN_TWOS.said(getattr(step, field))
        if said is not None:
            return field, said.text
    return None
