"""The language that a unit names is the one that it is written in.

A screen reader speaks a page by the language it names, and says English in Welsh sounds where that
is wrong. The rules that read English leave a unit alone that names another language.

Bad:
    language: cy
    notes: The class makes one dance of about two minutes.
Good:
    language: en-GB
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
SOURCE = "Web Content Accessibility Guidelines 2.2, success criterion 3.1.1: Language of Page"

_ENGLISH = frozenset(["the", "and", "of", "with", "your", "they", "from", "that", "each", "this"])
"""Little words that stand all through an English text, and are none in Welsh, Irish or French."""
_ENOUGH = 400
"""So many words are counted, from the start of the first lesson; they tell as much as all."""
_FEWEST = 100
"""In fewer words than this, little words may be missing by chance."""
_SOME, _MANY = 4, 8
"""Little words in 100: the units here have 13 to 23, by count; a text in Welsh has none."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the little words are not those of the language named."""
    words = list(islice(_words(unit), _ENOUGH))
    if len(words) < _FEWEST:
        return
    share = 100 * sum(word in _ENGLISH for word in words) // len(words)
    names_english = unit.language.partition("-")[0].lower() == "en"
    if share >= _MANY and not names_english:
        yield Finding(
            unit.file,
            ("language",),
            f"`language` is {unit.language}, but {share} words in 100 are little words of English",
            "write `language: en-GB`, or the text in the language named",
        )
    if share < _SOME and names_english:
        yield Finding(
            unit.file,
            ("language",),
            f"`language` is {unit.language}, but only {share} words in 100 are little words of "
            "English",
            "write the language that the text is in, such as `cy` for Welsh",
        )


def _words(unit: Unit) -> Iterator[str]:
    """The words of the lessons, in small letters, as they are read on."""
    for _, fields in unit_text(unit).documents[1:]:
        for one in fields:
            yield from (word.strip(".,;:?!()").lower() for word in one.text.split())
