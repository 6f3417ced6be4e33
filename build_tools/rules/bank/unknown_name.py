"""Every name that a unit or a lesson refers to is the name of something in it.

A name with a slip in it sends a teacher looking for a motif, a section or a choice that is not
there, and everything worked out from it is wrong. `whole`, for the whole dance, is always known.

Bad:
    motifs: {gust: …}
    lesson 1: makes: [gusts]
Good:
    motifs: {gust: …}
    lesson 1: makes: [gust]
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Iterator

from build_tools.model.lesson import Lesson, Question
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.schema_check.wording import nearest
from build_tools.views.words.plain_words import listed

GRADE: Grade = "error"
SOURCE = "common practice, no source"

WHOLE = "whole"
_TAKES_WHOLE = ("dances", "shows")
_MOVES = "a motif or development"
_SECTION = "a section"
_CHOICE = "a choice"
_LETTER = re.compile(r"(?:part|section)-([a-z])('?)")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each name that nothing has."""
    for path, name, wanted in _names_in_unit(unit):
        yield from _unless_known(unit, unit.file, path, name, wanted)
    numbers = [lesson.number for lesson in unit.lessons]
    for lesson in unit.lessons:
        for path, name, wanted in _names_in_lesson(lesson):
            yield from _unless_known(unit, lesson.file, path, name, wanted)
        yield from _looking_back(lesson, numbers)


def _names_in_unit(unit: Unit) -> Iterator[tuple[FieldPath, str, str]]:
    dance = unit.dance
    for letter in dict.fromkeys(dance.form):
        yield ("dance", "form"), letter, _SECTION
    if dance.order_choice:
        yield ("dance", "order"), dance.order_choice, _CHOICE
    for letter, section in dance.sections.items():
        for n, passage in enumerate(section.danced):
            for m, name in enumerate(passage.what):
                yield ("sections", letter, "danced", n, "what", m), name, _MOVES
    for name, development in dance.developments.items():
        yield ("developments", name, "of"), development.of, _MOVES
        if development.joined_to:
            yield ("developments", name, "and"), development.joined_to, _MOVES
        if development.choice:
            yield ("developments", name, "choice"), development.choice, _CHOICE
    for n, transition in enumerate(dance.transitions):
        for field, letter in (("from", transition.start), ("to", transition.end)):
            if letter != "any":
                yield ("transitions", n, field), letter, _SECTION


def _names_in_lesson(lesson: Lesson) -> Iterator[tuple[FieldPath, str, str]]:
    for index, step in enumerate(lesson.steps):
        for field, names, wanted in (
            ("makes", step.makes, "a motif or section"),
            ("develops", step.develops, "a development"),
            ("joins", step.joins, _SECTION),
            ("dances", step.dances, "a motif, development or section"),
            ("shows", step.shows, "a motif, development or section"),
            ("settles", step.settles, _CHOICE),
        ):
            for n, name in enumerate(names):
                if name != WHOLE or field not in _TAKES_WHOLE:
                    yield ("steps", index, field, n), name, wanted
    if lesson.look_and_talk:
        for n, name in enumerate(lesson.look_and_talk.end_points):
            yield ("look_and_talk", "end_points", n), name, "an end point"


def _unless_known(
    unit: Unit, file: str, path: FieldPath, name: str, wanted: str
) -> Iterator[Finding]:
    by_kind: dict[str, Collection[str]] = {
        "motif": unit.dance.motifs,
        "development": unit.dance.developments,
        "section": unit.dance.sections,
        "choice": unit.dance.choices,
        "end point": unit.end_points,
    }
    known = [n for kind, names in by_kind.items() if kind in wanted for n in names]
    if name in known:
        return
    field = next(p for p in reversed(path) if isinstance(p, str))
    kinds = [kind for kind, names in by_kind.items() if name in names]
    if kinds:
        yield Finding(
            file,
            path,
            f"`{name}` is {_a(kinds[0])}, but `{field}` takes {wanted}",
            "name it in `develops`"
            if (field, kinds[0]) == ("makes", "development")
            else f"use {_one_of(known)}",
        )
        return
    if field in _TAKES_WHOLE:
        known.append(WHOLE)
    if (letter := _letter_in(name)) in known:
        near: str | None = letter
    else:
        near = _near(name, known)
    yield Finding(
        file,
        path,
        f"`{field}` names `{name}`, but the unit has no {wanted.partition(' ')[2]} of that name",
        f"did you mean `{near}`?" if near else _one_of_several(name, known),
    )


def _letter_in(name: str) -> str:
    """The letter in a section's name as teachers say it: Part A, which is read as part-a."""
    found = _LETTER.fullmatch(name)
    return f"{found[1].upper()}{found[2]}" if found else ""


def _near(name: str, known: Collection[str]) -> str | None:
    return WHOLE if WHOLE in known and WHOLE in name.split("-") else nearest(name, known)


def _one_of_several(name: str, known: Collection[str]) -> str:
    """Use one of those known; where the name is a word of one, that it was parted at its "and"."""
    whole = [one for one in known if name in one.split("-") and "and" in one.split("-")]
    if len(whole) == 1:
        return f"write `{whole[0]}`, with its hyphens, since an “and” parts two names"
    return f"use {_one_of(known)}"


def _a(kind: str) -> str:
    return f"an {kind}" if kind[0] in "aeiou" else f"a {kind}"


def _one_of(known: Collection[str]) -> str:
    if not known:
        return "something the unit has, or take the line out"
    return listed([f"`{name}`" for name in known], "or")


def _looking_back(lesson: Lesson, numbers: Collection[int]) -> Iterator[Finding]:
    earlier = sorted({n for n in numbers if n < lesson.number})
    for path, question in _questions(lesson):
        back = question.looks_back_to
        if back is None or back in earlier:
            continue
        yield Finding(
            lesson.file,
            (*path, "looks_back_to"),
            f"the question in lesson {lesson.number} looks back to lesson {back}, which is no "
            "earlier lesson of the unit",
            f"look back to lesson {listed([str(n) for n in earlier], 'or')}"
            if earlier
            else "take `looks_back_to` out of the first lesson",
        )


def _questions(lesson: Lesson) -> Iterator[tuple[FieldPath, Question]]:
    def numbered(
        path: FieldPath, questions: Iterable[Question]
    ) -> Iterator[tuple[FieldPath, Question]]:
        for n, question in enumerate(questions):
            yield (*path, n), question

    for index, step in enumerate(lesson.steps):
        yield from numbered(("steps", index, "ask"), step.ask)
    if lesson.look_and_talk:
        yield from numbered(("look_and_talk", "questions"), lesson.look_and_talk.questions)
