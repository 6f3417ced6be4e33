"""Lessons of every length and shape, made from the sound ones that there are; a number makes one.

Steps come from anywhere in a unit, texts from everything that the units say, cut and strung
together to any length that the schemas let through. Minutes, groups, ways of showing, years and
halls are drawn anew, so that sums are asked of lessons that nobody has written.
"""

from __future__ import annotations

import math
import random
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache

from build_tools.model.dance import Dance, Seconds
from build_tools.model.lesson import Lesson, LookAndTalk, Next, Question, Step
from build_tools.model.unit import SchoolYears, Unit
from build_tools.views.reading.lesson_text import text_by_field
from tests.sums.lessons import GROUPINGS
from tests.support.sound_bank import every_unit

LONGEST_LINE, LONGEST_YOU = 400, 200
"""Characters, by the schemas."""
SHORTEST, USUAL, LONGEST = 0.35, 1.0, 2.4
"""How long the texts of a lesson are beside those of the units, at the least and at the most."""
_YEARS = (
    SchoolYears("England", ("1", "2")),
    SchoolYears("England", ("3", "4")),
    SchoolYears("England", ("5", "6")),
    SchoolYears("England", ("6", "7")),
    SchoolYears("Scotland", ("P7",)),
    SchoolYears("Scotland", ("S1", "S2")),
    SchoolYears("Northern Ireland", ("8", "9")),
)
_HALLS = (
    "A clear hall, about {each} square metres for each pupil.",
    "A clear hall of {whole} square metres.",
    "A hall of {long} by {wide} metres.",
    "A clear hall.",
)
_SHOWN = (
    "Show one group at a time.",
    "Two groups at a time dance.",
    "Each pair shows it to the class.",
    "Half dance while half watch. Swap.",
    "Dance once for them; swap.",
)
_CHANGES = ("cue", "partners", "room", "task", "things")
_TROUBLES = ("stuck", "finished", "loud", "will_not_join", "short_of_time", "sound_fails")
_MORE_TROUBLES = ("silly", "lesson_lost")


@dataclass(frozen=True, slots=True)
class Made:
    """One made lesson and the unit that it stands in."""

    number: int
    unit: Unit
    lesson: Lesson


@cache
def _said() -> Mapping[str, tuple[str, ...]]:
    """Every text of every unit, by the field that it stands in."""
    found: dict[str, list[str]] = {}
    for unit in every_unit():
        for lesson in unit.lessons:
            for field in text_by_field(lesson):
                found.setdefault(field.kind, []).append(" ".join(field.text.split()))
            for word, plain in lesson.words.items():
                found.setdefault("word", []).append(word)
                found.setdefault("plain", []).append(plain)
    return {kind: tuple(texts) for kind, texts in found.items()}


def texts_of_units(*kinds: str) -> list[str]:
    """The texts of all the units for fields of these kinds."""
    return [text for kind in kinds for text in _said()[kind]]


class _Author:
    """Writes texts of any length, the same for the same number."""

    def __init__(self, chance: random.Random) -> None:
        self.chance = chance
        self.length = math.exp(chance.uniform(math.log(SHORTEST), math.log(LONGEST)))

    def line(self, kind: str, most: int = LONGEST_LINE) -> str:
        """A text for a field of this kind, shorter or longer than those of the units."""
        texts = _said()[kind]
        text = self.chance.choice(texts)
        wanted = max(1, round(len(text.split()) * self.length * self.chance.uniform(0.7, 1.4)))
        while len(text.split()) < wanted:
            text = f"{text.rstrip(' .')}. {self.chance.choice(texts)}"
        text = " ".join(text.split()[:wanted])[:most].strip(' ,;:“”"')
        return text or "Go"

    def lines(self, kind: str, least: int, most: int) -> tuple[str, ...]:
        return tuple(self.line(kind) for _ in range(self.chance.randint(least, most)))

    def maybe(self, kind: str, how_often: float = 0.75) -> str | None:
        return self.line(kind) if self.chance.random() < how_often else None

    def questions(self, least: int, most: int) -> tuple[Question, ...]:
        return tuple(
            Question(
                self.line("question"),
                self.lines("answers", 0, 3),
                self.chance.choice((None, None, 1)),
            )
            for _ in range(self.chance.randint(least, most))
        )


def made(number: int) -> Made:
    """The lesson of this number."""
    chance = random.Random(number)
    author = _Author(chance)
    unit = chance.choice(every_unit())
    place = chance.randrange(len(unit.lessons))
    lesson = _lesson(author, unit, unit.lessons[place])
    lessons = tuple(
        lesson if n == place else replace(other, look_and_talk=_looked(author, other.look_and_talk))
        for n, other in enumerate(unit.lessons)
    )
    whole = replace(
        unit,
        lessons=lessons,
        years=(chance.choice(_YEARS),),
        space=replace(unit.space, hall=_hall(chance)),
        dance=_dance(chance, unit.dance),
    )
    return Made(number, whole, lesson)


def _lesson(author: _Author, unit: Unit, lesson: Lesson) -> Lesson:
    chance = author.chance
    steps = _steps(author, unit)
    added = sum(step.minutes for step in steps)
    return replace(
        lesson,
        title=author.line("title", 50),
        focus=author.line("focus"),
        pupils_make=author.line("pupils_make", 200),
        minutes=chance.choice((added, added, added, added + 1, max(1, added - 3))),
        collect=author.lines("collect", 1, 5),
        classroom_first=author.lines("classroom_first", 1, 3) if chance.random() < 0.7 else (),
        story_so_far=author.maybe("story_so_far"),
        never_did_last=author.maybe("never_did_last"),
        steps=steps,
        look_and_talk=_looked(author, lesson.look_and_talk) if chance.random() < 0.9 else None,
        change=_named(author, chance.sample(_CHANGES, chance.randint(0, len(_CHANGES)))),
        trouble=_named(author, [*_TROUBLES, *chance.sample(_MORE_TROUBLES, chance.randint(0, 2))]),
        not_dancing=author.line("not_dancing"),
        safety=author.lines("safety", 1, 6),
        words={
            chance.choice(_said()["word"]): author.line("plain")
            for _ in range(chance.randint(0, 5))
        },
    )


def _named(author: _Author, kinds: Sequence[str]) -> dict[str, str]:
    return {kind: author.line(kind) for kind in kinds}


def _looked(author: _Author, talk: LookAndTalk | None) -> LookAndTalk | None:
    if talk is None:
        return None
    return replace(
        talk,
        at=author.line("at"),
        looking_for=author.line("looking_for"),
        questions=author.questions(1, 3),
        next=Next(author.line("seen"), author.line("not_yet")) if talk.next else None,
    )


def _steps(author: _Author, unit: Unit) -> tuple[Step, ...]:
    """A warm-up, one to eight steps from anywhere in the unit, and a cool-down."""
    chance = author.chance
    every = [step for lesson in unit.lessons for step in lesson.steps]
    inside = [step for step in every if step.phase not in ("warm-up", "cool-down")]
    frame = [next(s for s in every if s.phase == phase) for phase in ("warm-up", "cool-down")]
    many = chance.randint(1, 8)
    found = [frame[0], *chance.choices(inside, k=many), frame[1]]
    return tuple(_step(author, step) for step in found)


def _step(author: _Author, step: Step) -> Step:
    chance = author.chance
    minutes = chance.randint(1, 12)
    if step.phase == "look and talk" and chance.random() < 0.5:
        step = replace(step, shows=(), dances=())
    elif step.phase in ("show", "look and talk", "rehearse") and chance.random() < 0.3:
        step = replace(step, shows=("whole",))
    task = author.line("task")
    if step.shows and chance.random() < 0.6:
        task = f"{chance.choice(_SHOWN)} {task}"[:LONGEST_LINE]
    framing = step.phase in ("warm-up", "cool-down")
    return replace(
        step,
        does=author.line("does", 60),
        minutes=minutes,
        least=chance.randint(max(1, minutes // 2), minutes),
        grouping=chance.choice(("alone", "whole class") if framing else GROUPINGS),
        into=author.maybe("into", 0.4),
        say=author.maybe("say"),
        task=task,
        you=author.line("easier", LONGEST_YOU) if chance.random() < 0.4 else None,
        ask=author.questions(1, 2) if chance.random() < 0.4 else (),
        look_for=author.maybe("look_for"),
        easier=author.maybe("easier"),
        harder=author.maybe("harder"),
        can_wait=not framing and step.phase != "look and talk" and chance.random() < 0.2,
    )


def _hall(chance: random.Random) -> str:
    return chance.choice(_HALLS).format(
        each=chance.choice((1, 1.5, 2, 3, 3.5, 4, 5)),
        whole=chance.randint(40, 200),
        long=chance.randint(6, 20),
        wide=chance.randint(5, 14),
    )


def _dance(chance: random.Random, dance: Dance) -> Dance:
    """The same at another tempo, its uncounted sections of another length."""
    sections = {
        letter: section
        if section.seconds is None
        else replace(
            section,
            seconds=Seconds(section.seconds.least, section.seconds.most + chance.randint(0, 40)),
        )
        for letter, section in dance.sections.items()
    }
    tempo = dance.tempo and chance.randint(84, 132)
    return replace(dance, sections=sections, tempo=tempo)


def numbers_in(text: str) -> list[int]:
    """The whole numbers that a message names, in order."""
    return [int(found) for found in re.findall(r"\d+", text)]
