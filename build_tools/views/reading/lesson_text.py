"""What is written in a lesson, field by field: what is printed, what a teacher reads through."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from build_tools.model.lesson import Lesson, LookAndTalk, Question, Step
from build_tools.problem import FieldPath
from build_tools.views.reading.ease import words

NOT_PRINTED = frozenset({"focus"})
"""Kinds of text that stay on the screen. The notes below are no field, and stay there too."""
NOT_READ_THROUGH = frozenset({"easier", "harder", "place", "facing"})
"""Kinds of text that are turned to only where a pupil needs them, or seen from a plan."""


class FieldText(NamedTuple):
    """The text of one field. `kind` is the field's own name, whatever its place in a list."""

    path: FieldPath
    kind: str
    text: str


@dataclass(frozen=True, slots=True)
class LessonWords:
    """The text of a lesson to read through, a line for each field, and how many words it has."""

    text: str
    words: int


def lesson_words(lesson: Lesson) -> LessonWords:
    """What a teacher reads through: all fields but `easier`, `harder` and the notes below.

    Choices from a list, such as the phase, and names of motifs and sections are not counted.
    """
    read = (one.text for one in text_by_field(lesson) if is_read_through(one))
    text = "\n".join(read)
    return LessonWords(text, len(words(text)))


def is_read_through(one: FieldText) -> bool:
    """Whether a teacher reads it with the lesson; what is said of a picture goes with that."""
    return one.kind not in NOT_READ_THROUGH and not _of_a_picture(one)


def is_printed(one: FieldText) -> bool:
    """Whether it stands on the lesson's own two sides."""
    return one.kind not in NOT_PRINTED and bool(one.path) and not _of_a_picture(one)


def _of_a_picture(one: FieldText) -> bool:
    return one.path[:1] == ("pictures",)


def text_by_field(lesson: Lesson) -> Iterator[FieldText]:
    """Every text an author wrote in the fields of `lesson`, in the order of its file."""
    for kind in ("title", "focus", "pupils_make"):
        yield FieldText((kind,), kind, getattr(lesson, kind))
    yield from _listed(("collect",), lesson.collect)
    yield from _listed(("classroom_first",), lesson.classroom_first)
    yield from _written((), lesson, ("story_so_far", "never_did_last"))
    for number, work in enumerate(lesson.pictures):
        yield from _written(("pictures", number), work, ("title", "changes", "text_version"))
    for number, step in enumerate(lesson.steps):
        yield from _step(("steps", number), step)
    if lesson.look_and_talk is not None:
        yield from _look_and_talk(("look_and_talk",), lesson.look_and_talk)
    yield from _named("change", lesson.change)
    yield from _named("if", lesson.trouble)
    yield FieldText(("not_dancing",), "not_dancing", lesson.not_dancing)
    # what the unit says for every lesson is read where it stands
    own = lesson.safety[: len(lesson.safety) - lesson.standing]
    yield from _listed(("safety",), own)
    for word, plain in lesson.words.items():
        yield FieldText(("words", word), "words", f"{word}: {plain}")


def _step(path: FieldPath, step: Step) -> Iterator[FieldText]:
    yield from _written(path, step, ("does", "into", "place", "facing", "say", "task", "you"))
    yield from _questions((*path, "ask"), step.ask)
    yield from _written(path, step, ("look_for", "easier", "harder"))


def _look_and_talk(path: FieldPath, talk: LookAndTalk) -> Iterator[FieldText]:
    yield from _written(path, talk, ("at", "looking_for"))
    yield from _questions((*path, "questions"), talk.questions)
    if talk.next is not None:
        yield from _written((*path, "next"), talk.next, ("seen", "not_yet"))


def _questions(path: FieldPath, questions: Iterable[Question]) -> Iterator[FieldText]:
    for number, one in enumerate(questions):
        yield FieldText((*path, number, "question"), "question", one.question)
        yield from _listed((*path, number, "answers"), one.answers)


def _written(path: FieldPath, holder: object, kinds: Iterable[str]) -> Iterator[FieldText]:
    for kind in kinds:
        text: str | None = getattr(holder, kind)
        if text is not None:
            yield FieldText((*path, kind), kind, text)


def _listed(path: FieldPath, texts: Iterable[str]) -> Iterator[FieldText]:
    for number, text in enumerate(texts):
        yield FieldText((*path, number), str(path[-1]), text)


def _named(field: str, texts: Mapping[str, str]) -> Iterator[FieldText]:
    for name, text in texts.items():
        yield FieldText((field, name), name, text)
