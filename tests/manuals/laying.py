"""The `Bad:` and `Good:` of each rule's manual, laid into three of the published units.

`places/<family>.yml` says of each rule where the fields of its examples go:

    rule-name:
      every unit: {task: lesson-1.md steps/phase=make/task}
      rock-pool: {task: lesson-2.md steps/2/task}
      weaving-shed: why its example makes no sense there
      ground:
        called: {gust: wave}
        without: [lesson-*.md steps/*/develops/slow-wave]
        set: {unit.md dance/form: A B C}

`fields.py` tells the form of places. `lesson-N.md` is the lesson that the manual names,
`lesson-last.md` the last, `lesson-*.md` all of them. A place in another unit or in the bank's own
files starts with that: `seeds-on-the-move/unit.md title`, `bank.yml as_of`. What one example has
and the other lacks is taken out for the other, except in a lesson that the manual names and at
`{bad: place}` or `{good: place}`, which go for one example.

The ground is made first and holds for both: what the unit calls the things of the manual, what
the example takes to be nowhere in the unit, and what else has to be so. A unit may have a ground
of its own within its places, besides.
"""

from __future__ import annotations

import pickle
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from fnmatch import fnmatch
from functools import cache
from pathlib import Path
from typing import Any

import yaml

from build_tools.model.build import build_unit
from build_tools.model.build_bank import outline_bank, outline_unit
from build_tools.model.unit import Unit
from build_tools.rules.catalogue import all_rules
from build_tools.rules.rule import Finding, Rule
from build_tools.schema_check.check import check_document
from build_tools.source.folder import UnitFolder, read_bank_files, read_unit_folder
from build_tools.source.front_matter import Document
from tests.manuals.examples import fields_of, lessons_of
from tests.manuals.fields import NotLaid, called, put, take_out, without_empty_lists
from tests.support.banks import LOOKED_AT

ROOT = Path(__file__).resolve().parents[2]
CONTENT = ROOT / "content"
UNITS = LOOKED_AT
PLACES = Path(__file__).parent / "places"
EVERY = "every unit"
_GROUND = "ground"
_ANY_LESSON = "lesson-N.md"
_LAST_LESSON = "lesson-last.md"
_NUMBERED = re.compile(r"lesson-(\d+)\.md")

Place = str | Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Layout:
    """Where the fields of a manual's examples go in one unit, and on what ground."""

    where: Mapping[str, Place]
    names: Mapping[str, str] = field(default_factory=dict)
    without: tuple[str, ...] = ()
    ground: Mapping[str, Any] = field(default_factory=dict)

    def edits(self, rule: Rule, which: str) -> Iterator[tuple[str, Any]]:
        """The place and the value of each field; one that this example lacks is taken out."""
        fields, lessons = fields_of(rule, which), lessons_of(rule, which)
        for name, written_place in self.where.items():
            one = isinstance(written_place, str)
            place = written_place if isinstance(written_place, str) else written_place.get(which)
            if place is None or (name not in fields and (not one or _ANY_LESSON in place)):
                continue
            if _ANY_LESSON in place:
                place = place.replace(_ANY_LESSON, f"lesson-{lessons[name]}.md")
            yield called(place, self.names), called(fields.get(name, TAKEN_OUT), self.names)

    def all_edits(self, rule: Rule, which: str) -> Iterator[tuple[str, Any]]:
        """The edits of the ground, then those of one example."""
        for place in self.without:
            yield called(place, self.names), TAKEN_OUT
        yield from called(self.ground, self.names).items()
        yield from self.edits(rule, which)


TAKEN_OUT = object()


@cache
def written() -> Mapping[str, Any]:
    """What `places/` says of each rule."""
    found: dict[str, Any] = {}
    for path in sorted(PLACES.glob("*.yml")):
        found |= yaml.safe_load(path.read_text(encoding="utf-8"))
    return found


def layouts(said: Mapping[str, Any]) -> dict[str, Layout | str]:
    """By unit: the layout of a rule's examples, or why they make no sense there."""
    found: dict[str, Layout | str] = {}
    for slug in UNITS:
        own = said.get(slug, {})
        if isinstance(own, str):
            found[slug] = own
            continue
        grounds = [said.get(_GROUND, {}), own.get(_GROUND, {})]
        where = {k: v for k, v in {**said.get(EVERY, {}), **own}.items() if k != _GROUND}
        found[slug] = Layout(
            where,
            {k: v for ground in grounds for k, v in ground.get("called", {}).items()},
            tuple(place for ground in grounds for place in ground.get("without", ())),
            {k: v for ground in grounds for k, v in ground.get("set", {}).items()},
        )
    return found


@cache
def _folder(slug: str) -> UnitFolder:
    return read_unit_folder(CONTENT, slug)


@cache
def _bank_files() -> Mapping[str, Document]:
    return read_bank_files(CONTENT)[0]


@cache
def _documents() -> Mapping[str, Document]:
    """Every document of the bank, by its file; edits are made in copies."""
    units = (_folder(slug).by_file() for slug in UNITS)
    return {**_bank_files(), **{file: one for unit in units for file, one in unit.items()}}


def _files(documents: Mapping[str, Document], slug: str, file: str) -> list[str]:
    """The files that are meant: in the unit, in another, or the bank's own; `*` is any lesson."""
    if file in _bank_files():
        return [file]
    full = f"units/{file}" if "/" in file else f"units/{slug}/{file}"
    if file == _LAST_LESSON:
        return [file for file in documents if file.startswith(f"units/{slug}/lesson-")][-1:]
    return [one for one in documents if fnmatch(one, full)]


def _add_lessons(documents: dict[str, Document], slug: str, file: str) -> None:
    """Copies of the last lesson, up to the one in `file`, where the unit has fewer."""
    (last,) = _files(documents, slug, _LAST_LESSON)
    wanted = _NUMBERED.fullmatch(file)
    for number in range(documents[last].data["lesson"] + 1, int(wanted[1]) + 1 if wanted else 0):
        copy = f"units/{slug}/lesson-{number}.md"
        data = {**documents[last].data, "lesson": number}
        documents[copy] = replace(documents[last], file=copy, data=copied(data))


def copied(data: Any) -> Any:
    """The same as copying it piece by piece, in a quarter of the time."""
    return pickle.loads(pickle.dumps(data))


def _edit(documents: dict[str, Document], slug: str, place: str, value: Any) -> None:
    file, _, path = place.partition(" ")
    _add_lessons(documents, slug, file)
    files = _files(documents, slug, file)
    if not files:
        raise NotLaid(f"{slug} has no {file}")
    for one in files:
        if documents[one] is _documents().get(one):
            documents[one] = replace(documents[one], data=copied(documents[one].data))
        document = documents[one]
        if path == "notes":
            body = "" if value is TAKEN_OUT else f"{value}\n"
            documents[one] = replace(document, body=body)
        elif value is TAKEN_OUT:
            take_out(document.data, path)
        else:
            try:
                put(document.data, path, value)
            except NotLaid as moved:
                raise NotLaid(
                    f"the unit moved on: in {one} {moved}; write in places/ where it stands now "
                    "(tests.manuals.find_places proposes places)"
                ) from None


def published(slug: str) -> Unit:
    """A unit as it is published."""
    return _built(_documents(), slug)


_asked = cache(published)
"""Built once for all rules, so that they share their views of it."""


def found(rule: Rule, slug: str, edits: tuple[tuple[str, Any], ...] = ()) -> frozenset[Finding]:
    """What the rule says of the unit, or of the bank, with the edits in it.

    Raises NotLaid where a place is not there, or a document is then out of shape.
    """
    if rule.check is not None and not edits:
        return frozenset(rule.check(_asked(slug)))
    documents = dict(_documents())
    for place, value in edits:
        _edit(documents, slug, place, value)
    documents = {file: _pruned(documents[file]) for file in documents}
    if rule.check is not None:
        return frozenset(rule.check(_built(documents, slug)))
    assert rule.check_bank is not None
    outlines = [outline_unit(_built(documents, one)) for one in UNITS]
    bank = outline_bank({file: documents[file] for file in _bank_files()}, outlines, list(UNITS))
    return frozenset(rule.check_bank(bank))


def _pruned(document: Document) -> Document:
    """A document without the lists from which everything was taken out."""
    original = _documents().get(document.file) is document
    return document if original else replace(document, data=without_empty_lists(document.data))


def _built(documents: Mapping[str, Document], slug: str) -> Unit:
    own, *lessons = (one for file, one in documents.items() if file.startswith(f"units/{slug}/"))
    problems = [
        problem
        for one in (own, *lessons)
        if _documents().get(one.file) is not one  # what is published is in shape
        for problem in check_document(one, "unit" if one is own else "lesson")
    ]
    if problems:
        told = "; ".join(f"{one.file}: {one.message}" for one in problems)
        raise NotLaid(f"the example brings {slug} out of shape: {told}")
    return build_unit(slug, own, lessons, _folder(slug).media)


@cache
def _said_before(slug: str) -> Mapping[str, frozenset[tuple[str, str]]]:
    """What each rule says of the unit as it is published: once for all rules, which share views."""
    return {
        rule.name: frozenset((one.file, one.message) for one in found(rule, slug))
        for rule in all_rules()
    }


def new_findings(rule: Rule, slug: str, which: str, layout: Layout) -> list[str]:
    """What the rule says of the unit with one example in it, and not without; in words."""
    edits = tuple(layout.all_edits(rule, which))
    before = _said_before(slug)[rule.name]
    return sorted(
        f"{one.file}: {one.message}"
        for one in found(rule, slug, edits)
        if (one.file, one.message) not in before
    )
