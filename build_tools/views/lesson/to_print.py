"""What a class needs on paper for a lesson besides strips: pictures, texts, cards and signs."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.model.work import Work
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.views.lesson.asked_to_get import Kind, asked
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.device_cards import device_words
from build_tools.views.lesson.handouts import action_words, copies_for, strips_to_hand
from build_tools.views.words.words_of_text import words_of_text

_ALL = re.compile(r"\b(?:both|all|drawings|pictures)\b", re.IGNORECASE)
_HEADING = re.compile(r"^#{1,6} +(?P<title>.+?)\s*$", re.MULTILINE)
_HEARD = ".mp3"
"""The end of a recording's name: it is played, not printed."""
_LITTLE = frozenset({"the", "and", "of", "a", "an", "at", "in", "on", "both", "all", "drawing"})


@dataclass(frozen=True, slots=True)
class CardSet:
    """Cards of one kind: what stands on each, and how many sets a class needs."""

    kind: Kind
    cards: tuple[str, ...]
    grouping: str | None
    """The grouping of which each group has a set; None where one set is for the class."""
    sets: int

    @property
    def anchor(self) -> str:
        """Its place on the page to print."""
        return f"{self.kind}-sets" if self.grouping else str(self.kind)


@dataclass(frozen=True, slots=True)
class ToPrint:
    """What is printed for one lesson, or for several."""

    pictures: tuple[Work, ...]
    texts: tuple[Work, ...]
    cards: tuple[CardSet, ...]


def to_print(unit: Unit, lessons: Sequence[Lesson], pupils: int = USUAL_CLASS) -> ToPrint:
    """What the lists "What to get" of `lessons` ask for, each thing once."""
    pictures: dict[str, Work] = {}
    texts: dict[str, Work] = {}
    sets: dict[tuple[Kind, str | None], CardSet] = {}
    for lesson in lessons:
        for line in lesson.collect:
            kinds = asked(line).kinds
            if Kind.PICTURES in kinds:
                pictures |= {one.title: one for one in _meant(unit, lesson, line, drawn=True)}
            if Kind.TEXTS in kinds:
                texts |= {one.title: one for one in _meant(unit, lesson, line, drawn=False)}
            for found in _cards(unit, lesson, line, pupils):
                key = (found.kind, found.grouping)
                sets[key] = _together(sets.get(key), found)
        pictures |= {one.title: one for one in lesson.pictures}
        words = _card_words(unit, lesson)
        if words:
            own = CardSet(Kind.WORDS, words, None, 1)
            sets[Kind.WORDS, None] = _together(sets.get((Kind.WORDS, None)), own)
    order = list(Kind)
    return ToPrint(
        tuple(pictures.values()),
        tuple(texts.values()),
        tuple(sorted(sets.values(), key=lambda one: (order.index(one.kind), one.sets))),
    )


def where_to_get(unit: Unit, lesson: Lesson, line: str) -> str | None:
    """The address, seen from the lesson's page, where the first thing of a line is to be had.

    None where it is neither printed nor heard.
    """
    printed = to_print(unit, (lesson,))
    anchors = {one.anchor for one in printed.cards}
    anchors |= {str(Kind.PICTURES)} if printed.pictures else set()
    anchors |= {str(Kind.TEXTS)} if printed.texts else set()
    found = asked(line)
    for kind in found.kinds:
        if kind is Kind.SOUND and unit.dance.tempo:
            return "counts.html"
        for anchor in ([f"{kind}-sets"] if found.each else []) + [str(kind)]:
            if anchor in anchors:
                return f"to-print.html#lesson-{lesson.number}-{anchor}"
    return None


def text_of(unit: Unit, item: Work) -> str:
    """A poem, story or rhythm in full, as Markdown: set out as in the unit's notes where they have
    it, and without what the notes say besides.
    """
    whole = _letters(item.text_version or "")
    headings = list(_HEADING.finditer(unit.notes))
    for place, heading in enumerate(headings):
        if item.title.casefold() in heading["title"].casefold():
            end = headings[place + 1].start() if place + 1 < len(headings) else len(unit.notes)
            found = unit.notes[heading.end() : end].strip().split("\n\n")
            return "\n\n".join(part for part in found if _letters(part) in whole)
    # a line of a poem ends where it was written to end
    return re.sub(r"(?<=\S)[ \t]*\n(?=[ \t]*\S)", "\\\\\n", (item.text_version or "").strip())


def _letters(text: str) -> str:
    return "".join(letter for letter in text.casefold() if letter.isalnum())


def _meant(unit: Unit, lesson: Lesson, line: str, drawn: bool) -> tuple[Work, ...]:
    """The items that a line asks for: by words of their titles, else all of the unit's.

    A line that names a picture of the lesson's own means that, which is printed anyway.
    """
    items = tuple(
        item
        for item in unit.stimulus.items
        if bool(item.file) == drawn and not (item.file or "").endswith(_HEARD)
    )
    named = _names(line)
    own = lesson.pictures if drawn else ()
    if any(named & _names(one.title) for one in own):
        items = ()
    chosen = tuple(item for item in items if named & _names(item.title))
    if chosen and not (drawn and _ALL.search(line)):
        return chosen
    return items


def _names(words: str) -> set[str]:
    return set(words_of_text(words)) - _LITTLE


def _cards(unit: Unit, lesson: Lesson, line: str, pupils: int) -> Iterable[CardSet]:
    """The cards and signs that a line names."""
    found = asked(line)
    grouping = _grouping(lesson) if found.each else None
    sets = copies_for(unit, lesson, grouping, pupils) if grouping else 1
    for kind in found.kinds:
        if kind is Kind.LETTERS:
            letters = found.names or tuple(letter.rstrip("'") for letter in unit.dance.form)
            yield CardSet(kind, letters, grouping, sets)
        elif kind is Kind.DEVICES and (devices := device_words(unit, line)):
            yield CardSet(kind, devices, grouping, sets)
        elif kind in (Kind.NUMBERS, Kind.SIGNS, Kind.WORDS) and found.names:
            yield CardSet(kind, found.names, grouping, sets)


def _grouping(lesson: Lesson) -> str:
    """The largest groups that the lesson works in."""
    sizes = [step.grouping for step in lesson.steps if GROUP_SIZES.get(step.grouping, 0) > 1]
    return max(sizes, key=lambda one: GROUP_SIZES[one], default="fours")


def _card_words(unit: Unit, lesson: Lesson) -> tuple[str, ...]:
    return action_words(unit.dance, tuple(one.name for one in strips_to_hand(unit, lesson)))


def _together(one: CardSet | None, other: CardSet) -> CardSet:
    if one is None:
        return other
    more = other.cards
    if other.kind in (Kind.WORDS, Kind.SIGNS, Kind.NUMBERS, Kind.DEVICES):
        known = {word.casefold() for word in one.cards}
        more = tuple(word for word in other.cards if word.casefold() not in known)
        return CardSet(one.kind, (*one.cards, *more), one.grouping, max(one.sets, other.sets))
    longer = max(one.cards, other.cards, key=len)
    return CardSet(one.kind, longer, one.grouping, max(one.sets, other.sets))
