"""Which moves a teacher meets in which step of a lesson, each with its meaning in plain words.

What a step makes or changes is told and drawn in it. What it dances again is told in the first
step of the lesson that dances it. The words are the author's own, from the notes of the lesson
that made the move; where there are none, what its picture shows.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

from build_tools.model.dance import Action, Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.views.dance.left_open import OPEN, drawn_actions
from build_tools.views.dance.moves_before import moves_before, shown
from build_tools.views.dance.parts_named import letters_in, motifs_in
from build_tools.views.lesson.drawn_in_steps import danced_by, drawn_in_steps
from build_tools.views.lesson.joins_walked import joins_walked, ways_of_joins
from build_tools.views.lesson.later_parts import explained_by_now, first_made_in
from build_tools.views.lesson.move_lines import notes_as_meant
from build_tools.views.lesson.moves_met import (
    MetBefore,
    MoveMet,
    StepMoves,
    TodaysMoves,
    once,
    once_in_each_part,
)
from build_tools.views.lesson.notes_for_whom import of_a_chair_alone
from build_tools.views.lesson.notes_in_steps import danced_in, notes_in_steps
from build_tools.views.lesson.notes_read import Explained, notes_read
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.lesson.return_danced import dances_a_return, lesson_of_return
from build_tools.views.lesson.words_still_true import (
    first_sentence,
    way_as_it_holds,
    way_still_true,
    ways_home,
    words_as_they_hold,
)
from build_tools.views.words.plain_words import action_label


@once_a_lesson
def todays_moves(unit: Unit, lesson: Lesson) -> TodaysMoves:
    """The moves of each step of `lesson`."""
    drawn = drawn_in_steps(unit.dance, lesson.steps)
    met = [_all_met(unit, lesson, names) for names in drawn]
    danced = [
        tuple(_all_met(unit, lesson, danced_by(unit.dance, step), step, varied=True))
        for step in lesson.steps
    ]
    again = _again(unit, lesson, drawn, met)
    placed = notes_in_steps(unit.dance, lesson, _told_of_moves(unit, lesson, met, danced, again))
    made = _made(
        met, [[MoveMet(one.word, one.text, None) for one in words] for words in placed.words]
    )
    known: set[str] = set()
    found = []
    for n, step in enumerate(lesson.steps):
        parts = letters_in(unit.dance, step.makes)
        older = letters_in(unit.dance, danced_in(step))
        fresh = tuple(letter for letter in older if letter not in {*known, *parts})
        known |= {*parts, *fresh}
        helps = tuple(placed.helps[n])
        told = (*made[n], danced[n], again[n])
        ways = (*placed.ways[n], *_ways_of_joins(unit, lesson, step, placed.ways))
        found.append(StepMoves(drawn[n], *told, parts, fresh, helps, ways))
    return TodaysMoves(tuple(found), placed.rest)


def _ways_of_joins(
    unit: Unit, lesson: Lesson, step: Step, own: Sequence[Sequence[Explained]]
) -> tuple[Explained, ...]:
    """How joins that a step walks again go sitting, where today's notes do not say it."""
    walked = joins_walked(unit.dance, step)
    said = (way.seated or way.wheels or "" for ways in own for way in ways)
    if not walked or any("join" in way.casefold() for way in said):
        return ()
    before = [one for one in reversed(unit.lessons) if one.number < lesson.number]
    ways = ((one, [moves.ways for moves in todays_moves(unit, one).steps]) for one in before)
    return ways_of_joins(unit.dance, walked, ways)


def _made(
    met: Sequence[Sequence[MoveMet]], placed: Sequence[Sequence[MoveMet]]
) -> list[tuple[tuple[MoveMet, ...], tuple[MetBefore, ...]]]:
    """What each step tells of the moves it makes, and which an earlier step told."""
    told: dict[object, int] = {}
    found = []
    for n, (every, words) in enumerate(zip(met, placed, strict=True)):
        moves = once(every)
        new = tuple(m for m in moves if _told_as(m) not in told)
        before = tuple(
            MetBefore(m.word, told[_told_as(m)] + 1) for m in moves if _told_as(m) in told
        )
        told |= {key: n for m in new for key in (_told_as(m), _whatever_its_feel(m))}
        found.append(((*new, *words), before))
    return found


def _told_as(move: MoveMet) -> object:
    """What makes two moves of a lesson one to a reader: the author's words for both.

    Where those may no longer hold, only because the feel is now the pupils' own, the move is the
    one that was told: the software's words for it would say less.
    """
    if move.means is None and move.action and not move.action.dynamics:
        return _whatever_its_feel(move)
    return move.word.casefold(), move.means


def _whatever_its_feel(move: MoveMet) -> object:
    known = move.action
    plain = replace(known, dynamics=(), chosen=known.chosen - {"dynamics"}) if known else None
    return move.word.casefold(), plain


def _again(
    unit: Unit,
    lesson: Lesson,
    drawn: Sequence[Sequence[str]],
    met: Sequence[Sequence[MoveMet]],
) -> list[tuple[MoveMet, ...]]:
    """What each step tells of moves of earlier lessons, each where it first comes."""
    today = {name for names in drawn for name in names}
    told: set[tuple[str, Action]] = set()
    words: set[str] = set()
    of_return: dict[str, str | None] = {}
    found = []
    for every, step in zip(met, lesson.steps, strict=True):
        told |= {(m.word, m.action) for m in every if m.action}
        danced = [x for x in motifs_in(unit.dance, danced_in(step)) if x not in today]
        moves = once_in_each_part(unit.dance, _all_met(unit, lesson, danced, step))
        alone = dances_a_return(unit.dance, step)
        new = tuple(
            m
            for m in moves
            if m.word not in words
            and (m.word, m.action) not in told
            and of_return.get(m.word, "") != m.means
        )
        # what is told of a changed return alone may be another thing where all is danced
        if alone:
            of_return |= {m.word: m.means for m in new}
        else:
            words |= {m.word for m in new}
        found.append(new)
    return found


def _all_met(
    unit: Unit,
    lesson: Lesson,
    names: Sequence[str],
    step: Step | None = None,
    *,
    varied: bool = False,
) -> list[MoveMet]:
    """The moves of these motifs as `step` dances them: in a changed return with its own words."""
    return [
        _met(unit, lesson, name, step, *pair)
        for name in names
        for pair in _moves(unit.dance, name, varied=varied)
    ]


@lru_cache(maxsize=256)
def _moves(
    dance: Dance, name: str, *, varied: bool = False
) -> tuple[tuple[Action, Action | None], ...]:
    """The moves that are known, each after the one before it; those that pupils vary if asked."""
    actions = drawn_actions(dance, name)
    each = zip(actions, moves_before(actions), strict=True)
    return tuple(
        (known, before)
        for action, before in each
        if (known := shown(action)) and (varied or action.kind != OPEN)
    )


def _met(
    unit: Unit,
    lesson: Lesson,
    name: str,
    step: Step | None,
    action: Action,
    before: Action | None,
) -> MoveMet:
    word = action_label(action)
    found = _explained(unit, lesson, name, word, step)
    if found is None:
        return MoveMet(word, None, action, before, motif=name)
    piece, made = found
    piece = explained_by_now(unit, lesson.number, piece)
    # each on the line begins anew with what is done; what follows is judged by itself
    said = " ".join(map(first_sentence, (piece.text, piece.seated, piece.wheels)))
    if not way_still_true(made, action, said):
        chair, wheels = ways_home(made, action, piece.seated, piece.wheels)
        return MoveMet(word, None, action, before, chair, wheels, name)
    means = words_as_they_hold(made, action, piece.text) or None
    seated, wheels = (way_as_it_holds(made, action, w) for w in (piece.seated, piece.wheels))
    wheels = wheels or (None if of_a_chair_alone(seated) else seated)
    return MoveMet(word, means, action, before, seated, wheels, name)


def _explained(
    unit: Unit, lesson: Lesson, name: str, word: str, step: Step | None
) -> tuple[Explained, Sequence[Action]] | None:
    """What the notes say of the move: of the lesson that makes it, else of the nearest before.

    What this lesson's notes say of a move that it only dances again comes before that, and so does
    what the lesson says that made a changed return, where the step dances nothing else. With it
    the moves that this was written for, none where it is this very one: what is said of
    an earlier one may be no longer true, of a side, a speed, a number of counts or a size.
    """
    made_in = first_made_in(unit, name) or lesson.number
    before = [one for one in unit.lessons if one.number <= made_in]
    if lesson.number > made_in and word.casefold() not in _made_anew(unit, lesson):
        before.append(lesson)
    of_return = lesson_of_return(unit, lesson, step, word) if step else None
    if of_return and of_return.number > made_in:
        before.insert(len(before) - (lesson in before), of_return)
    for one in reversed(before):
        for piece in notes_read(notes_as_meant(one.notes, unit.dance)):
            if isinstance(piece, Explained) and piece.word.casefold() == word.casefold():
                own = one.number == made_in and not _comes_of_another(unit, name, made_in)
                now = one.number > made_in
                return piece, () if own or now else _as_made(unit, name, word)
    return None


@once_a_lesson
def _made_anew(unit: Unit, lesson: Lesson) -> frozenset[str]:
    """The words, in small letters, of moves that the lesson makes, of which its notes then tell."""
    return frozenset(
        action_label(action).casefold()
        for step in lesson.steps
        for name in motifs_in(unit.dance, (*step.makes, *step.develops))
        for action, _ in _moves(unit.dance, name, varied=True)
    )


def _comes_of_another(unit: Unit, name: str, number: int) -> bool:
    """Whether the same lesson makes the motif that it comes from, of which its notes tell first."""
    sources = (one for one in roots(unit.dance, name) if one != name)
    return any(first_made_in(unit, one) == number for one in sources)


def _as_made(unit: Unit, name: str, word: str) -> list[Action]:
    """The moves of that word in the motifs that `name` comes from."""
    return [
        one
        for root in roots(unit.dance, name)
        for one, _ in _moves(unit.dance, root)
        if action_label(one) == word
    ]


def _told_of_moves(
    unit: Unit,
    lesson: Lesson,
    met: Sequence[Sequence[MoveMet]],
    danced: Sequence[Sequence[MoveMet]],
    again: Sequence[Sequence[MoveMet]],
) -> frozenset[str]:
    """The words, in small letters, of which all that the notes say is told of their move.

    What the notes say of other moves, as of one that only an earlier lesson makes and whose words
    stand there, is no move's here: it stands in a step that it names, or at the foot.
    """
    made = (one for every in met for one in once(every))
    means: dict[str, str] = {}
    ways: dict[str, str] = {}
    for one in (*made, *(one for step in again for one in step)):
        word = one.word.casefold()
        means[word] = f"{means.get(word, '')} {one.means or ''}"
    for one in (one for step in danced for one in step):
        word = one.word.casefold()
        ways[word] = f"{ways.get(word, '')} {one.seated or ''} {one.wheels or ''}"
    return frozenset(
        word
        for piece in notes_read(notes_as_meant(lesson.notes, unit.dance))
        if isinstance(piece, Explained) and (word := piece.word.casefold()) in ways
        for now in (explained_by_now(unit, lesson.number, piece),)
        if now.text in means.get(word, "")
        and all(way in ways[word] for way in (now.seated, now.wheels) if way)
    )
