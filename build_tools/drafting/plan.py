"""The plan of a draft's dance: what is made in which lesson, and the dance that comes of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil

from build_tools.drafting.asked import Asked
from build_tools.movement.counts import seconds
from build_tools.views.words.open_places import MARK

Fields = dict[str, object]

TEMPO = 112
MOTIF_COUNTS = 8
JOIN_COUNTS = 8
_FEW_IMPROVISED = 2


@dataclass(frozen=True, slots=True)
class Device:
    """One way to change a motif: its name, its fields, what is said, what it means, its counts."""

    name: str
    fields: Mapping[str, object]
    say: str
    plain: str
    counts: int = MOTIF_COUNTS


DEVICES = (
    Device(
        "change of level",
        {"only": [3], "level": "low"},
        "Keep the moves. Make the third one low. That is a change of level.",
        "the same moves, higher or lower",
    ),
    Device(
        "change of speed",
        {"counts": [4, 4, 4, 4]},
        "Keep the moves. Take four counts for each. That is a change of speed.",
        "the same moves, slower or faster",
        16,
    ),
    Device(
        "change of direction",
        {"only": [1], "direction": "sideways"},
        "Keep the moves. Go sideways on the first. That is a change of direction.",
        "the same moves, going another way",
    ),
    Device(
        "mirror",
        {},
        "Keep the moves. Swap right and left, as a mirror does.",
        "the same moves with left and right swapped",
    ),
    Device(
        "change of pathway",
        {"only": [1], "pathway": "curved"},
        "Keep the moves. Go on a curve this time. That is a change of pathway.",
        "the same moves, along another line on the floor",
    ),
    Device(
        "change of size",
        {"only": [3], "size": "big"},
        "Keep the moves. Make the third one big. That is a change of size.",
        "the same moves, bigger or smaller",
    ),
)
NEW_ORDER = Device(
    "change of order",
    {"choice": "own-order"},
    "Keep the moves. Choose a new order for them. That is a change of order.",
    "the same moves in a new order",
)
OWN_LEVEL = Device(
    "change of level",
    {"choice": "own-way"},
    "Keep the moves. Choose one to make higher or lower. That is a change of level.",
    "the same moves, higher or lower",
)


@dataclass(frozen=True, slots=True)
class Making:
    """What one lesson makes: a section, with a motif, a development, or both, or neither."""

    letter: str
    motif: str | None
    development: str | None
    of: str | None
    device: Device | None
    learned: bool = False
    """Whether the motif is given by the dance that is learned."""
    improvised: bool = False
    settles: str | None = None

    @property
    def part(self) -> str:
        """The section as it is named to pupils."""
        return f"part {self.letter}"


@dataclass(frozen=True, slots=True)
class Plan:
    """What each making lesson makes, and whether pupils decide the order."""

    makings: tuple[Making, ...]
    order: bool

    @property
    def letters(self) -> tuple[str, ...]:
        """The sections in the order of the form."""
        return tuple(making.letter for making in self.makings)


def plan(asked: Asked) -> Plan:
    """The plan for the asked pattern, number of lessons and years."""
    number = asked.making_lessons
    if asked.pattern == "one-theme":
        return Plan(_one_theme(number), False)
    if asked.pattern == "existing-dance":
        return Plan(_existing_dance(number), False)
    if asked.pattern == "within-rules":
        return Plan(_within_rules(number), False)
    order = asked.pattern == "pupils-order"
    if order and number == 1:
        return Plan((_section(0, NEW_ORDER, "own-order"),), False)
    return Plan(
        tuple(_section(n, DEVICES[n], "end-shape" if n == 0 else None) for n in range(number)),
        order,
    )


def _letter(number: int) -> str:
    return "ABCDEFGH"[number]


def _section(number: int, device: Device, settles: str | None) -> Making:
    low = _letter(number).lower()
    return Making(
        _letter(number), f"motif-{low}", f"motif-{low}-changed", f"motif-{low}", device,
        settles=settles,
    )  # fmt: skip


def _one_theme(number: int) -> tuple[Making, ...]:
    if number == 1:
        return (Making("A", "theme", "variation-1", "theme", DEVICES[0], settles="end-shape"),)
    theme = Making("A", "theme", None, None, None, settles="end-shape")
    return (
        theme,
        *(
            Making(_letter(n), None, f"variation-{n}", "theme", DEVICES[n - 1])
            for n in range(1, number)
        ),
    )


def _existing_dance(number: int) -> tuple[Making, ...]:
    if number == 1:
        return (
            Making("A", "figure-a", "own-figure", "figure-a", OWN_LEVEL, True, settles="own-way"),
        )
    figures = tuple(
        Making(_letter(n), f"figure-{_letter(n).lower()}", None, None, None, learned=True)
        for n in range(number - 1)
    )
    own = Making(
        _letter(number - 1), None, "own-figure", "figure-a", OWN_LEVEL, settles="own-way"
    )  # fmt: skip
    return (*figures, own)


def _within_rules(number: int) -> tuple[Making, ...]:
    first = Making(
        "A", "home", "home-changed", "home", DEVICES[0], improvised=number == 1, settles="end-shape"
    )  # fmt: skip
    games = (Making(_letter(n), None, None, None, None, improvised=True) for n in range(1, number))
    return (first, *games)


def still(hint: str) -> str:
    """An open place: the mark, then a hint of what to write."""
    return f"{MARK} {hint}"


def passages(asked: Asked, making: Making) -> list[Fields]:
    """Who dances what in a section that is not improvised."""
    small = asked.young or asked.making_lessons > 4
    motif, changed = making.motif, making.development
    if making.letter == "A" and motif:
        in_turn = _passage(motif, fit="canon in turn", who="one partner, then the other", parts=2)
        opening = [_passage(motif)]
        if changed:
            return [*opening, _passage(changed), in_turn]
        return [*opening, in_turn] if small else [*opening, in_turn, _passage(motif)]
    found = []
    if motif:
        found.append(_passage(motif, 1 if small and changed else 2))
    if changed:
        short = making.device is not None and making.device.counts == MOTIF_COUNTS
        found.append(_passage(changed, 2 if short and not (small and motif) else 1))
    return found


def _passage(
    name: str, times: int = 1, fit: str = "unison", who: str = "everyone", parts: int = 0
) -> Fields:
    passage: Fields = {"what": [name]}
    if times > 1:
        passage["times"] = times
    passage["as"] = fit
    if parts:
        passage["parts"] = parts
    passage["who"] = who
    return passage


def section_counts(asked: Asked, making: Making) -> int:
    """How many counts a section that is not improvised lasts: its passages laid end to end."""
    own = making.device.counts if making.device else MOTIF_COUNTS
    total = 0
    for passage in passages(asked, making):
        each = own if passage["what"] == [making.development] else MOTIF_COUNTS
        total += each * int(str(passage.get("times", 1))) * int(str(passage.get("parts", 1)))
    return total


def improvised_seconds(made: Plan) -> tuple[int, int]:
    """The least and the most seconds of each improvised section; many are shorter than few."""
    few = sum(m.improvised for m in made.makings) <= _FEW_IMPROVISED
    return (20, 30) if few else (15, 20)


def dance_counts(asked: Asked, made: Plan) -> int:
    """The counts of the whole dance, improvised sections left out."""
    sections = sum(section_counts(asked, m) for m in made.makings if not m.improvised)
    return sections + JOIN_COUNTS * (len(made.makings) - 1)


def dance_seconds(asked: Asked, made: Plan) -> int:
    """The most seconds the whole dance lasts."""
    improvised = improvised_seconds(made)[1] * sum(m.improvised for m in made.makings)
    return improvised + ceil(seconds(dance_counts(asked, made), TEMPO))
