"""One lesson of a draft from what stands under its heading."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from build_tools.drafting.from_document.labels import LESSON_LABELS, SECTIONS, key, label_of
from build_tools.drafting.from_document.leftover import Leftover, put, under
from build_tools.drafting.from_document.lesson_parts import PARTS, SAID_ANYWAY
from build_tools.drafting.from_document.splitting import NUMBERED, Stretch
from build_tools.drafting.from_document.step_values import MOST_MINUTES, Fields
from build_tools.drafting.from_document.steps_found import (
    finished,
    is_step,
    missing_step,
    steps_in,
    unread_table,
)
from build_tools.drafting.plan import still
from build_tools.word_files.blocks import Block, Heading, Paragraph, Picture, Table, words

_LEAST_STEPS, _MOST_STEPS = 3, 10
_TITLE, _MAKE = 50, 200
_LEAST_MAKE = 10
_LONG = re.compile(r"(\d{1,3}) minutes\.\s*")
_AFTER_TALK = ("where lesson ", "where the class goes from here")
_IN_SHORT = "the lesson in short"
_SHORT_LINE = re.compile(r"\d{1,3} to \d{1,3}: ")
_SHORT_PARTS = re.compile(r"; (?=\d{1,2}\.)")
_NUMBER = re.compile(r"\d{1,2}\.\s+")
_TROUBLE = ("stuck", "finished", "loud", "will_not_join", "short_of_time", "sound_fails")
_ORDER = ("lesson", "title", "focus", "pupils_make", "minutes", "collect", "classroom_first",
          "story_so_far", "never_did_last", "steps", "look_and_talk", "change", "if",
          "not_dancing", "safety", "words")  # fmt: skip


@dataclass(slots=True)
class LessonFound:
    """A lesson's fields, and what is in none of them."""

    number: int
    fields: Fields = field(default_factory=dict)
    steps: list[Fields] = field(default_factory=list)
    left: Leftover = field(default_factory=Leftover)


@dataclass(slots=True)
class _Here:
    """Where in a lesson the reader is: under which heading, and which part of a lesson that is."""

    heading: str = ""
    part: str = ""
    level: int = 0

    @property
    def where(self) -> str:
        """The place in words."""
        return under(self.heading) if self.heading else "under the lesson’s heading"


def lesson_found(stretch: Stretch, number: int) -> LessonFound:
    """The lesson `number` of a draft, complete in shape, its open places marked."""
    found = LessonFound(number)
    _title(found, stretch.heading)
    here = _Here()
    blocks = stretch.inside
    for n, block in enumerate(blocks):
        match block:
            case Heading():
                if not _over_a_step(blocks, n):
                    _enter(found, here, block)
            case Table():
                over = blocks[n - 1] if n else None
                heading = over.text if isinstance(over, Heading) else ""
                _table(found, here, block, heading if _over_a_step(blocks, n - 1) else "")
            case Picture():
                found.left.keep(f"{here.where}, a picture in words", block.alt)
            case Paragraph():
                _paragraph(found, here, block)
    _without_short_lines(found)
    _complete(found)
    return found


def ordered(found: LessonFound) -> Fields:
    """The fields in the order in which they are written."""
    return {name: found.fields[name] for name in _ORDER if name in found.fields}


def _title(found: LessonFound, heading: str) -> None:
    match = NUMBERED.match(heading)
    if match:
        found.left.labels.add("Lesson")
        if int(match[1]) != found.number:
            found.left.keep("the number in the lesson’s heading", heading)
    title = heading[match.end() :] if match else heading
    put(found.fields, "title", title, "the lesson’s heading", found.left, most=_TITLE, least=3)


def _over_a_step(blocks: Sequence[Block], n: int) -> bool:
    """Whether the block `n` is a heading right over the table of a step."""
    if n < 0 or n + 1 >= len(blocks) or not isinstance(blocks[n], Heading):
        return False
    table = blocks[n + 1]
    return isinstance(table, Table) and is_step(table)


def _enter(found: LessonFound, here: _Here, heading: Heading) -> None:
    name = key(heading.text)
    if here.part == "talk" and name.startswith(_AFTER_TALK):
        found.left.labels.add(heading.text)
        return
    if here.part == "notes" and heading.level > here.level and name not in SECTIONS:
        found.left.notes.append(words(heading.text, "title"))
        return
    here.heading, here.part, here.level = heading.text, SECTIONS.get(name, ""), heading.level
    if here.part:
        found.left.labels.add(heading.text)
    else:
        found.left.keep_heading(heading.text)


def _table(found: LessonFound, here: _Here, table: Table, heading: str) -> None:
    number = len(found.steps) + 1
    if is_step(table) and number <= _MOST_STEPS:
        for fields in steps_in(table, heading, number, found.left):
            at = len(found.steps) + 1
            if at > _MOST_STEPS:
                _unplaced_step(found, fields, at)
                continue
            so_far = sum(int(str(one["minutes"])) for one in found.steps)
            found.steps.append(finished(fields, at, so_far, found.left))
        return
    if heading:
        found.left.keep("a heading over a table", heading)
    where = f"{here.where}, a table"
    if is_step(table):
        where = f"step {number}, for which a lesson has no place"
    for line in unread_table(table):
        found.left.keep(where, line)


def _unplaced_step(found: LessonFound, fields: Fields, number: int) -> None:
    for name, value in fields.items():
        found.left.keep(f"step {number}, for which a lesson has no place, {name}", _said(value))


def _said(value: object) -> str:
    """A value of a field in plain words."""
    if isinstance(value, dict):
        return " ".join(_said(one) for one in value.values())
    if isinstance(value, list | tuple):
        return " ".join(_said(one) for one in value)
    return str(value)


def _paragraph(found: LessonFound, here: _Here, one: Paragraph) -> None:
    text, left = one.text, found.left
    if text in SAID_ANYWAY:
        left.said_anyway.add(text)
        return
    if here.part == "notes":
        found.left.notes.append(one)
        return
    label, rest = label_of(text)
    field_named = LESSON_LABELS.get(key(label))
    long = _LONG.match(text)
    if long and not here.part and "minutes" not in found.fields and _fits(long):
        found.fields["minutes"] = int(long[1])
        left.labels.add("minutes")
        if rest_of := text[long.end() :].strip():
            _paragraph(found, here, words(rest_of))
    elif field_named and here.part not in ("trouble", "change", "words", "talk"):
        left.labels.add(label)
        put(found.fields, field_named, rest, f"{here.where}, {label}", left)
    elif here.part in PARTS:
        PARTS[here.part](found.fields, text, here.where, left)
    elif not here.heading and "pupils_make" not in found.fields and len(text) >= _LEAST_MAKE:
        put(found.fields, "pupils_make", text, here.where, left, most=_MAKE, least=_LEAST_MAKE)
    else:
        left.keep(here.where, text)


def _fits(long: re.Match[str]) -> bool:
    return 1 <= int(long[1]) <= MOST_MINUTES


def _without_short_lines(found: LessonFound) -> None:
    """Let go of the page's lines in short that only say again what its steps say and when."""
    does = {str(step.get("does")) for step in found.steps}
    short = [piece for piece in found.left.pieces if piece.where.casefold() == under(_IN_SHORT)]
    told = [_SHORT_LINE.sub("", piece.text) for piece in short]
    if not short or any(
        _NUMBER.sub("", one) not in does for line in told for one in _SHORT_PARTS.split(line)
    ):
        return
    found.left.pieces = [piece for piece in found.left.pieces if piece not in short]
    found.left.said_anyway.add("The lesson in short, which only says again what the steps do.")


def _complete(found: LessonFound) -> None:
    """Fill what a lesson has to have and the file does not say with open places."""
    number, fields = found.number, found.fields
    while len(found.steps) < _LEAST_STEPS:
        found.steps.append(missing_step(len(found.steps) + 1, found.left))
    whole = sum(int(str(one["minutes"])) for one in found.steps)
    fields["lesson"], fields["steps"] = number, found.steps
    fields.setdefault("minutes", min(whole, MOST_MINUTES))
    for name, hint in (
        ("title", f"title of lesson {number} in two to six words"),
        ("focus", f"what pupils get better at in lesson {number}"),
        ("pupils_make", f"what pupils will have made by the end of lesson {number}"),
        ("not_dancing", f"a part for a pupil who cannot dance in lesson {number}"),
    ):
        fields.setdefault(name, still(hint))
    fields.setdefault("collect", [still(f"what to get ready for lesson {number}")])
    fields.setdefault("safety", [still(f"what to check and say before lesson {number} moves")])
    trouble = fields.setdefault("if", {})
    assert isinstance(trouble, dict)
    for name in _TROUBLE:
        trouble.setdefault(name, still(f"what to do: {name.replace('_', ' ')}"))
    if not fields.get("change", True):
        del fields["change"]
    if not fields.get("words", True):
        del fields["words"]
    if "look_and_talk" in fields:
        _complete_talk(found)


def _complete_talk(found: LessonFound) -> None:
    talk = found.fields["look_and_talk"]
    assert isinstance(talk, dict)
    if "who" not in talk:
        talk["who"] = "half the class"
        found.left.still("Look and talk: say who looks; half the class is written until then.")
    number = found.number
    talk.setdefault("at", still(f"what they look at in lesson {number}"))
    talk.setdefault("looking_for", still(f"the one thing they look for in lesson {number}"))
    talk.setdefault("questions", [{"question": still(f"a question to ask in lesson {number}")}])
    if "next" in talk:
        for name, hint in (("seen", "where to start if it was seen"),
                           ("not_yet", "where to start if it was not seen yet")):  # fmt: skip
            talk["next"].setdefault(name, still(f"{hint}, after lesson {number}"))
    order = ("who", "at", "looking_for", "questions", "next")
    found.fields["look_and_talk"] = {name: talk[name] for name in order if name in talk}
