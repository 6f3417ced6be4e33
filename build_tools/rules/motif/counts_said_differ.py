"""A number of counts said beside a move is the number that the motif has.

The words say "sink for six" and the motif sinks for four: half the class goes by what it hears and
half by the card, and nobody knows who is wrong. Read are the steps in which the dance is made and
danced, the notes, what is collected, and who dances a passage. A development's counts are right
from the step that develops it, and what pupils decide is left to them.

Bad:
    actions: [{travel: 4, as: glide}, {turn: 2, as: whirl}, {transfer: 4, as: melt}]
    a step that makes it: say: Glide four, whirl two, melt six.
Good:
    actions: [{travel: 4, as: glide}, {turn: 2, as: whirl}, {transfer: 4, as: melt}]
    a step that makes it: say: Glide four, whirl two, melt four.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of, roots
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.counts_of_moves import FROM_TO, Claim, lengths_said
from build_tools.sentences.sayings import saying_of
from build_tools.views.dance.when_made import StepPlace, progress
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.words.plain_words import counts_in_words, listed
from build_tools.views.written.unit_text import place_of

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken", "development-does-not-work")

_PHASES = ("recall", "make", "develop", "join", "rehearse", "show")
_TIMED = ("change of speed", "change of rhythm", "replacing an action")
_TIMES = range(1, 5)
"""So many times a motif may be danced in the counts that are said of it."""
_LAST = StepPlace(10**6, 0)


_Row = tuple[tuple[str, Fraction], ...]


@dataclass(frozen=True, slots=True)
class _Said:
    """One text of the unit: where it stands, and the step by which its counts have to be known."""

    file: str
    path: FieldPath
    text: str
    known_by: StepPlace


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each text with a number beside a move that the motif does not have."""
    dance = unit.dance
    words = tuple(dict.fromkeys(a.word for m in dance.motifs.values() for a in m.actions if a.word))
    names = tuple(name.replace("-", " ") for name in dance.motifs)
    if not words:
        return
    for said in _texts(unit):
        for claim in lengths_said(said.text, words, names):
            right = _right(unit, claim, said.known_by)
            if not right or claim.counts in right:
                continue
            if claim.in_all and claim.counts in _with_all(unit, claim, said.known_by):
                continue
            if claim.name is None and len(claim.moves) == 1:
                right |= _on_the_way(dance, claim.moves[0])
                if claim.counts in right:
                    continue
            yield Finding(
                said.file,
                place_of(FieldText(said.path, "", said.text), claim.said),
                f'the words "{claim.said}" say {counts_in_words(Fraction(claim.counts))}, but '
                f"{_what(claim)} {listed([figures(one) for one in sorted(right)], 'or')}",
                "say the number that the motif has, or change the counts of the action",
            )
            break


def _texts(unit: Unit) -> Iterator[_Said]:
    for letter, section in unit.dance.sections.items():
        for n, passage in enumerate(section.danced):
            if passage.who:
                yield _Said(unit.file, ("sections", letter, "danced", n, "who"), passage.who, _LAST)
    for n, line in enumerate(unit.kit.collect):
        yield _Said(unit.file, ("kit", "collect", n), line, _LAST)
    yield _Said(unit.file, (), unit.notes, _LAST)
    for lesson in unit.lessons:
        end = StepPlace(lesson.number, len(lesson.steps))
        for n, line in enumerate(lesson.collect):
            yield _Said(lesson.file, ("collect", n), line, end)
        for n, step in enumerate(lesson.steps):
            if step.phase not in _PHASES:
                continue
            place = StepPlace(lesson.number, n)
            for field, text in (("say", step.say), ("task", step.task), ("you", step.you)):
                if text:
                    yield _Said(lesson.file, ("steps", n, field), text, place)
        yield _Said(lesson.file, (), lesson.notes, end)


def _right(unit: Unit, claim: Claim, known_by: StepPlace) -> frozenset[Fraction]:
    """The counts that the claim may name; none where pupils decide them."""
    rows = _rows(unit, known_by)
    if any(row is None for row in rows):
        return frozenset()
    found: set[Fraction] = set()
    for row in filter(None, rows):
        found |= _in_row(row, claim)
    if claim.name is not None:
        found |= _whole(unit, claim.name, known_by)
    return frozenset(found)


@lru_cache(maxsize=64)
def _rows(unit: Unit, known_by: StepPlace) -> tuple[_Row | None, ...]:
    """The moves of everything that is known by then, with their counts."""
    return tuple(_moves(unit.dance, name) for name in _known(unit, known_by))


def _whole(unit: Unit, motif: str, known_by: StepPlace) -> frozenset[Fraction]:
    """The counts of the motif and of what comes from it, danced a few times."""
    names = (n for n in _known(unit, known_by) if motif in _called(unit.dance, n))
    return frozenset(n * _sum(_moves(unit.dance, name) or ()) for name in names for n in _TIMES)


def _known(unit: Unit, known_by: StepPlace) -> Iterator[str]:
    """The motifs, and the developments that a step has made by then."""
    yield from unit.dance.motifs
    ways = progress(unit)
    for name in unit.dance.developments:
        made = ways[name].made
        if not made or made[0] <= known_by:
            yield name


def _with_all(unit: Unit, claim: Claim, known_by: StepPlace) -> frozenset[Fraction]:
    """The counts of everything in which one of the moves is danced, each as a whole."""
    rows = (row for row in _rows(unit, known_by) if row)
    return frozenset(_sum(row) for row in rows if {word for word, _ in row} & {*claim.moves})


@lru_cache(maxsize=256)
def _moves(dance: Dance, name: str) -> _Row | None:
    """The words of the moves with their counts; None where pupils decide how long they are."""
    development = dance.developments.get(name)
    while development is not None:
        if development.device in _TIMED and development.choice and not development.counts:
            return None
        development = dance.developments.get(development.of)
    return tuple((a.word, a.counts) for a in actions_of(dance, name) if a.word)


def _called(dance: Dance, name: str) -> frozenset[str]:
    """The motifs that `name` comes from, as they are called in words."""
    return frozenset(one.replace("-", " ") for one in roots(dance, name))


def _in_row(row: _Row, claim: Claim) -> frozenset[Fraction]:
    own = [word for word, _ in row]
    if len(claim.moves) == len(FROM_TO):
        first, last = claim.moves[0], claim.moves[-1]
        if first not in own or last not in own or own.index(first) > own.index(last):
            return frozenset()
        return frozenset({_sum(row[own.index(first) : own.index(last) + 1])})
    alone = {counts for word, counts in row if word in claim.moves}
    together = _sum([one for one in row if one[0] in claim.listed])
    return frozenset(alone | ({together} if together and len(claim.listed) > 1 else set()))


def _on_the_way(dance: Dance, move: str) -> frozenset[Fraction]:
    """The counts of transitions that speak of the move: hide for eight, and wait."""
    says = saying_of(move)
    return frozenset(t.counts for t in dance.transitions if t.counts and says.said(t.how))


def _sum(row: Sequence[tuple[str, Fraction]]) -> Fraction:
    return sum((counts for _, counts in row), Fraction(0))


def _what(claim: Claim) -> str:
    if claim.name is not None:
        return f"`{claim.name}` lasts"
    return "together they last" if len(claim.moves) > 1 else f"`{claim.moves[0]}` lasts"
