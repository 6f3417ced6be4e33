"""A unit holds no pupil's name, no address and nothing by which a person can be found.

Units travel from school to school and stay for years. What is about one child or one adult stays
in the school. Makers and publishers are named only in the fields meant for them; people of a story
and its makers may be named once the stimulus names them.

Bad:
    with: Two Year 4 classes; ask office@school.example
Good:
    with: Two Year 4 classes
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.many_texts import bits_of
from build_tools.sentences.names import FIRST_NAMES, TITLES
from build_tools.sentences.people import (
    ONE_CHILD,
    PUPIL_NAMED,
    named_person,
    one_child,
    titled,
)
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.reading.syllables import listed_words
from build_tools.views.written.unit_text import UnitText, named, place_of, unit_text
from build_tools.views.written.works import works_written

GRADE: Grade = "question"
SOURCE = "UK General Data Protection Regulation, article 5(1)(c): data minimisation"

# RFC 5321, 4.5.3.1, and RFC 1035, 2.3.4: 64 letters before the sign, 63 between two dots
_EMAIL = re.compile(r"[\w.+-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63})+")
_PHONE = re.compile(r"(?<![\w.])(?:\+44[ -]?\(?0?\)?|\(?0)\d(?:[ ()-]{0,2}\d){8,9}(?![\w.]?\d)")
_PUPIL_NUMBER = re.compile(r"(?<!\w)[A-Z]\d{11}[0-9A-Z](?!\w)")
_STREETS = (
    "Close|Road|Rd|Street|St|Lane|Avenue|Ave|Drive|Way|Court|Gardens|Terrace|Crescent|Place|Hill|"
    "Grove|Row|Square|Walk|Mews|Rise|Park|View|Green"
)
_ADDRESS = re.compile(rf"\b\d{{1,4}}[a-z]? (?:[A-Z][\w’'-]+ ){{1,3}}(?:{_STREETS})\b")
_POSTCODE = re.compile(r"\b[A-Z]{1,2}\d[A-Z\d]? \d[A-Z]{2}\b")
_CAPITAL = re.compile(r"\b[A-Z][\w’'-]+")
_CAPITAL_INSIDE = re.compile(r" (?<=[a-z,;] )[A-Z][a-z]")
_TITLES = frozenset(title.lower() for title in TITLES)
_UPN_LENGTH = 13
_OPEN = frozenset({"title", "says", "stage", "met_by", "words", "sound", "in_words", "front"})
"""Kinds of fields that name works, curricula and words of the trade."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field that holds something that points to one person."""
    yield from _credits(unit)
    text = unit_text(unit)
    looks = _Looks.at(text)
    for file, one in text.at(looks.worth_a_look(text)):
        found = looks.what_in(one)
        if found is None:
            continue
        where = f"`{one.kind}` holds" if one.path else f"`{named(file)}`, below its fields, holds"
        yield Finding(
            file,
            place_of(one, found.said),
            f"{where} what looks like {found.what}",
            "leave it out, or say it of any pupil or teacher: units are passed on to others",
        )


def _credits(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each credit from which a pupil can be found."""
    credits: list[tuple[str, FieldPath, str | None]] = [(unit.file, ("credit",), unit.credit)]
    credits += [(one.file, (*one.path, "by"), one.work.by) for one in works_written(unit)]
    for file, path, text in credits:
        if said := PUPIL_NAMED.said(text):
            yield Finding(
                file,
                path,
                f"`{path[-1]}` holds what looks like a pupil, by age, class or school "
                f'("{said.text}")',
                "name the class's year or the school's own wish: pupils of a Year 4 class",
            )


@dataclass(frozen=True, slots=True)
class _Held:
    """What looks like a person's own: what it is, and the words of it."""

    what: str
    said: str


@dataclass(frozen=True, slots=True)
class _Looks:
    """What of a unit's text is worth a closer look; most of it is not."""

    patterns: tuple[tuple[str, re.Pattern[str]], ...]
    titles: bool
    names: bool
    """Whether a common first name stands anywhere."""
    known: frozenset[str]
    """Words with a capital in the stimulus and the title: people of its story, and its makers."""
    children: int
    """The fields that say something about one child, a bit each."""

    @classmethod
    def at(cls, text: UnitText) -> _Looks:
        """Look over the whole text of a unit once."""
        return cls(
            patterns=tuple(_worth_trying(text)),
            titles=not _TITLES.isdisjoint(text.words),
            names=not FIRST_NAMES.isdisjoint(text.words),
            known=frozenset(_of_the_stimulus(text)),
            children=bits_of([found.number for found in text.saying(ONE_CHILD)]),
        )

    def worth_a_look(self, text: UnitText) -> int:
        """The fields in which something could be found, a bit each."""
        if self.patterns or self.titles or self.names:
            return text.every
        return self.children | text.matching(_CAPITAL_INSIDE)

    def what_in(self, one: FieldText) -> _Held | None:
        """What of a person a field holds."""
        for what, pattern in self.patterns:
            if held := pattern.search(one.text):
                return _Held(what, held.group())
        if one.path[:1] == ("stimulus",) or one.kind in _OPEN:
            return None
        name = titled(one.text) if self.titles else None
        if name is None and (self.names or _CAPITAL_INSIDE.search(one.text)):
            name = named_person(one.text, _common_words, self.known)
        if name:
            return _Held(f'a person\'s name ("{name}")', name)
        said = one_child(one.text) if self.children else None
        return _Held(f'something about one child ("{said.text}")', said.text) if said else None


def _worth_trying(text: UnitText) -> Iterator[tuple[str, re.Pattern[str]]]:
    """The patterns that this text could fit; the rest are not looked for field by field."""
    figures = [word for word in text.words if word[0].isdigit()]
    with_figures = "\n".join(one.text for _, one in text.at(text.holding(figures)))
    if text.containing("@"):
        yield "an e-mail address", _EMAIL
    if "+44" in with_figures or any(word[0] == "0" and len(word) > 2 for word in figures):
        yield "a telephone number", _PHONE
    if any(word[1:12].isdigit() for word in [w for w in text.words if len(w) == _UPN_LENGTH]):
        yield "a unique pupil number", _PUPIL_NUMBER
    if any(street in with_figures for street in _STREETS.split("|")) and _ADDRESS.search(
        with_figures
    ):
        yield "an address", _ADDRESS
    if _POSTCODE.search(with_figures):
        yield "a postcode", _POSTCODE


def _of_the_stimulus(text: UnitText) -> Iterator[str]:
    for one in text.documents[0][1]:
        if one.path[:1] in (("stimulus",), ("title",), ("summary",)):
            yield from (word.lower() for word in _CAPITAL.findall(one.text))


@cache
def _common_words() -> frozenset[str]:
    return listed_words()
