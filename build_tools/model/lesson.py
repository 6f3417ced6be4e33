"""One lesson and its steps. All lengths are in minutes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.work import Work


@dataclass(frozen=True, slots=True)
class Question:
    """A question with answers pupils may give; `looks_back_to` numbers an earlier lesson."""

    question: str
    answers: tuple[str, ...]
    looks_back_to: int | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """One step of a lesson. `makes`, `dances` and `shows` hold names and section letters."""

    phase: str
    does: str
    minutes: int
    least: int
    grouping: str
    into: str | None
    say: str | None
    task: str
    ask: tuple[Question, ...]
    look_for: str | None
    easier: str | None
    harder: str | None
    counts: Fraction | None
    intensity: str | None
    makes: tuple[str, ...]
    develops: tuple[str, ...]
    joins: tuple[str, ...]
    dances: tuple[str, ...]
    shows: tuple[str, ...]
    settles: tuple[str, ...]
    teaches: tuple[str, ...]
    can_wait: bool
    """Whether it may be left out when time is short."""
    place: str | None = None
    """Where they stand for it."""
    facing: str | None = None
    """Which way they face for it."""
    you: str | None = None
    """What the teacher does while they move."""


@dataclass(frozen=True, slots=True)
class Next:
    """From what was seen: where the next lesson starts."""

    seen: str
    not_yet: str


@dataclass(frozen=True, slots=True)
class LookAndTalk:
    """Looking at dance and talking about it."""

    who: str
    at: str
    looking_for: str
    end_points: tuple[str, ...]
    questions: tuple[Question, ...]
    next: Next | None


@dataclass(frozen=True, slots=True)
class Lesson:
    """One lesson. `file` is the document it was written in; `notes` is its Markdown."""

    file: str
    number: int
    title: str
    focus: str
    pupils_make: str
    minutes: int
    collect: tuple[str, ...]
    classroom_first: tuple[str, ...]
    story_so_far: str | None
    never_did_last: str | None
    pictures: tuple[Work, ...]
    """What this lesson shows besides what the dance starts from."""
    steps: tuple[Step, ...]
    look_and_talk: LookAndTalk | None
    change: Mapping[str, str]
    """Under cue, partners, room, task and things."""
    trouble: Mapping[str, str]
    """The field `if`: under stuck, finished, loud, silly, will_not_join and the rest."""
    not_dancing: str
    safety: tuple[str, ...]
    """What to check and say: its own lines, then those that the unit says for every lesson."""
    words: Mapping[str, str]
    notes: str
    standing: int = 0
    """How many of the lines on safety, the last, are the unit's."""
