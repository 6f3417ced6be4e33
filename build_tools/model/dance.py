"""The dance: sections, motifs, developments, transitions, choices."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Action:
    """One action of a motif. `counts` are counts of the beat the class claps."""

    kind: str
    """One of travel, turn, jump, gesture, stillness, transfer."""
    counts: Fraction
    word: str | None = None
    """The pupils' own word for it."""
    also: tuple[str, ...] = ()
    """Kinds of action done at the same moment."""
    level: str | None = None
    direction: str | None = None
    side: str | None = None
    facing: str | None = None
    pathway: str | None = None
    size: str | None = None
    body_part: str | None = None
    dynamics: tuple[str, ...] = ()
    step: str | None = None
    steps: Fraction | None = None
    in_all: Fraction | None = None
    """Of a travel: the kind of step, how many (else one a count), how many walking steps in all."""
    towards: str | None = None
    """partner, centre, or a side of the hall by any of its names."""
    turn_by: str | None = None
    """quarter, half, three quarters, whole, or there and back."""
    times: int = 1
    """How many jumps it is, one after another in its counts."""
    chosen: frozenset[str] = frozenset()
    """Which of body_part, size and dynamics pupils decide; what stands there is one of many."""
    theme: Action | None = None
    """Of a move that pupils change in a way of their own: the move as they had it before."""

    @property
    def goes_round(self) -> bool:
        """Whether it goes round the middle of its group, as a ring does.

        Side-stepping it looks in all the way. Forwards it looks where it goes, and says its side
        and how far round, since forwards alone would be in to the middle along a curve.
        """
        aside = self.direction == "sideways" or (self.step == "side-step" and not self.direction)
        said = self.side is not None and self.turn_by is not None and "turn" not in self.kinds
        along = aside or (self.direction == "forwards" and said)
        return along and self.pathway == "curved" and self.towards == "centre"

    @property
    def kinds(self) -> tuple[str, ...]:
        """Every kind of action in it, the main one first."""
        return (self.kind, *self.also)


@dataclass(frozen=True, slots=True)
class Motif:
    """A motif as it is first made."""

    name: str
    made_by: str
    """pupils, teacher, or teacher then pupils."""
    idea: str
    actions: tuple[Action, ...]


@dataclass(frozen=True, slots=True)
class Addition:
    """An action added after the action numbered `after`; 0 is the very start."""

    after: int
    action: Action


@dataclass(frozen=True, slots=True)
class Development:
    """A motif, or another development, changed by one device.

    Numbers of actions count from 1. A field is None, or empty, where its device does not use it
    or where pupils decide (`choice` then names the choice).
    """

    name: str
    of: str
    device: str
    only: tuple[int, ...] = ()
    choice: str | None = None
    times: int | None = None
    counts: tuple[Fraction, ...] = ()
    size: str | None = None
    level: str | None = None
    direction: str | None = None
    facing: str | None = None
    pathway: str | None = None
    dynamics: tuple[str, ...] = ()
    body_part: str | None = None
    order: tuple[int, ...] = ()
    replaced: int | None = None
    replacement: Action | None = None
    left_out: tuple[int, ...] = ()
    added: tuple[Addition, ...] = ()
    kept: tuple[int, int] | None = None
    joined_to: str | None = None
    formation: str | None = None
    dancers: str | None = None
    relationship: str | None = None


@dataclass(frozen=True, slots=True)
class Passage:
    """One stretch of a section: what is danced and how its parts fit in time."""

    what: tuple[str, ...]
    fit: str
    """unison, canon (in turn, together, to one ending), question and answer, side by side."""
    times: int = 1
    parts: int | None = None
    after: Fraction | None = None
    """In a canon: counts from one part's start to the next part's."""
    who: str | None = None
    roles: tuple[str, ...] = ()
    """The role of each part, in order; none where the unit does not say."""
    swap: bool = False
    """Whether it comes again with the parts changed over, until each has danced each thing."""
    others: str = "hold"
    """What those do who are not dancing: hold, watch, echo or frame."""
    towards: str | None = None
    """Where travel goes in it, where a move does not say."""


@dataclass(frozen=True, slots=True)
class Standing:
    """How the dancers stand at the start or end of a section. Distances are in steps."""

    formation: str
    facing: str
    place: str
    within: str | None = None
    """How the dancers of a group stand to one another: face to face, square, line …"""
    apart: Fraction | None = None
    """Steps between neighbours in a group, or between dancers who stand alone."""
    groups_apart: Fraction | None = None
    columns: int | None = None
    spot: str | None = None
    """where they are, first place or new place."""
    nobody_faces: str | None = None
    """Where they face different ways, the side of the hall that nobody faces."""
    larger_groups: str | None = None
    """At which end of the front or the back row groups stand that are larger than most."""
    free: tuple[tuple[str, Fraction], ...] = ()
    """Sides, and steps from that wall to the nearest: at the front exactly, elsewhere at least."""
    third: str | None = None
    """Where the third of a three stands among pairs: between or behind; None for beside."""
    clusters: int | None = None
    """In how many loose clusters they are who are scattered."""
    each_group_one_way: bool = False


@dataclass(frozen=True, slots=True)
class Groups:
    """The groups that dance a section: `size` dancers each, with places 1 to `size`."""

    size: int
    roles: Mapping[str, tuple[int, ...]]
    """The places that dance each role, by its name."""
    odd: tuple[tuple[int, ...], ...] = ()
    """For groups of other sizes, the place that each of their dancers dances, as they stand."""


@dataclass(frozen=True, slots=True)
class Heard:
    """One piece of what sounds: it lasts `counts`, or `seconds` where nothing is counted.

    `on` and `louder` number counts (or seconds) of the piece from 1, 3 1/2 being half way from the
    third to the fourth; empty `on` means all, empty `louder` the first of each phrase.
    """

    sound: str
    """beat, soft beat, roll, shaker, bell, claps, voice, recording or silence."""
    counts: Fraction | None = None
    seconds: int | None = None
    by: str | None = None
    on: tuple[Fraction, ...] = ()
    louder: tuple[Fraction, ...] = ()
    says: tuple[str, ...] = ()
    """What is said on each count; a hyphen where nothing is."""


@dataclass(frozen=True, slots=True)
class Sound:
    """One sound. `lasts` is a recording's length in seconds, `file` where it lies in the unit."""

    kind: str
    what: str
    follows: str
    lasts: int | None = None
    looped: bool = False
    file: str | None = None


@dataclass(frozen=True, slots=True)
class Seconds:
    """A length in seconds that may vary: the least and the most."""

    least: Fraction
    most: Fraction


@dataclass(frozen=True, slots=True)
class Section:
    """One section. It has `counts`, or `seconds` with the cue it `ends_on`."""

    letter: str
    idea: str
    counts: Fraction | None
    seconds: Seconds | None
    ends_on: str | None
    improvised_from: str | None
    """How an improvised section starts; None for counted and timed sections."""
    improvised_rules: tuple[str, ...]
    start: Standing
    end: Standing
    danced: tuple[Passage, ...]
    sound: Sound
    name: str | None = None
    """What the class calls it."""
    groups: Groups | None = None
    heard: tuple[Heard, ...] = ()
    """What sounds, piece after piece; empty where the unit does not say."""
    returns: str | None = None
    """The letter of the section that this one is, come back changed."""
    changes: tuple[str, ...] = ()
    """What is written of a changed return, by the names of its fields; the rest is the first's."""

    @property
    def kind(self) -> str:
        """counted, timed or improvised."""
        if self.counts is not None:
            return "counted"
        return "improvised" if self.improvised_from is not None else "timed"


@dataclass(frozen=True, slots=True)
class Transition:
    """How one section leads into the next. `start` and `end` are letters, or any."""

    start: str
    end: str
    kind: str
    """move, hold, overlap, cut or straight on."""
    counts: Fraction | None
    how: str
    cue: str
    heard: tuple[Heard, ...] = ()


@dataclass(frozen=True, slots=True)
class Choice:
    """Something pupils decide."""

    name: str
    what: str
    options: tuple[str, ...]
    by: str
    if_not: str


@dataclass(frozen=True, slots=True)
class EndingPart:
    """What some pupils do at the very end."""

    who: str
    does: str


@dataclass(frozen=True, slots=True, eq=False)
class Dance:
    """The class dance, equal only to itself; `tempo` is in beats a minute, `phrase` in counts."""

    form: tuple[str, ...]
    order_choice: str | None
    """The choice in which pupils decide the order of sections, if they do."""
    tempo: int | None
    phrase: int
    front: str
    sound: Sound
    sections: Mapping[str, Section]
    motifs: Mapping[str, Motif]
    developments: Mapping[str, Development]
    transitions: tuple[Transition, ...]
    choices: Mapping[str, Choice]
    ending: tuple[EndingPart, ...]
    sides: Mapping[str, str] = field(default_factory=dict)
    """The unit's own names for front, back, left and right."""
