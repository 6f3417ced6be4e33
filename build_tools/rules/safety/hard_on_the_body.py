"""Kneeling, dropping to the floor and many jumps in a row come with a softer way or a limit.

A hall floor is hard. Knees, wrists and shins pay for what a drawing of the dance does not show:
the twentieth jump, or the whole class going down on its knees at once. The softer way stands in the
step that asks for it; for the jumps that a section adds up to, a lesson's `safety` may say it.
Where pupils order moves that are then built up, a jump that comes first is danced in every round:
the worst order counts.

Bad:
    task: Jump thirty times like popping corn.
Good:
    task: Jump eight times like popping corn. Rest. A rise on the toes is as good.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from build_tools.model.dance import Dance, Passage
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.hard_work import (
    EASED_JUMPS,
    MANY_JUMPS,
    ON_KNEES,
    eased,
    many_jumps,
    softer,
)
from build_tools.sentences.sayings import Saying
from build_tools.views.written.hazards import (
    Hazard,
    actions_by_name,
    hazards,
    of_step,
    text_at,
    written_actions,
)
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 8.26: avoid stress on knees; 7.27: impact, "
    "repetition and the floor's resilience"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")
_MANY_MORE = 2
"""Jumps that an order adds from which on it is told. Common practice, no source."""
_ORDER_EASED = Saying(
    """
    rise|rises ~2 toes
    hard ~1 floor
    put|puts|place ~3 last|third|later|end
    """
)
"""What makes an order with the jump first no load."""
MOST_JUMPS = 16
"""Jumps in one section that need no word about few, low or rest. Common practice, no source."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for knees, for jumps over and over in a step, and for jumps in a section."""
    yield from _first_in_each_lesson(
        unit,
        hazards(unit, ON_KNEES),
        lambda own, beside: any(softer(one) for one in (own, *beside)),
        "no softer way",
        "offer one: slowly, on a mat, or standing",
    )
    yield from _first_in_each_lesson(
        unit,
        hazards(unit, MANY_JUMPS, many_jumps),
        eased,
        "no rest and no limit",
        "set a limit or a rest: eight, then rest; or rise on the toes",
    )
    if any("jump" in action.kinds for action in written_actions(unit.dance)):
        yield from _sections(unit)


def _first_in_each_lesson(
    unit: Unit,
    found: Iterator[Hazard],
    told: Callable[[str, tuple[str, ...]], bool],
    without: str,
    help_: str,
) -> Iterator[Finding]:
    done: set[int] = set()
    for hazard in found:
        own = text_at(unit, hazard)
        beside = tuple(text for text in of_step(unit, hazard) if text != own)
        if hazard.lesson in done or told(own, beside):
            continue
        done.add(hazard.lesson)
        yield Finding(
            hazard.file,
            hazard.path,
            f"step {hazard.step + 1} has {hazard.said}, and says {without}",
            help_,
        )


def _sections(unit: Unit) -> Iterator[Finding]:
    for letter, section in unit.dance.sections.items():
        jumps = sum(_jumps(unit, passage) for passage in section.danced)
        if jumps <= MOST_JUMPS:
            yield from _in_the_worst_order(unit, letter, jumps)
            continue
        if any(unit_text(unit).saying(EASED_JUMPS)):
            continue
        yield Finding(
            unit.file,
            ("sections", letter, "danced"),
            f"section {letter} has {jumps} jumps for each dancer, and no line about jumps says "
            "few, low or rest",
            "swap some for a rise on the toes, or say in a lesson's `safety` to jump low and rest",
        )


def _in_the_worst_order(unit: Unit, letter: str, jumps: int) -> Iterator[Finding]:
    """Yield a finding where an order that pupils may choose adds many jumps to a section."""
    passages = unit.dance.sections[letter].danced
    added = [
        (_added(unit.dance, what), n, what)
        for n, passage in enumerate(passages)
        for what in passage.what
    ]
    more, place, what = max(added, default=(0, 0, ""))
    most = jumps + sum(number for number, _, _ in added)
    if more < _MANY_MORE or _order_eased(unit):
        return
    yield Finding(
        unit.file,
        ("sections", letter, "danced", place),
        f"section {letter} has {jumps} jumps for each dancer, but {most} in the order of `{what}` "
        "that puts the jump first, and no line says what to do on a hard floor",
        "say in a lesson's `safety` to put the jump last on a hard floor, or to rise on the toes",
    )


def _order_eased(unit: Unit) -> bool:
    """Whether a lesson says what to do with the jumps, whatever the order."""
    return any(found.document for found in unit_text(unit).saying(_ORDER_EASED))


def _added(dance: Dance, what: str) -> int:
    """Jumps that a thing has more where pupils put them first and it is then built up."""
    built = None
    name = what
    while (one := dance.developments.get(name)) is not None:
        if one.device == "accumulation":
            built = one
        if built is not None and one.device == "change of order" and one.choice is not None:
            actions = actions_of(dance, built.of)
            often = sum("jump" in action.kinds for action in actions)
            usual = sum("jump" in action.kinds for action in actions_of(dance, built.name))
            return sum(len(actions) - n for n in range(often)) - usual
        name = one.of
    return 0


def _jumps(unit: Unit, passage: Passage) -> int:
    actions = actions_by_name(unit.dance)
    each = [sum("jump" in action.kinds for action in actions[name]) for name in passage.what]
    apart = passage.fit in ("side by side", "question and answer")
    return passage.times * (max(each) if apart else sum(each))
