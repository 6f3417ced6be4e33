"""Everything that is written in a unit and its lessons, with its place: for rules about wording.

Names of makers and places (`by`, `publisher`, `credit`, `source`) are left out.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property, reduce
from operator import or_

from build_tools.model.dance import Action, Heard, Section, Sound
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath
from build_tools.sentences.many_sentences import ManySentences
from build_tools.sentences.many_texts import ManyTexts, numbers_of
from build_tools.sentences.sayings import Said, Saying
from build_tools.views.reading.lesson_text import FieldText, text_by_field

DOING = frozenset({"does", "into", "say", "task", "you", "harder"})
"""The fields of a step that say what is done in it, by pupils and by who teaches them."""


@dataclass(frozen=True)
class UnitText:
    """The fields of each document, the notes below last under the kind `notes`.

    What is asked of them all is looked for in one index, made once: for each word, and for each
    kind of field, a number with a bit set for each sentence that holds it, or is of it.
    """

    documents: tuple[tuple[str, tuple[FieldText, ...]], ...]
    """The unit's document, then each lesson's: its file and its fields."""

    def saying(
        self,
        what: Saying,
        kinds: Collection[str] = (),
        meant: bool = True,
        at: Callable[[FieldPath], bool] | None = None,
    ) -> Iterator[Found]:
        """Every field, of `kinds` if any are named, that says `what`, in order.

        With `meant`, only those where it is neither denied nor only likened; with `at`, only those
        at places of which it says yes.
        """
        ask = what.said if meant else what.mentioned
        among = self._of_kinds(kinds) if kinds else self._sentences.every
        found = -1
        for number, sentence in self._sentences.that_may_say(what, among):
            document, one = self._fields[number]
            if number == found or (at is not None and not at(one.path)):
                continue
            if said := ask(sentence):
                found = number
                yield Found(number, document, self.documents[document][0], one, said)

    def at(self, fields: int) -> Iterator[tuple[str, FieldText]]:
        """The fields with a bit each in `fields`, in order, each with its file."""
        for number in numbers_of(fields):
            document, one = self._fields[number]
            yield self.documents[document][0], one

    def holding(self, words: Iterable[str]) -> int:
        """The fields with one of the words, split at hyphens and apostrophes, a bit each."""
        return self._sentences.texts_with(words)

    def containing(self, letters: str) -> int:
        """The fields that contain the letters as they are, a bit each."""
        return self._texts.containing(letters)

    def matching(self, pattern: re.Pattern[str]) -> int:
        """The fields in which the pattern is found, which asks for no start or end of a text."""
        return self._texts.matching(pattern)

    @property
    def every(self) -> int:
        """A bit for each field."""
        return (1 << len(self._fields)) - 1

    @property
    def words(self) -> frozenset[str]:
        """Every word of it in small letters, split at hyphens and apostrophes."""
        return self._sentences.words

    @cached_property
    def _fields(self) -> tuple[tuple[int, FieldText], ...]:
        """Every field in order, with the number of its document."""
        return tuple(
            (number, one) for number, (_, fields) in enumerate(self.documents) for one in fields
        )

    @cached_property
    def _texts(self) -> ManyTexts:
        return ManyTexts([one.text for _, one in self._fields])

    @cached_property
    def _sentences(self) -> ManySentences:
        return ManySentences([one.text for _, one in self._fields])

    def _of_kinds(self, kinds: Collection[str]) -> int:
        """The sentences of these kinds of fields, a bit each."""
        return reduce(or_, (self._bits_of_kind.get(kind, 0) for kind in kinds))

    @cached_property
    def _bits_of_kind(self) -> Mapping[str, int]:
        """For each kind of field its sentences, a bit each."""
        found: dict[str, list[int]] = defaultdict(list)
        for number, (_, one) in enumerate(self._fields):
            found[one.kind].append(number)
        return {kind: self._sentences.of_texts(numbers) for kind, numbers in found.items()}


@dataclass(frozen=True, slots=True)
class Found:
    """A field that says something: `document` is 0 for the unit's own and n for its nth lesson.

    `number` is its place among all fields of the unit; `said` is of the sentence that says it.
    """

    number: int
    document: int
    file: str
    field: FieldText
    said: Said

    @property
    def path(self) -> FieldPath:
        """Where it says so: the field, or the line of the notes."""
        return place_of(self.field, self.said.text)


def place_of(one: FieldText, said: str) -> FieldPath:
    """The place of a field; in the notes below the fields, the line on which `said` begins."""
    if one.path or said not in one.text:
        return one.path
    return ("notes", one.text[: one.text.index(said)].count("\n"))


class _Latest:
    """The unit read last. Two dozen rules ask for its text one after another."""

    kept: tuple[Unit | None, UnitText] = (None, UnitText(()))


def unit_text(unit: Unit) -> UnitText:
    """All that is written in `unit`."""
    kept, text = _Latest.kept
    if kept is not unit:
        documents = [(unit.file, (*fields_of_unit(unit), FieldText((), "notes", unit.notes)))]
        for lesson in unit.lessons:
            notes = FieldText((), "notes", lesson.notes)
            documents.append((lesson.file, (*text_by_field(lesson), notes)))
        text = UnitText(tuple(documents))
        _Latest.kept = (unit, text)
    return text


def fields_of_lesson(unit: Unit, lesson: Lesson) -> tuple[FieldText, ...]:
    """What is written in a lesson of the unit, the notes below last, read once for all."""
    number = next(n for n, one in enumerate(unit.lessons, 1) if one is lesson)
    return unit_text(unit).documents[number][1]


def named(file: str) -> str:
    """A document as its author calls it: lesson-2.md."""
    return file.rpartition("/")[2]


def fields_of_unit(unit: Unit) -> Iterator[FieldText]:
    """Every text in the fields of the unit's own document but names of makers and places."""
    yield FieldText(("title",), "title", unit.title)
    yield FieldText(("summary",), "summary", unit.summary)
    yield from _written(
        ("stimulus",), unit.stimulus, ("what", "show", "where", "look_for", "content_note")
    )
    for n, item in enumerate(unit.stimulus.items):
        yield from _written(("stimulus", "items", n), item, ("title", "changes", "text_version"))
    for name, end in unit.end_points.items():
        kinds = ("every_pupil", "looks_like", "getting_there", "going_further")
        yield from _written(("end_points", name), end, kinds)
    for n, skill in enumerate(unit.skills):
        yield from _written(("skills", n), skill, ("skill", "catch_up"))
    yield from _dance(unit)
    for n, link in enumerate(unit.curriculum):
        yield from _written(("curriculum", n), link, ("stage", "says", "met_by"))
    for field, text in (
        ("builds_on", unit.builds_on.in_words),
        ("leads_to", unit.leads_to.in_words),
    ):
        yield FieldText((field, "in_words"), "in_words", text)
    for word, plain in unit.words.items():
        yield FieldText(("words", word), "words", f"{word}: {plain}")
    yield from _listed(("safety",), unit.safety)
    yield FieldText(("kit", "wear"), "wear", unit.kit.wear)
    yield from _listed(("kit", "collect"), unit.kit.collect)
    yield FieldText(("kit", "without_props"), "without_props", unit.kit.without_props)
    for_space = ("hall", "half_hall", "classroom", "who_sits_does", "who_sits_where")
    yield from _written(("space",), unit.space, for_space)
    for name, reason in unit.allow.items():
        yield FieldText(("allow", name), "allow", reason)
    for n, reading in enumerate(unit.read_by):
        yield from _written(("read_by", n), reading, ("role", "found"))
    for field, written in (
        ("with", unit.tried.with_whom),
        ("where", unit.tried.where),
        ("changed", unit.tried.changed),
    ):
        if written:
            yield FieldText(("tried", field), field, written)


def _dance(unit: Unit) -> Iterator[FieldText]:
    dance = unit.dance
    yield FieldText(("dance", "front"), "front", dance.front)
    yield FieldText(("dance", "sound", "what"), "sound", dance.sound.what)
    for letter, section in dance.sections.items():
        for field in _section(("sections", letter), section, dance.sound):
            # what a changed return does not write is read where the first section writes it
            if section.returns is None or field.path[2] in section.changes:
                yield field
    for name, motif in dance.motifs.items():
        yield FieldText(("motifs", name, "idea"), "idea", motif.idea)
        for n, action in enumerate(motif.actions):
            yield from _action(("motifs", name, "actions", n), action)
    for name, d in dance.developments.items():
        if d.body_part:
            yield FieldText(("developments", name, "body_part"), "body_part", d.body_part)
        if d.replacement:
            yield from _action(("developments", name, "replace", "by"), d.replacement)
        for n, addition in enumerate(d.added):
            yield from _action(("developments", name, "add", n, "action"), addition.action)
    for n, transition in enumerate(dance.transitions):
        yield from _written(("transitions", n), transition, ("how", "cue"))
        yield from _heard(("transitions", n), transition.heard)
    for name, choice in dance.choices.items():
        yield from _written(("choices", name), choice, ("what", "if_not"))
        for n, option in enumerate(choice.options):
            yield FieldText(("choices", name, "from", n), "option", option)
    for n, part in enumerate(dance.ending):
        yield from _written(("ending", n), part, ("who", "does"))


def _section(path: FieldPath, section: Section, usual: Sound) -> Iterator[FieldText]:
    yield FieldText((*path, "idea"), "idea", section.idea)
    if section.name:
        yield FieldText((*path, "name"), "name", section.name)
    kind = section.kind
    if section.improvised_from:
        yield FieldText((*path, kind, "start"), "start", section.improvised_from)
    for n, rule in enumerate(section.improvised_rules):
        yield FieldText((*path, kind, "rules", n), "rules", rule)
    if section.ends_on:
        yield FieldText((*path, kind, "ends_on"), "ends_on", section.ends_on)
    for side, standing in (("start", section.start), ("end", section.end)):
        yield FieldText((*path, side, "place"), "place", standing.place)
    for n, passage in enumerate(section.danced):
        if passage.who:
            yield FieldText((*path, "danced", n, "who"), "who", passage.who)
    if section.sound is not usual:
        yield FieldText((*path, "sound", "what"), "sound", section.sound.what)
    yield from _heard(path, section.heard)


def _heard(path: FieldPath, heard: tuple[Heard, ...]) -> Iterator[FieldText]:
    for n, piece in enumerate(heard):
        for m, word in enumerate(piece.says):
            if word != "-":
                yield FieldText((*path, "heard", n, "says", m), "says", word)


def _action(path: FieldPath, action: Action) -> Iterator[FieldText]:
    if action.word:
        yield FieldText((*path, "as"), "as", action.word)
    if action.body_part:
        yield FieldText((*path, "body_part"), "body_part", action.body_part)


def _written(path: FieldPath, holder: object, kinds: Iterable[str]) -> Iterator[FieldText]:
    for kind in kinds:
        text: str | None = getattr(holder, kind)
        if text:
            yield FieldText((*path, kind), kind, text)


def _listed(path: FieldPath, texts: Iterable[str]) -> Iterator[FieldText]:
    for n, text in enumerate(texts):
        yield FieldText((*path, n), str(path[-1]), text)
