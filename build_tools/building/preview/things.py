"""What stands in a unit's file as an author sees it: its parts, and what each has or could have."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from build_tools.building.preview.plain_names import any_in, field_name, one_of, says_of, thing_name
from build_tools.problem import FieldPath
from build_tools.schema_check.wanted import Place, Wanted, wanted, whole
from build_tools.source.field_edit import mark_around
from build_tools.source.file_lines import reading_of
from build_tools.source.front_matter import Document, kind_of_file, read_markdown
from build_tools.source.item_edit import mark_of

_NOT_HERE = frozenset({"format", "lesson"})
"""A format is changed by `upgrade`, a lesson's number by its file's name."""

_FEW_LETTERS = 100


@dataclass(frozen=True, slots=True)
class Here:
    """A field that a thing has."""

    asked: Wanted
    value: Any
    mark: str
    optional: bool


@dataclass(frozen=True, slots=True)
class Thing:
    """A part of a file with fields, lines or names of its own, and what may be added to it."""

    path: FieldPath
    mark: str
    missing: tuple[Wanted, ...]
    has: tuple[Here, ...]
    next_line: int | None = None
    """Where a further line of the list would stand."""


def things_in(file: str, raw: bytes) -> list[Thing]:
    """Each thing of the file, the file itself first; none if it is unreadable."""
    document = read_markdown(file, raw)
    kind = kind_of_file(file)
    if not isinstance(document, Document) or kind is None:
        return []
    data = reading_of(document).data
    return list(_things(data, whole(kind), (), data)) if isinstance(data, dict) else []


def _things(data: Any, here: Place | None, path: FieldPath, all_of: Any) -> Iterator[Thing]:
    if here is None:
        return
    if isinstance(data, dict):
        missing = tuple(_missing(data, here, path))
        yield Thing(path, mark_around(all_of, path), missing, tuple(_has(data, here, path)))
        for name, value in data.items():
            yield from _things(value, here.inner(name), (*path, name), all_of)
    elif isinstance(data, list) and here.part.get("type") == "array":
        yield from _list(data, here, path, all_of)
        for number, value in enumerate(data):
            yield from _things(value, here.inner(number), (*path, number), all_of)


def _list(data: list[Any], here: Place, path: FieldPath, all_of: Any) -> Iterator[Thing]:
    """A list as a thing, where a line can be added to it."""
    asked = wanted("", here.part.get("items", {}), here.within, needed=True)
    # a move that is added to rows becomes a row; other lists of fields have none
    odd = any(isinstance(one, str) for one in data) and asked.takes == "fields"
    rows = odd and path[:1] != ("motifs",)
    room = len(data) < here.part.get("maxItems", len(data) + 1)
    if room and not rows and path != ("steps",) and _is_lines(asked):
        yield Thing(path, mark_around(all_of, path), (asked,), (), len(data))


def _is_lines(each: Wanted) -> bool:
    """Whether the lines of such a list are sentences or fields; words are set all together."""
    return each.takes == "fields" or (each.takes == "text" and each.letters > _FEW_LETTERS)


def _missing(data: Mapping[str, Any], here: Place, path: FieldPath) -> Iterator[Wanted]:
    if here.named:
        asked = wanted(path[-1] if path else "", here.part, here.within)  # type: ignore[arg-type]
        if asked.each and (not asked.most or len(data) < asked.most):
            yield Wanted("", asked.each.about, "names", like=asked.like, each=asked.each)
        return
    if "shared" in data:
        return
    ways = here.one_of()
    taken = any(way in data for way in ways)
    for name, part in here.fields.items():
        if name in data or (taken and name in ways) or _left_out(name, path):
            continue
        yield wanted(name, part, here.within, needed=name in here.required(data))


def _left_out(name: str, path: FieldPath) -> bool:
    """What is not to be added to what is there: it would stand in place of all the rest."""
    again = name == "returns" and not str(path[-1]).endswith("'")
    return name in ("shared",) or again or (not path and name in _NOT_HERE)


def _has(data: Mapping[str, Any], here: Place, path: FieldPath) -> Iterator[Here]:
    required, ways = here.required(data), here.one_of()
    least = here.part.get("minProperties", 0)
    for name, value in data.items():
        asked = _asked_for(here, name)
        if asked is None or (not path and name in _NOT_HERE):
            continue
        needed = name in required or name in ways or len(data) <= least
        yield Here(asked, value if _is_short(asked) else None, mark_of(value), not needed)


def _asked_for(here: Place, step: str | int) -> Wanted | None:
    """What is asked for a field, for a line (a number), or for what stands under a new name."""
    if isinstance(step, int):
        part = here.part.get("items")
        return wanted("", part, here.within) if isinstance(part, Mapping) else None
    part = here.fields.get(step)
    if part is None and here.named:
        part = here.part["additionalProperties"]
    return wanted(step, part, here.within) if isinstance(part, Mapping) else None


def _is_short(asked: Wanted) -> bool:
    """Whether its value can be shown whole in a form: a word, a number, or a list of such."""
    return asked.takes not in ("fields", "names", "any") and (
        asked.takes != "list" or (asked.each is not None and asked.each.takes not in ("fields",))
    )


def as_data(file: str, raw: bytes, names: Mapping[str, list[str]]) -> list[dict[str, Any]]:
    """The things of a file as a page gets them; `names` are those that the unit gives."""
    document = read_markdown(file, raw)
    kind = kind_of_file(file)
    if not isinstance(document, Document) or kind is None:
        return []
    data = reading_of(document).data
    said = _Said(kind, names)
    return [
        {
            "path": list(thing.path),
            "mark": thing.mark,
            "called": thing_name(kind, thing.path),
            "says": says_of(data, thing.path) if thing.path else "",
            "line": thing.next_line,
            "missing": [said.asked(thing.path, one) for one in thing.missing],
            "has": [
                {
                    **said.asked(thing.path, one.asked),
                    "value": one.value,
                    "mark": one.mark,
                    "optional": one.optional,
                }
                for one in thing.has
            ],
        }
        for thing in things_in(file, raw)
    ]


def questions(kind: str, path: FieldPath, asked: Wanted) -> dict[str, Any]:
    """What is asked for the field at `path` of a file of `kind`, where it names no other part."""
    return _Said(kind, {}).asked(path[:-1] if asked.name else path, asked)


_NAMES = {
    "makes": ("motifs", "sections"),
    "develops": ("developments",),
    "joins": ("sections",),
    "dances": ("motifs", "developments", "sections", "whole"),
    "shows": ("motifs", "developments", "sections", "whole"),
    "settles": ("choices",),
    "end_points": ("end_points",),
    "what": ("motifs", "developments"),
    "of": ("motifs", "developments"),
    "and": ("motifs", "developments"),
    "choice": ("choices",),
}
"""Fields that name parts of the unit, and which."""


def names_in(unit: bytes) -> dict[str, list[str]]:
    """The names that a unit's own file gives to its parts."""
    document = read_markdown("unit.md", unit)
    data = document.data if isinstance(document, Document) else {}
    held = {name for kinds in _NAMES.values() for name in kinds}
    found = {name: data.get(name) for name in held} if isinstance(data, dict) else {}
    names = {name: list(one) for name, one in found.items() if isinstance(one, dict)}
    return {**names, "whole": ["whole"]}


@dataclass(frozen=True, slots=True)
class _Said:
    """How what is asked for is put to an author of a file of `kind`."""

    kind: str
    names: Mapping[str, list[str]]

    def asked(self, path: FieldPath, asked: Wanted) -> dict[str, Any]:
        """What is asked for below `path`, and what in it, by what it is called in plain words."""
        here = (*path, asked.name) if asked.name else path
        inner = here if asked.name else (*path, any_in(path))
        return {
            "name": asked.name,
            "called": field_name(self.kind, here) if asked.name else one_of(path),
            # `true` is how the file has it
            "about": re.sub(r"^true\b", "Yes", asked.about),
            "takes": asked.takes,
            "words": list(asked.words) or self._names(asked, path),
            "least": asked.least,
            "most": asked.most,
            "letters": asked.letters,
            "like": asked.like,
            "needed": asked.needed,
            "oneOf": list(asked.one_of),
            "inside": [self.asked(inner, each) for each in asked.inside],
            "each": self.asked(here, asked.each) if asked.each else None,
        }

    def _names(self, asked: Wanted, path: FieldPath) -> list[str]:
        """The names of the unit's parts that this field takes."""
        if asked.takes != "code" or (asked.like and "name" not in asked.like
                                     and "letter" not in asked.like):  # fmt: skip
            return []
        field = asked.name or str(path[-1] if path else "")
        return [name for kind in _NAMES.get(field, ()) for name in self.names.get(kind, ())]
