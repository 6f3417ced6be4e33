"""The ways of a step's moves on a chair and in a wheelchair, as the bodies do them.

Every move that travels, turns, jumps or shifts the weight has them, and every step in which
partners come near each other. Worded from the same poses as the pictures (`body/`).
"""

from __future__ import annotations

import re
from collections.abc import Container, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from build_tools.body.poses import moved
from build_tools.model.dance import Action, Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds as seconds_of
from build_tools.page_words.speaking import spoken
from build_tools.page_words.tables import ENGLISH
from build_tools.page_words.words import N_, _
from build_tools.views.diagrams.body_words import deed_in_words
from build_tools.views.lesson.as_in_steps import as_in_steps, ways_of_other_steps
from build_tools.views.lesson.changed_return import only_in_return, part_alone
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.coming_near import have_to_agree
from build_tools.views.lesson.moves_met import MoveMet, StepMoves
from build_tools.views.lesson.moves_tried import named_in_trying
from build_tools.views.lesson.notes_for_whom import of_a_chair_alone
from build_tools.views.lesson.notes_read import Explained
from build_tools.views.lesson.seated_in_general import in_general
from build_tools.views.words.plain_words import name_in_words
from build_tools.views.words.punctuation import capital
from build_tools.views.words.sections_called import in_short

AGREE_WITH_OTHERS = N_("With others: agree where you meet, and which of you moves there.")
"""Said only where dancers come near one another and the unit does not settle how."""
_BEYOND_GESTURE = frozenset({"travel", "turn", "jump", "transfer"})
_GETTING_ABOUT = re.compile(
    r"\b(?:walk|step|side-step|skip|run|jump|bounce|turn|spin|travel|go|sway|rush|roll|hop|"
    r"float|push)(?:s|ing)?\b",
    re.IGNORECASE,
)

_LOOK = re.compile(r"\b(?:look behind|glance|look over|look back)\b", re.IGNORECASE)
"""What every way back on wheels has; none in another language, whose ways are their own."""
_SEES = re.compile(r"\b(?:look|glance|turn the head|eyes)", re.IGNORECASE)
_ROLLS = re.compile(r"\b(?:push|wheel|roll|glide|go|travel)", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class SeatedMove:
    """One move: its word, and how it goes on a chair and on wheels, where that is said."""

    word: str
    chair: str
    wheels: str


@dataclass(frozen=True, slots=True)
class SeatedWays:
    """What a step says to who sits or uses a wheelchair; all empty where nothing has to change."""

    moves: tuple[SeatedMove, ...] = ()
    lines: tuple[str, ...] = ()

    @property
    def any(self) -> bool:
        """Whether there is anything to say."""
        return bool(self.moves or self.lines)


def all_seated_ways(
    unit: Unit, steps: Sequence[Step], moves: Sequence[StepMoves]
) -> tuple[SeatedWays, ...]:
    """The ways of every step of a lesson. What an earlier step told is not told again."""
    found: list[SeatedWays] = []
    told: dict[SeatedMove, int] = {}
    said: dict[str, int] = {}
    called = {letter: in_short(unit.dance, letter) for letter in unit.dance.sections}
    for number, (step, danced) in enumerate(zip(steps, moves, strict=True), start=1):
        if sends_back := ways_of_other_steps(danced.ways):
            found.append(SeatedWays(lines=(sends_back,)))
            continue
        own = dict.fromkeys(map(_written, danced.ways))
        met = _met(unit.dance, danced.danced or named_in_trying(step, moves)) | own
        apart = _told_apart(met)
        ways = _each_word_once([one for one in met if one not in told], apart, called)
        ways += _with_a_look(unit.dance, ways, told, danced.danced)
        ways = _with_motifs(unit.dance, ways, told, danced.danced)
        agree = have_to_agree(unit.dance, danced)
        general = "" if met else in_general(unit, step)
        holds = tuple(_lines(step, general=general, agree=agree))
        lines = [line for line in holds if line not in said]
        if older := [(apart[one], told[one]) for one in met if one in told]:
            # before the step's own ways, which stand below the lines
            named = [(letter and called[letter], step) for letter, step in older]
            lines.insert(len(lines) if ways else 0, as_in_steps(named, more=bool(ways)))
        elif general in holds and general in said:
            lines.insert(0, as_in_steps([(None, said[general])]))
        found.append(
            SeatedWays(
                ways, tuple(_(line) if line == AGREE_WITH_OTHERS else line for line in lines)
            )
        )
        told = dict.fromkeys(met, number) | told
        said |= {line: number for line in lines if line in (general, AGREE_WITH_OTHERS)}
    return tuple(found)


def _lines(step: Step, *, general: str, agree: bool) -> Iterator[str]:
    """What holds for a whole step: in general where it has no moves, and with others near.

    With others it is what they agree, where they come near.
    """
    about = step.phase != "look and talk" and _GETTING_ABOUT.search(f"{step.does} {step.task}")
    if general and about:
        yield general
    danced = step.makes or step.develops or step.joins or step.dances or step.shows
    if agree and danced and GROUP_SIZES.get(step.grouping, 1) > 1:
        yield AGREE_WITH_OTHERS


def _met(dance: Dance, danced: Sequence[MoveMet]) -> dict[SeatedMove, str | None]:
    """The ways of a step, each with the letter of the changed return that alone has it."""
    found: dict[SeatedMove, str | None] = {}
    for one in danced:
        if _changes(one):
            way, letter = _seated(dance, one), only_in_return(dance, one.motif)
            if letter is None and (one.seated or one.wheels):
                letter = part_alone(dance, one.motif)
            found[way] = letter if found.get(way, letter) == letter else None
    return found


def _told_apart(met: Mapping[SeatedMove, str | None]) -> dict[SeatedMove, str | None]:
    """The letter only where a step has the same word in another way outside that return."""
    letters: dict[str, set[str | None]] = {}
    for one, letter in met.items():
        letters.setdefault(one.word.casefold(), set()).add(letter)
    return {
        one: letter if len(letters[one.word.casefold()]) > 1 else None
        for one, letter in met.items()
    }


def _each_word_once(
    ways: Sequence[SeatedMove],
    apart: Mapping[SeatedMove, str | None],
    called: Mapping[str, str],
) -> tuple[SeatedMove, ...]:
    """The first way of each word, as a step meets it, and that of a changed return beside it."""
    first: dict[tuple[str, str | None], SeatedMove] = {}
    for one in ways:
        letter = apart[one]
        named = (
            one
            if letter is None
            else replace(one, word=_("{move} in {part}", move=one.word, part=called[letter]))
        )
        first.setdefault((one.word.casefold(), letter), named)
    return tuple(first.values())


def _with_a_look(
    dance: Dance,
    ways: Sequence[SeatedMove],
    told: Container[SeatedMove],
    danced: Sequence[MoveMet],
) -> tuple[SeatedMove, ...]:
    """The ways back whose word the step tells on: nobody goes back for want of the look behind."""
    shown = {(one.chair, one.wheels) for one in ways}
    back = {
        way: one.motif
        for one in danced
        if _changes(one)
        and _LOOK.search((way := _seated(dance, one)).wheels)
        and (way.chair, way.wheels) not in shown
        and way not in told
        and not any(_LOOK.search(other.wheels) and _is_of(one.word, other.word) for other in ways)
    }
    first: dict[str, SeatedMove] = {}
    for one, motif in back.items():
        named = _("{move} in {part}", move=one.word, part=name_in_words(motif or ""))
        first.setdefault(one.word.casefold(), replace(one, word=named))
    return tuple(first.values())


def _is_of(word: str, told: str) -> bool:
    """Whether a way is told of that move: by its word alone, or by it and its part."""
    small, word = told.casefold(), word.casefold()
    return small == word or small.startswith(f"{word} ")


def _with_motifs(
    dance: Dance,
    ways: Sequence[SeatedMove],
    told: Container[SeatedMove],
    danced: Sequence[MoveMet],
) -> tuple[SeatedMove, ...]:
    """The ways, those with their motif whose word an earlier step told in another way."""
    motifs = {_seated(dance, one): one.motif for one in reversed(danced) if _changes(one)}
    known = {one.word.casefold() for one in motifs if one in told}
    return tuple(
        replace(one, word=_("{move} in {part}", move=one.word, part=name_in_words(motif)))
        if one.word.casefold() in known and (motif := motifs.get(one))
        else one
        for one in ways
    )


def _changes(one: MoveMet) -> bool:
    """Whether who sits or uses a wheelchair does it another way, or the author says how."""
    if one.action is None:
        return False
    return bool(one.seated or one.wheels) or bool(_BEYOND_GESTURE & set(one.action.kinds))


def _seated(dance: Dance, one: MoveMet) -> SeatedMove:
    assert one.action is not None
    seconds = float(seconds_of(one.action.counts, dance.tempo)) if dance.tempo else None
    chair, wheels = (_said(one, body, seconds) for body in ("chair", "wheels"))
    own = one.wheels and _own_way_back(one.action, one.wheels)
    return SeatedMove(one.word, *(_closed(way) for way in (one.seated or chair, own or wheels)))


def _own_way_back(action: Action, way: str) -> str:
    """The author's way on wheels; where it is also that of a way back, with the look behind.

    "One gentle push" says no direction, and may have been written for the way out.
    """
    goes_back = "travel" in action.kinds and action.direction == "backwards"
    if not goes_back or spoken() != ENGLISH or _SEES.search(way) or not _ROLLS.search(way):
        return way
    return _("{wheel}, after a look behind", wheel=way.strip().removesuffix("."))


def _written(one: Explained) -> SeatedMove:
    """The author's own ways of a step or a part that is no single move.

    Where only one of the two is said it holds for both, as of a move; but feet on the floor are a
    chair's alone, and nothing is said on wheels then. A word that the step explains besides has a
    row of its own there: two rows of one name said two things.
    """
    shared = "" if of_a_chair_alone(one.seated) else one.seated
    chair, wheels = one.seated or one.wheels or "", one.wheels or shared or ""
    word = _("{word}, seated", word=one.word) if one.text else one.word
    return SeatedMove(word, _closed(chair), _closed(wheels))


def _closed(way: str) -> str:
    """A way as the page puts a full stop behind it: the author's own stop goes."""
    return capital(way.removesuffix("."))


def _said(one: MoveMet, body: str, seconds: float | None) -> str:
    assert one.action is not None
    return deed_in_words(moved(one.action, one.before, body), seconds)
