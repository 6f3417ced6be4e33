"""Nobody is lifted, carried or pulled, and no weight goes on a neck, a head, a back or a knee.

Pupils are not trained to bear one another, and bones that still grow are soft. Nor does anybody
drop on to knees, hands or tail bone, land stiff, force the splits, race to touch a wall, go with
eyes shut or over others, or dance in socks alone: a class dance has other ways to say it. What is
only imagined, as a rope that is not there, is free to all.

Bad:
    task: Three of you lift the fourth and carry her across.
Good:
    task: Show the lift with your arms, with an armful of air between you.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.never import NEVER, kind_of, never
from build_tools.views.written.unit_text import DOING, Found, unit_text

GRADE: Grade = "error"
READS = "en"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 8.26: avoid stress on knees and neck, lifting"
    " and supporting only with safe technique; the rest: common practice, no source"
)
_IN_UNIT = frozenset(
    {"idea", "rules", "start", "how", "does", "if_not", "as", "option", "place"}
    | {"skill", "catch_up", "wear", "notes"}
)
_IN_LESSON = DOING | {"easier", "safety", "notes", "classroom_first", "will_not_join", "finished"}
_KINDS = _IN_UNIT | _IN_LESSON


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field that asks for what is never asked of pupils."""
    for found in unit_text(unit).saying(NEVER, _KINDS):
        if not _asks(found):
            continue
        said = never(found.field.text)
        if said is None:
            continue
        yield Finding(
            found.file,
            found.path,
            f'`{found.field.kind}` seems to ask for {kind_of(said)} ("{said.text}"), which the '
            "bank never asks of pupils",
            "say it another way: side by side, in the air, or sinking with control, on bent knees; "
            "if that is not what you mean, say whose arms or what thing it is, such as: pull your "
            "own arms in",
        )


def _asks(found: Found) -> bool:
    one = found.field
    if found.document:
        return one.kind in _IN_LESSON
    return one.kind in _IN_UNIT and one.path[:1] != ("stimulus",)
