"""A transition leaves time for the way that it asks for.

Across a hall it is some ten metres, and a class at a light run needs four seconds for them. In two
counts nobody gets there, so that the next section starts in the wrong places or with a rush.

Bad:
    counts: 2, how: Run to the far wall and turn
Good:
    counts: 8, how: Run to the far wall and turn
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Transition
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.crossing import far, steps

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source: ten metres at two and a half metres a second"
SECONDS_ACROSS = 4
"""The least that a class needs to cross a hall."""
STEPS_A_COUNT = 2
"""The most steps that fit one count."""
_USUAL_TEMPO = 120


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each transition with counts that are too few for its way."""
    for n, transition in enumerate(unit.dance.transitions):
        if transition.counts is None or not (too_fast := _too_fast(unit.dance, transition)):
            continue
        yield Finding(
            unit.file,
            ("transitions", n, "how"),
            too_fast,
            "give it more counts, or a shorter way, such as: turn where you are",
        )


def _too_fast(dance: Dance, transition: Transition) -> str | None:
    counts = transition.counts
    assert counts is not None
    long = seconds(counts, dance.tempo or _USUAL_TEMPO)
    said = far(transition.how)
    if said and long < SECONDS_ACROSS:
        return (
            f'`how` leaves {counts} counts, {float(long):.1f} seconds, for "{said.text}", and a '
            f"class needs about {SECONDS_ACROSS} seconds to cross a hall"
        )
    asked = steps(transition.how)
    if asked > counts * STEPS_A_COUNT:
        return f"{asked} steps in {counts} counts are more than {STEPS_A_COUNT} to a count"
    return None
