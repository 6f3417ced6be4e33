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
from collections.abc import Callable, Iterator, Mapping

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement import forms
from build_tools.movement.development import roots
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
SOURCE = (
    "NSW Department of Education, HSC dance (binary, ternary, rondo); Ontario Arts Curriculum "
    "2010, glossary (ternary)"
)
NEEDS = ("unknown-name",)

_LETTER = re.compile(r"\b[A-Z]\b")
_READ = ("summary", "idea", "words", "say", "task", "does", "title", "focus", "pupils_make")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first text that names each form which the letters are not."""
    dance, text = unit.dance, unit_text(unit)
    named = [name for name in _FORMS if name in text.lower]
    if not named or any(_FORMS[name](dance) for name in named):
        return
    if dance.order_choice and not _each_comes_once(dance):
        return
    if dance.order_choice and "theme and variations" in named:
        return
    letters = " ".join(dance.form)
    for name in named:
        found = next(
            (
                (file, field)
                for file, fields in text.documents
                for field in fields
                if field.kind in _READ
                and name in field.text.lower()
                and f"not a {name}" not in field.text.lower()
            ),
            None,
        )
        if found:
            file, field = found
            said = _SAID.get(name, f"a {name}")
            yield Finding(
                file,
                field.path,
                f"the words name {said}, but `form` is {letters}: {forms.name(dance.form)}",
                f"leave the name out, or order the sections of {letters} as {said} has them",
            )


def _each_comes_once(dance: Dance) -> bool:
    """Whether every section comes once in every order that pupils may choose."""
    choice = dance.choices.get(dance.order_choice or "")
    options = choice.options if choice else ()
    orders = (dance.form, *(_LETTER.findall(option) for option in options))
    return all(len(set(order)) == len(order) for order in orders)


def _is_variations(dance: Dance) -> bool:
    """Whether everything danced comes from what the first section is made of."""
    first = dance.sections[dance.form[0]]
    theme = {m for passage in first.danced for name in passage.what for m in roots(dance, name)}
    rest = {
        m
        for section in dance.sections.values()
        for passage in section.danced
        for name in passage.what
        for m in roots(dance, name)
    }
    return rest <= theme


_FORMS: Mapping[str, Callable[[Dance], bool]] = {
    "rondo": lambda dance: forms.is_rondo(dance.form),
    "ternary": lambda dance: forms.is_ternary(dance.form),
    "binary form": lambda dance: forms.is_binary(dance.form),
    "cumulative form": lambda dance: forms.is_cumulative(dance.form),
    "arch form": lambda dance: forms.is_palindrome(dance.form) or forms.is_ternary(dance.form),
    "palindrome": lambda dance: forms.is_palindrome(dance.form) or forms.is_ternary(dance.form),
    "theme and variations": _is_variations,
}
"""Names as they stand in a text. Binary and arch alone may mean numbers or a bent back."""
_SAID = {
    "ternary": "a ternary form",
    "arch form": "an arch form",
    "theme and variations": "theme and variations",
}
