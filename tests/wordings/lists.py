"""Wordings that a rule has to find or to let stand, each laid into the base unit at its place.

A file for each rule (and a second one, `rule.field.json`, where it reads two fields) holds:
`at`, the place where the text stands, with `*` for a field that the text names itself ("canon: the
same moves"); `setting`, what else is changed in the base so that the text
is judged; `found_in`, the document where the rule finds its fault, if it is not that of the text;
`beside`, for a rule of the whole bank, one edit for each further unit of the bank;
`faulty` and `sound`, the texts, by people who had not read the rule. A folder beside them holds
the lists of another writer, with texts alone, which are tried in the same settings.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path
from typing import Any

from build_tools.model.bank import BankOutline
from build_tools.model.build import build_unit
from build_tools.model.build_bank import outline_unit
from build_tools.model.unit import Unit
from build_tools.rules.catalogue import rule_named
from build_tools.rules.rule import Finding, Rule
from build_tools.schema_check.check import check_document
from build_tools.source.folder import UnitFolder, read_unit_folder
from build_tools.source.front_matter import Document

HERE = Path(__file__).parent
BASE = HERE.parent / "rules" / "base"
SLUG = "paper-boats"


@dataclass(frozen=True, slots=True)
class Wordings:
    """One file: texts for one rule and one field. Edits are file, place and the value put there."""

    name: str
    rule: Rule
    at: tuple[str, str]
    found_in: str
    setting: tuple[tuple[str, str, Any], ...]
    beside: tuple[tuple[str, str, Any], ...]
    faulty: tuple[str, ...]
    sound: tuple[str, ...]

    def edits(self, text: str) -> tuple[tuple[str, str, Any], ...]:
        """What is changed in the base for one of the texts."""
        file, place = self.at
        if place.endswith("/*"):
            name, _, text = text.partition(": ")
            return (*self.setting, (file, place.removesuffix("/*"), {name: text}))
        return (*self.setting, (file, place, text))


def writers() -> tuple[Path, ...]:
    """The folders with lists, one for each writer; the first has the settings."""
    return (HERE, *sorted({file.parent for file in HERE.glob("*/*.json")}))


def all_wordings(*lists: Path) -> tuple[Wordings, ...]:
    """Every list in the folders, by name; without any, of all writers."""
    return tuple(
        _wordings(file.stem, folder)
        for folder in lists or writers()
        for file in sorted(folder.glob("*.json"))
    )


def _wordings(name: str, lists: Path) -> Wordings:
    kept = json.loads((HERE / f"{name}.json").read_text(encoding="utf-8"))
    texts = json.loads((lists / f"{name}.json").read_text(encoding="utf-8"))
    rule = rule_named(name.partition(".")[0])
    assert rule is not None, name
    return Wordings(
        name=name if lists == HERE else f"{lists.name}: {name}",
        rule=rule,
        at=(kept["at"]["in"], kept["at"]["at"]),
        found_in=kept.get("found_in", kept["at"]["in"]),
        setting=_edits_of(kept.get("setting", ())),
        beside=_edits_of(kept.get("beside", ())),
        faulty=tuple(texts["faulty"]),
        sound=tuple(texts["sound"]),
    )


def _edits_of(kept: Iterable[Mapping[str, Any]]) -> tuple[tuple[str, str, Any], ...]:
    return tuple((edit["in"], edit["at"], edit.get("after")) for edit in kept)


def fires(wordings: Wordings, text: str) -> bool:
    """Whether the rule finds something in the document where it has to."""
    unit = unit_with(wordings.edits(text))
    return any(f.file.endswith(f"{SLUG}/{wordings.found_in}") for f in _findings(wordings, unit))


def _findings(wordings: Wordings, unit: Unit) -> Iterator[Finding]:
    if wordings.rule.check is not None:
        return wordings.rule.check(unit)
    assert wordings.rule.check_bank is not None
    beside = (
        replace(outline_unit(unit_with((edit,))), slug=f"beside-{at}", file=f"beside-{at}/unit.md")
        for at, edit in enumerate(wordings.beside)
    )
    units = (outline_unit(unit), *beside)
    slugs = frozenset(one.slug for one in units)
    return wordings.rule.check_bank(BankOutline("2026-11-29", {}, units, slugs))


def faults_of_shape(wordings: Wordings, text: str) -> Iterator[str]:
    """What the schemas say of the unit with the text in it: nothing, or a list is made wrongly."""
    folder = _edited(wordings.edits(text))
    assert folder.unit is not None
    yield from (p.message for p in check_document(folder.unit, "unit"))
    for lesson in folder.lessons:
        yield from (p.message for p in check_document(lesson, "lesson"))


def unit_with(edits: tuple[tuple[str, str, Any], ...]) -> Unit:
    """The base unit with the edits made; a value of None takes the field out."""
    folder = _edited(edits)
    assert folder.unit is not None
    return build_unit(SLUG, folder.unit, folder.lessons, folder.media)


@cache
def _base() -> UnitFolder:
    return read_unit_folder(BASE, SLUG)


def _edited(edits: tuple[tuple[str, str, Any], ...]) -> UnitFolder:
    folder = _base()
    assert folder.unit is not None
    changed: dict[str, list[tuple[str, Any]]] = {}
    for file, place, value in edits:
        changed.setdefault(file, []).append((place, value))
    return replace(
        folder,
        unit=_changed(folder.unit, changed),
        lessons=[_changed(lesson, changed) for lesson in folder.lessons],
    )


def _changed(document: Document, edits: Mapping[str, list[tuple[str, Any]]]) -> Document:
    own = edits.get(document.file.rpartition("/")[2], [])
    if not own:
        return document
    data, body = document.data, document.body
    for place, value in own:
        if place == "notes":
            body = value
        else:
            data = _put(data, [int(p) if p.isdecimal() else p for p in place.split("/")], value)
    return replace(document, data=data, body=body)


def _put(held: Any, place: Sequence[str | int], value: Any) -> Any:
    """A copy of `held` with the value at its place; what lies elsewhere is the same as before."""
    step, *inside = place
    made: Any = [*held] if isinstance(held, list) else {**held}
    if inside:
        value = _put(held[step], inside, value)
    if value is None:
        del made[step]
    elif isinstance(made, list) and step == len(made):
        made.append(value)
    else:
        made[step] = value
    return made
