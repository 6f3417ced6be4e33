"""What is printed of a lesson, part by part, in the order of the paper and in its very words.

A test reads the browser's print and finds these words there, all of them and no others.
The focus, the notes below, what the lesson covers and every way to another page stay on the screen.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from itertools import chain

from build_tools.model.bank import Word
from build_tools.model.lesson import Lesson, Next, Question
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.diagrams.figure_strip import figure_strip_size
from build_tools.views.diagrams.small_line import line_size, line_title
from build_tools.views.diagrams.strip import StripSize, strip_title
from build_tools.views.diagrams.strip_changes import changes_unseen
from build_tools.views.lesson.checks_before import checks_before
from build_tools.views.lesson.drawn_first import drawn_first
from build_tools.views.lesson.grouping_in_words import grouping_in_words
from build_tools.views.lesson.lesson_in_short import lesson_in_short
from build_tools.views.lesson.lesson_wording import (
    DEFERENCE,
    WAY_TO_TALK,
    answers_in_words,
    changes_in_order,
    has_way_to_talk,
    heading_of_change,
    into_in_words,
    lesson_before,
    looked_for_last_time,
    looks_back_in_words,
    never_did,
    phase_in_words,
    question_said,
    step_in_short,
    trouble_in_words,
    what_comes_after,
    where_in_words,
)
from build_tools.views.lesson.looking_said import looking_said
from build_tools.views.lesson.standing_in_steps import plans_of
from build_tools.views.lesson.teachers_part import Told, teachers_parts
from build_tools.views.lesson.timings import StepTime, step_times
from build_tools.views.paper.printed import (
    APART,
    PrintedLesson,
    PrintedStep,
    PrintedTalk,
    Runs,
    label,
    labelled,
    row,
)
from build_tools.views.paper.told_in_steps import told_at_each_level
from build_tools.views.paper.typeface import Run
from build_tools.views.words.plain_words import minutes_in_words
from build_tools.views.words.punctuation import capital, kept_together, quoted, sentence
from build_tools.views.words.the_room import the_room
from build_tools.views.words.words_needed import words_needed

ASIDE = (frozenset({"change", "words"}), frozenset({"change", "words", "classroom"}))
"""What the further side can take, least first: what is read before the lesson, not in the hall."""
_UNKNOWN_PLAIN = "about as long as words of dance are in plain words"
"""Stands for what a bank's own vocabulary says of a word that a lesson teaches."""


def printed_lesson(
    unit: Unit,
    lesson: Lesson,
    vocabulary: Mapping[str, Word] | None = None,
    told: Sequence[int] = (),
    *,
    plans: bool = False,
    said: Collection[int] = (),
    aside: Collection[str] = (),
) -> PrintedLesson:
    """What is printed of `lesson`; `told` has the level of `told_at_each_level` for each step.

    `plans` says whether the floor is drawn before them; `said` has the steps, from 0, of which the
    beat is printed with its words; `aside` has what stands on the further side, of `ASIDE`.

    Without the bank's `vocabulary`, a word that the lesson teaches and the unit does not explain
    is taken to be explained in as many words as most are.
    """
    return PrintedLesson(
        title=lesson.title,
        place=_("Lesson {number} of {many}", number=lesson.number, many=len(unit.lessons)),
        lead=lesson.pupils_make,
        facts=(
            Run(kept_together(f"{minutes_in_words(lesson.minutes)}."), bold=True),
            Run(_("You do not need to demonstrate."), bold=True),
        ),
        caption=_caption(unit, lesson),
        picture=picture_size(unit, lesson),
        collect=lesson.collect,
        short=tuple(
            (
                _("{start} to {end}", start=line.start, end=line.end),
                "; ".join(step_in_short(lesson, n) for n in line.steps),
            )
            for line in lesson_in_short(lesson)
        ),
        run_in=(),
        before=tuple(_before(unit, lesson, aside)),
        steps=tuple(
            _step(lesson, index, *each, said=index in said)
            for index, each in enumerate(
                zip(
                    step_times(lesson),
                    _told_of(unit, lesson, told),
                    teachers_parts(unit, lesson, in_full=False),
                    strict=True,
                )
            )
        ),
        talk=_talk(unit, lesson),
        not_dancing=(_heading(_("Can’t dance today")), Run(lesson.not_dancing)),
        trouble_heading=Run(_("What if …"), bold=True),
        trouble=tuple(row(label, words) for label, words in trouble_in_words(lesson)),
        change=()
        if "change" in aside
        else _rows(_("Change it to fit your class"), changes_in_order(lesson), heading_of_change),
        words=()
        if "words" in aside
        else _rows(_("Words for today"), _explained(unit, lesson, vocabulary), str),
        deference=_(DEFERENCE),
        plans=tuple(one.title for one in plans_of(unit, lesson)) if plans else (),
    )


def _told_of(unit: Unit, lesson: Lesson, levels: Sequence[int]) -> tuple[Runs, ...]:
    if not any(levels):
        return ((),) * len(lesson.steps)
    by_level = told_at_each_level(unit, lesson)
    return tuple(by_level[level][index] for index, level in enumerate(levels))


def _heading(words: str) -> Run:
    return Run(f"{words}.", bold=True)


def _rows(heading: str, rows: Iterable[tuple[str, str]], shown: Callable[[str], str]) -> Runs:
    """Rows that run on after their heading; nothing where there are none."""
    found = tuple(chain.from_iterable(row(shown(label), words) for label, words in rows))
    return (_heading(heading), *found) if found else ()


def picture_size(unit: Unit, lesson: Lesson) -> StripSize:
    """How large the drawing of what is made today is, in the drawing's own units."""
    name = drawn_first(unit, lesson)
    if name is None:
        return line_size()
    return figure_strip_size(drawn_actions(unit.dance, name), changes_unseen(unit.dance, name))


def _caption(unit: Unit, lesson: Lesson) -> str:
    name = drawn_first(unit, lesson)
    if name is not None:
        return strip_title(name)
    parts = [
        part
        for step in lesson.steps
        for part in (*step.makes, *step.joins, *step.dances, *step.shows)
    ]
    return line_title(unit.dance, letters_in(unit.dance, parts))


def _before(unit: Unit, lesson: Lesson, aside: Collection[str]) -> Iterator[tuple[Runs, ...]]:
    """What comes before they move: the room, in the classroom, checks, the story so far."""
    if unit.dance.sides:
        yield ((_heading(_("The room")), Run(the_room(unit.dance))),)
    if lesson.classroom_first and "classroom" not in aside:
        lines = (Run(line) for line in lesson.classroom_first)
        yield ((_heading(_("In the classroom first")), *lines),)
    checks = (Run(line) for line in checks_before(unit, lesson))
    yield ((_heading(_("Before they move")), *checks),)
    story = tuple(_story(unit, lesson))
    if story:
        yield ((_heading(_("The story so far")), *story[0]), *story[1:])


def _story(unit: Unit, lesson: Lesson) -> Iterator[Runs]:
    if lesson.story_so_far:
        yield (Run(lesson.story_so_far),)
    before = lesson_before(unit, lesson)
    if before and before.look_and_talk and before.look_and_talk.next:
        talk, start = before.look_and_talk, before.look_and_talk.next
        looked_for = (Run(looked_for_last_time(talk)),)
        rows = (
            *row(_("If you saw it"), sentence(start.seen)),
            *row(_("If not yet"), sentence(start.not_yet)),
        )
        if lesson.story_so_far:
            yield looked_for
            yield rows
        else:
            yield looked_for + rows
    if lesson.never_did_last:
        yield (
            Run(never_did(unit, lesson), bold=True),
            Run(sentence(lesson.never_did_last)),
        )


def _step(
    lesson: Lesson, index: int, time: StepTime, told: Runs, yours: Sequence[Told], *, said: bool
) -> PrintedStep:
    step = lesson.steps[index]
    into = " · " + _("say {into}", into=into_in_words(step.into)) if step.into else ""
    return PrintedStep(
        title=Run(f"{index + 1}. {step.does}", bold=True),
        phase=Run(f"· {phase_in_words(step.phase)}"),
        how=Run(f"· {capital(grouping_in_words(step.grouping))}{into}"),
        time=_("{start} to {end} min", start=time.start, end=time.end),
        say=quoted(step.say) if step.say else None,
        task=(label(_("Pupils")), Run(step.task, gap=APART)),
        rest=tuple(_rest(lesson, index, yours, said=said)),
        told=told,
    )


def _rest(lesson: Lesson, index: int, yours: Sequence[Told], *, said: bool) -> Iterator[Run]:
    """What runs on after a step's task."""
    step = lesson.steps[index]
    if step.you:
        yield from labelled(_("You"), step.you)
    for one in yours:
        yield from labelled(one.label, one.on_paper(said=said))
    if where := where_in_words(step):
        yield from labelled(_("Stand"), where)
    if step.look_for:
        yield from labelled(_("Look for"), step.look_for)
    for question in step.ask:
        yield from _question(question, lesson)
    if has_way_to_talk(lesson, step):
        yield Run(_(WAY_TO_TALK), gap=APART)
    if step.easier:
        yield from labelled(_("Easier"), step.easier)
    if step.harder:
        yield from labelled(_("Harder"), step.harder)


def _question(question: Question, lesson: Lesson) -> Runs:
    back, answers = looks_back_in_words(question), answers_in_words(question)
    return (
        label(_("Ask")),
        Run(question_said(question, lesson), bold=True),
        *([Run(f"({back})")] if back else []),
        *([Run(_("They may say: {answers}", answers=answers))] if answers else []),
        Run("", gap=APART),
    )


def _talk(unit: Unit, lesson: Lesson) -> PrintedTalk | None:
    talk = lesson.look_and_talk
    if talk is None:
        return None
    after = talk.next
    return PrintedTalk(
        opening=(
            _heading(_("Look and talk")),
            Run(looking_said(lesson, talk)),
            label(_("Look for")),
            Run(sentence(talk.looking_for)),
        ),
        asks=tuple(_question(question, lesson) for question in talk.questions),
        heading=_heading(what_comes_after(unit, lesson)) if after else None,
        rows=_seen_or_not(after) if after else (),
    )


def _seen_or_not(start: Next) -> tuple[Runs, Runs]:
    return (
        row(_("If you saw it"), sentence(start.seen)),
        row(_("If not yet"), sentence(start.not_yet)),
    )


def _explained(
    unit: Unit, lesson: Lesson, vocabulary: Mapping[str, Word] | None
) -> Iterator[tuple[str, str]]:
    known = words_needed(unit, lesson, vocabulary or {})
    yield from ((meaning.word, meaning.plain) for meaning in known)
    if vocabulary is None:
        explained = {meaning.word.casefold() for meaning in known}
        for word in dict.fromkeys(word for step in lesson.steps for word in step.teaches):
            if word.casefold() not in explained:
                yield word, _UNKNOWN_PLAIN
