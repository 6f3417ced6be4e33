"""A form that is named is the form the letters of the dance have.

A rondo comes back to A between any two episodes; A B C D A comes back once and is none. Pupils
who are taught the name for the wrong thing carry it with them. Where a text names a form that
fits as well, others may be named beside it. Where pupils decide the order, a name is wrong if no
order of the sections has that form.

Bad:
    form: A B C D A
    summary: A rondo of a rock pool.
Good:
    form: A B A C A
    summary: A rondo of a rock pool.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement import forms
from build_tools.movement.letters import all_unmarked
from build_tools.movement.theme import all_from_the_first
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.forms_named import (
    ARCH,
    BINARY,
    CUMULATIVE,
    PALINDROME,
    RONDO,
    TERNARY,
    VARIATIONS,
    VERSE_AND_CHORUS,
    letters_said,
    parts_said,
)
from build_tools.sentences.sayings import Saying
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "NSW Department of Education, HSC dance (binary, ternary, rondo); Ontario Arts Curriculum "
    "2010, glossary (ternary)"
)
NEEDS = ("unknown-name",)

_LETTER = re.compile(r"\b[A-Z]\b")
_READ = ("summary", "idea", "words", "say", "task", "does", "title", "focus", "pupils_make")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first text that names each form which the letters are not."""
    dance = unit.dance
    if dance.order_choice and not _each_comes_once(dance):
        return
    found = _named(unit)
    right = any(form.fits(dance) for form in found)
    for form, (file, path) in found.items():
        if right or (dance.order_choice and form.said == "theme and variations"):
            continue
        yield _finding(dance, file, path, form.said)
    for path, said in _in_figures(unit):
        yield _finding(dance, unit.file, path, said)


def _named(unit: Unit) -> dict[_Form, tuple[str, FieldPath]]:
    """The forms that texts name, each with the first place."""
    text = unit_text(unit)
    found = {}
    for form in _FORMS:
        first = next(iter(text.saying(form.words, _READ)), None)
        if first is not None:
            found[form] = (first.file, first.field.path)
    return found


def _in_figures(unit: Unit) -> Iterator[tuple[FieldPath, str]]:
    """What title and summary say of the letters or of how many parts there are."""
    dance = unit.dance
    if dance.order_choice:
        return
    for field, text in (("title", unit.title), ("summary", unit.summary)):
        letters, parts = letters_said(text), parts_said(text)
        if letters and letters not in (dance.form, all_unmarked(dance.form)):
            yield (field,), f"the form {' '.join(letters)}"
        elif parts is not None and parts not in _numbers_of_parts(dance):
            yield (field,), f"a dance of {parts} parts"


def _numbers_of_parts(dance: Dance) -> tuple[int, ...]:
    """How many parts the dance may be said to have; A come back changed is A or one of its own."""
    form = dance.form
    return len(form), len(set(form)), len(set(all_unmarked(form)))


def _finding(dance: Dance, file: str, path: FieldPath, said: str) -> Finding:
    letters = " ".join(dance.form)
    return Finding(
        file,
        path,
        f"the words name {said}, but `form` is {letters}: {forms.name(dance.form)}",
        f"leave the name out, or order the sections of {letters} as {said} has them",
    )


def _each_comes_once(dance: Dance) -> bool:
    """Whether every section comes once in every order that pupils may choose."""
    choice = dance.choices.get(dance.order_choice or "")
    options = choice.options if choice else ()
    orders = (all_unmarked(dance.form), *(_LETTER.findall(option) for option in options))
    return all(len(set(order)) == len(order) for order in orders)


def _comes_between(form: Sequence[str]) -> bool:
    """Whether one section comes back every other time: verse, chorus, verse, chorus."""
    form = all_unmarked(form)
    return any(len(form) > 3 and len(set(form[at::2])) == 1 for at in (0, 1))


def _is_there_and_back(dance: Dance) -> bool:
    return forms.is_palindrome(dance.form) or forms.is_ternary(dance.form)


@dataclass(frozen=True, slots=True, eq=False)
class _Form:
    """A form: how it is called, how texts say it, and whether a dance has it."""

    said: str
    words: Saying
    fits: Callable[[Dance], bool]


_FORMS = (
    _Form("a rondo", RONDO, lambda dance: forms.is_rondo(dance.form)),
    _Form("a ternary form", TERNARY, lambda dance: forms.is_ternary(dance.form)),
    _Form("a binary form", BINARY, lambda dance: forms.is_binary(dance.form)),
    _Form("a cumulative form", CUMULATIVE, lambda dance: forms.is_cumulative(dance.form)),
    _Form("an arch form", ARCH, _is_there_and_back),
    _Form("a palindrome", PALINDROME, _is_there_and_back),
    _Form("theme and variations", VARIATIONS, all_from_the_first),
    _Form("verse and chorus", VERSE_AND_CHORUS, lambda dance: _comes_between(dance.form)),
)
