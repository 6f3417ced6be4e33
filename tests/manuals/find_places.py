"""Proposes places in the published units for the examples of manuals, for `places/`.

    .venv/bin/python -m tests.manuals.find_places RULE …

For each unit it tries the places where such a field stands, and prints the first at which the
manual's `Bad:` is found and its `Good:` is not.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator, Mapping
from typing import Any

from build_tools.model.unit import Unit
from build_tools.rules.catalogue import rule_named
from build_tools.rules.rule import Rule
from tests.manuals.examples import fields_of, is_whole, lessons_of
from tests.manuals.fields import NotLaid
from tests.manuals.laying import UNITS, Layout, new_findings, published

_STEP = [
    "phase",
    "does",
    "minutes",
    "least",
    "grouping",
    "intensity",
    "into",
    "say",
    "task",
    "ask",
    "look_for",
    "easier",
    "harder",
    "counts",
    "makes",
    "develops",
    "joins",
    "dances",
    "shows",
    "settles",
    "teaches",
    "can_wait",
]
_LESSON = [
    "title",
    "focus",
    "pupils_make",
    "collect",
    "classroom_first",
    "story_so_far",
    "never_did_last",
    "look_and_talk",
    "change",
    "if",
    "not_dancing",
    "safety",
    "words",
    "minutes",
]
_IN_LESSON = {
    "if": ["stuck", "finished", "loud", "silly", "will_not_join", "short_of_time", "sound_fails"],
    "change": ["cue", "partners", "room", "task", "things"],
    "look_and_talk": ["who", "at", "looking_for", "questions", "end_points", "next"],
    "look_and_talk/questions/0": ["question", "answers", "looks_back_to"],
    "look_and_talk/next": ["seen", "not_yet"],
}
_UNIT = {
    "": [
        "title",
        "summary",
        "licence",
        "language",
        "years",
        "topics",
        "subjects",
        "builds_on",
        "leads_to",
        "words",
        "ending",
        "issued",
        "draft",
        "tried",
        "curriculum",
        "adapted_from",
        "form",
        "credit",
    ],
    "kit": ["wear", "collect", "without_props"],
    "space": ["hall", "half_hall", "classroom"],
    "stimulus": ["what", "show", "content_note", "items"],
    "stimulus/items/0": ["by", "licence", "title"],
    "dance": ["sound", "tempo", "form", "front", "phrase"],
    "dance/sound": ["what", "follows", "kind", "lasts"],
    "tried": ["with", "where"],
    "curriculum/0": ["says", "stage", "nation"],
    "skills/0": ["skill", "catch_up"],
}


def candidates(unit: Unit, field: str) -> Iterator[str]:
    """Places at which a field of this name may stand, `file path`."""
    field = field.removesuffix(" 2")
    if field == "whole":
        yield from _maps(unit)
    for lesson in unit.lessons:
        file = lesson.file.rpartition("/")[2]
        if field in _STEP:
            yield from (f"{file} steps/{n}/{field}" for n in range(len(lesson.steps)))
        if field in _LESSON:
            yield f"{file} {field}"
        for holder, fields in _IN_LESSON.items():
            if field in fields:
                yield f"{file} {holder}/{field}"
        if field == "notes":
            yield f"{file} notes"
    for holder, fields in _UNIT.items():
        if field in fields:
            yield f"unit.md {holder}/{field}".replace(" /", " ")
    dance = unit.dance
    if field in ("cue", "how", "counts", "as"):
        yield from (f"unit.md transitions/{n}/{field}" for n in range(len(dance.transitions)))
    if field == "from":
        yield from (f"unit.md choices/{name}/from" for name in dance.choices)
        yield from (f"unit.md motifs/{name}/from" for name in dance.motifs)
    if field == "if_not":
        yield from (f"unit.md choices/{name}/if_not" for name in dance.choices)
    if field in ("actions", "idea"):
        yield from (f"unit.md motifs/{name}/{field}" for name in dance.motifs)
    if field in ("seconds", "ends_on", "idea", "counts", "start", "end", "danced"):
        for letter, section in dance.sections.items():
            yield f"unit.md sections/{letter}/{field}"
            yield f"unit.md sections/{letter}/{section.kind}/{field}"


def _maps(unit: Unit) -> Iterator[str]:
    """Places of maps that manuals write without a name: transitions, passages and moves."""
    dance = unit.dance
    yield from (f"unit.md transitions/{n}" for n in range(len(dance.transitions)))
    for letter, section in dance.sections.items():
        yield from (f"unit.md sections/{letter}/danced/{n}" for n in range(len(section.danced)))
    for name, motif in dance.motifs.items():
        yield from (f"unit.md motifs/{name}/actions/{n}" for n in range(len(motif.actions)))
    yield "unit.md curriculum/0"
    for lesson in unit.lessons:
        yield f"{lesson.file.rpartition('/')[2]} look_and_talk/questions/0"


def proposal(rule: Rule, slug: str) -> Mapping[str, str] | None:
    """The first place for each field at which the two examples are told apart."""
    bad, good = fields_of(rule, "bad"), fields_of(rule, "good")
    unit = published(slug)
    if not all(map(is_whole, (*bad.values(), *good.values()))):
        return None
    first = next(iter({**bad, **good}), "")
    lessons = {**lessons_of(rule, "bad"), **lessons_of(rule, "good")}
    for place in _in_lesson(candidates(unit, first), lessons.get(first)):
        for where in _with_others(unit, place, first, {**bad, **good}, lessons):
            if _told_apart(rule, slug, Layout(where)):
                return where
    return None


def _told_apart(rule: Rule, slug: str, layout: Layout) -> bool:
    try:
        bad, good = (new_findings(rule, slug, which, layout) for which in ("bad", "good"))
    except NotLaid:
        return False
    return bool(bad) and not good


def _in_lesson(places: Iterator[str], number: int | None) -> Iterator[str]:
    """Those of the places that are in the lesson, if one is named."""
    for place in places:
        if number is None or place.startswith((f"lesson-{number}.md", "unit.md")):
            yield place


def _with_others(
    unit: Unit, place: str, first: str, fields: Mapping[str, Any], lessons: Mapping[str, int]
) -> Iterator[dict[str, str]]:
    """The other fields beside the first, where they may stand beside it, or where they can."""
    where = {first: place}
    for field in fields:
        if field == first:
            continue
        beside = place.rpartition("/")[0] + "/" + field
        can = list(_in_lesson(candidates(unit, field), lessons.get(field)))
        if field in ("safety", "collect") and isinstance(fields[field], str):
            can = [f"{one}/0" for one in can]
        near = [one for one in can if one == beside]
        same = [one for one in can if one.split(" ")[0] == place.split(" ")[0]]
        chosen = near or same or can
        if not chosen:
            return
        where[field] = chosen[0]
    yield where


def main(names: list[str]) -> None:
    """Print what is proposed for each rule."""
    for name in names:
        rule = rule_named(name)
        assert rule is not None, name
        print(f"{name}:", flush=True)
        for slug in UNITS:
            print(f"  {slug}: {proposal(rule, slug) or 'none found'}", flush=True)


if __name__ == "__main__":
    main(sys.argv[1:])
