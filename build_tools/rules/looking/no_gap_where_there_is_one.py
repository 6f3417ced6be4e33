"""Where a look_for asks for no gap, the score has none.

"The beat runs along with no gap", but each dancer beats for two counts and rests for two before the
next begins: a class that does what the score says is told that it is wrong. Stillness at the end of
what goes from one dancer to the next is a gap; its counts are added up.

Bad:
    beat: {actions: [{gesture: 2, body_part: arms}, {stillness: 2}], …}
    look_for: The beat runs along with no gap.
Good:
    beat: {actions: [{gesture: 2, body_part: arms}, {stillness: 2}], …}
    look_for: Each beat starts two counts after the last one.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance, Passage
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of, total
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.when_made import names_in, steps_in_order
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_GAP = Saying(
    """
    gap
    @stop ~4 between|along|row|line|beat|them|dancer|passed
    @stop $
    ever|once ~1 @stop|still
    """,
    {"stop": "pause break wait stop halt rest =standing"},
)
"""What is denied: no gap."""
_UNBROKEN = Saying(
    """
    unbroken|seamless|seamlessly|continuous|continuously|non-stop
    flow|flows|run|runs on and on
    keep|keeps on|going|moving|flowing|=folding ~~6 end|last|finish|throughout
    """
)
_OF_A_BODY = Saying("gap ~4 finger|arm|hand|leg|shoulder|body|foot|knee|head|wall|floor")
"""A gap in space, and none in time."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that looks for no gap in something that has one."""
    dance = unit.dance
    for place, lesson, step in steps_in_order(unit):
        said = _GAP.denied(step.look_for) or _UNBROKEN.said(step.look_for)
        if said is None or _OF_A_BODY.mentioned(step.look_for):
            continue
        for passage in _in_turn(dance, step):
            still, whole = _stillness(dance, passage), _length(dance, passage)
            parts = passage.parts or 1
            if not still:
                continue
            yield Finding(
                lesson.file,
                ("steps", place.step, "look_for"),
                f'`look_for` asks for none ("{said.text}"), but `{" ".join(passage.what)}` goes '
                f"from one to the next and ends with {counts_in_words(still)} of stillness: "
                f"{figures(still)} of every {figures(whole)} counts are a gap, and each dancer "
                f"waits {figures(whole * (parts - 1))} of {figures(whole * parts)}",
                "leave the stillness out of what is passed on, or look for something else",
            )
            break


def _in_turn(dance: Dance, step: Step) -> Iterator[Passage]:
    """What the step dances one after another, from the sections or things that it names."""
    names = set(names_in(step))
    for letter, section in dance.sections.items():
        for passage in section.danced:
            if passage.fit == "canon in turn" and (letter in names or names & set(passage.what)):
                yield passage


def _stillness(dance: Dance, passage: Passage) -> Fraction:
    """Counts of stillness at the end of what one dancer does."""
    counts = Fraction(0)
    for action in reversed(actions_of(dance, passage.what[-1])):
        if action.kind != "stillness":
            break
        counts += action.counts
    return counts


def _length(dance: Dance, passage: Passage) -> Fraction:
    whole = sum((total(actions_of(dance, name)) for name in passage.what), Fraction(0))
    return whole * passage.times
