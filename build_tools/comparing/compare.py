"""Two editions of a unit compared, field by field, each change one sentence."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from build_tools.comparing.change import Change, Weight, WrittenUnit
from build_tools.comparing.heard_words import heard_changed
from build_tools.comparing.labels import LESSON, UNIT, Label, Labels
from build_tools.comparing.lists import listed, texts_listed
from build_tools.comparing.pairing import likeness_of_fields, likeness_of_texts, moved, paired
from build_tools.comparing.phrases import as_words, changed, minutes

Fields = Mapping[str, Any]
_SILENT = {"edition", "issued"}
_PARTS = {"dance": "the dance", "kit": "the kit", "space": "the space", "tried": "the trial"}
_NAMED = {
    "end_points": "end point",
    "sections": "section",
    "motifs": "motif",
    "developments": "development",
    "choices": "choice",
}


def compare(old: WrittenUnit, new: WrittenUnit) -> tuple[Change, ...]:
    """Everything that differs between two editions; the edition and its date go without saying."""
    return (
        *_unit_fields(old.fields, new.fields),
        *_notes("the unit", old.notes, new.notes),
        *_media(old.media, new.media),
        *_lessons(old.lessons, new.lessons),
    )


def _unit_fields(old: Fields, new: Fields) -> Iterator[Change]:
    for name in _names(old, new):
        before, after = old.get(name), new.get(name)
        if before == after or name in _SILENT:
            continue
        if name in _NAMED:
            yield from _named(name, before or {}, after or {})
        elif name == "stimulus":
            yield from _stimulus(before or {}, after or {})
        elif name in _PARTS:
            yield from _mapping(UNIT, name, _PARTS[name], before or {}, after or {})
        elif name == "words":
            yield from _each("the unit", "the word “{}”", before or {}, after or {})
        elif name == "allow":
            yield from _each("the unit", "allowing {}", before or {}, after or {})
        elif name in ("skills", "transitions", "ending", "curriculum", "read_by"):
            yield from listed(UNIT, name, "the unit", before or [], after or [])
        elif name in ("years", "adapted_from", "builds_on", "leads_to"):
            yield _whole(UNIT.of(name), "the unit", before, after)
        else:
            yield from _field(UNIT, name, "the unit", before, after)


def _lessons(
    old: Mapping[int, tuple[Fields, str]], new: Mapping[int, tuple[Fields, str]]
) -> Iterator[Change]:
    befores, afters = [old[n] for n in sorted(old)], [new[n] for n in sorted(new)]
    pairs = paired(befores, afters, lambda one: one[0].get("title"), _alike_lessons)
    for o, n in pairs:
        if o is None and n is not None:
            title = afters[n][0].get("title")
            yield Change(f"lesson {n + 1} was added: {as_words(title)}", Weight.DANCE)
        elif n is None and o is not None:
            title = befores[o][0].get("title")
            yield Change(f"lesson {o + 1} was taken out: {as_words(title)}", Weight.DANCE)
        elif o is not None and n is not None:
            where = f"lesson {n + 1}"
            if n in moved(pairs):
                yield Change(f"{where} was lesson {o + 1} before", Weight.TEACHING)
            yield from _lesson_fields(where, befores[o][0], afters[n][0])
            yield from _notes(where, befores[o][1], afters[n][1])


def _lesson_fields(where: str, old: Fields, new: Fields) -> Iterator[Change]:
    for name in _names(old, new):
        before, after = old.get(name), new.get(name)
        if before == after or name == "lesson":
            continue
        if name == "steps":
            yield from _steps(where, before or [], after or [])
        elif name == "pictures":
            yield from listed(LESSON, "pictures", where, before or [], after or [])
        elif name == "look_and_talk":
            yield from _talk(where, before, after)
        elif name in ("change", "if"):
            yield from _mapping(LESSON, name, where, before or {}, after or {})
        elif name == "words":
            yield from _each(where, "the word “{}”", before or {}, after or {})
        else:
            yield from _field(LESSON, name, where, before, after)


def _steps(lesson: str, old: Sequence[Fields], new: Sequence[Fields]) -> Iterator[Change]:
    pairs = paired(old, new, lambda step: (step.get("phase"), step.get("does")), _alike_steps)
    for o, n in pairs:
        if o is None and n is not None:
            does = new[n].get("does")
            yield Change(f"step {n + 1} of {lesson} was added: {as_words(does)}", Weight.TEACHING)
        elif n is None and o is not None:
            does = old[o].get("does")
            yield Change(
                f"step {o + 1} of {lesson} was taken out: {as_words(does)}", Weight.TEACHING
            )
        elif o is not None and n is not None:
            where = f"step {n + 1} of {lesson}"
            if n in moved(pairs):
                yield Change(f"{where} was step {o + 1} before", Weight.TEACHING)
            for name in _names(old[o], new[n]):
                before, after = old[o].get(name), new[n].get(name)
                if before == after:
                    continue
                if name == "ask":
                    yield from listed(LESSON, "steps[].ask", where, before or [], after or [])
                else:
                    yield from _field(LESSON, f"steps[].{name}", where, before, after)


def _talk(lesson: str, old: Fields | None, new: Fields | None) -> Iterator[Change]:
    where = f"looking and talking in {lesson}"
    if old is None or new is None:
        yield Change(f"{where} was {'added' if old is None else 'taken out'}", Weight.TEACHING)
        return
    for name in _names(old, new):
        before, after = old.get(name), new.get(name)
        if before == after:
            continue
        if name == "questions":
            path = "look_and_talk.questions"
            yield from listed(LESSON, path, where, before or [], after or [])
        elif name == "next":
            yield from _mapping(LESSON, "look_and_talk.next", where, before or {}, after or {})
        else:
            yield from _field(LESSON, f"look_and_talk.{name}", where, before, after)


def _stimulus(old: Fields, new: Fields) -> Iterator[Change]:
    for name in _names(old, new):
        before, after = old.get(name), new.get(name)
        if before == after:
            continue
        if name == "items":
            yield from listed(UNIT, "stimulus.items", "the stimulus", before or [], after or [])
        else:
            yield from _field(UNIT, f"stimulus.{name}", "the stimulus", before, after)


def _named(field: str, old: Fields, new: Fields) -> Iterator[Change]:
    """Things with names: sections, motifs, developments, choices, end points."""
    kind = _NAMED[field]
    weight = Weight.TEACHING if field == "choices" else Weight.DANCE
    for name in _names(old, new):
        where, before, after = f"{kind} {name}", old.get(name), new.get(name)
        if before == after:
            continue
        if before is None or after is None:
            yield Change(f"{where} was {'added' if before is None else 'taken out'}", weight)
        elif field == "developments":
            for part in _names(before, after):
                if before.get(part) != after.get(part):
                    label = part.replace("_", " ")
                    yield Change(changed(where, label, before.get(part), after.get(part)), weight)
        else:
            yield from _mapping(UNIT, f"{field}.*", where, before, after)
    if list(old) != list(new) and old.keys() == new.keys():
        yield Change(f"the order of the {kind}s changed", Weight.WORDING)


def _mapping(labels: Labels, path: str, where: str, old: Fields, new: Fields) -> Iterator[Change]:
    for name in _names(old, new):
        before, after = old.get(name), new.get(name)
        if before == after:
            continue
        if name in ("actions", "danced"):
            yield from listed(labels, f"{path}.{name}", where, before or [], after or [])
        else:
            yield from _field(labels, f"{path}.{name}", where, before, after)


def _each(where: str, called: str, old: Fields, new: Fields) -> Iterator[Change]:
    """Lines by name, where only their wording matters; `called` is what one of them is called."""
    for name in _names(old, new):
        if old.get(name) != new.get(name):
            said = changed(where, called.format(name), old.get(name), new.get(name))
            yield Change(said, Weight.WORDING)


def _field(labels: Labels, path: str, where: str, old: Any, new: Any) -> Iterator[Change]:
    label, weight = labels.of(path)
    if path in ("steps[].minutes", "minutes") and isinstance(old, int) and isinstance(new, int):
        yield Change(minutes(where, old, new), weight)
    elif path == "sections.*.heard":
        yield Change(heard_changed(where, old, new), weight)
    elif isinstance(old, list) and isinstance(new, list):
        yield from texts_listed(label, weight, where, old, new)
    else:
        yield _whole((label, weight), where, old, new)


def _whole(labelled: Label, where: str, old: Any, new: Any) -> Change:
    label, weight = labelled
    return Change(changed(where, label, old, new), weight)


def _notes(where: str, old: str, new: str) -> Iterator[Change]:
    if old.split() != new.split():
        happened = "added" if not old.strip() else "reworded" if new.strip() else "taken out"
        yield Change(f"{where}: the notes were {happened}", Weight.WORDING)


def _media(old: Mapping[str, str], new: Mapping[str, str]) -> Iterator[Change]:
    for file in _names(old, new):
        if old.get(file) != new.get(file):
            gone = "taken out" if file not in new else "changed" if file in old else "added"
            yield Change(f"the file {file} was {gone}", Weight.TEACHING)


def _names(old: Fields, new: Fields) -> list[str]:
    """Every name, in the order of the new, then what went."""
    return [*new, *(name for name in old if name not in new)]


def _alike_steps(old: Fields, new: Fields) -> float:
    if old.get("phase") != new.get("phase"):
        return likeness_of_fields(old, new)
    return max(likeness_of_fields(old, new), likeness_of_texts(old["does"], new["does"]))


def _alike_lessons(old: tuple[Fields, str], new: tuple[Fields, str]) -> float:
    return likeness_of_fields(old[0], new[0])
