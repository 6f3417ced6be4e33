"""What an author has to be asked for a field: read off its schema, in the schema's own words.

Of fields within a field, only those are asked for that have to be there; the rest can be added to
it once it is there, in the same way.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from build_tools.schema_check.descriptions import Part, description, left_out
from build_tools.shapes.schemas import Kind, schema
from build_tools.shapes.shape import Takes, referred

_KINDS: Mapping[str, Takes] = {"integer": "number", "number": "number", "boolean": "yes or no"}
_MOST_DEEP = 6
_AT_FIRST = {"as", "who"}
"""Asked for besides what has to be there: a move without its word, a line danced by nobody."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is asked for one place."""

    name: str
    """The field's name; "" for a line of a list, and for what stands under a name of its own."""
    about: str
    takes: Takes
    words: tuple[Any, ...] = ()
    """What may be chosen, where only that may stand there."""
    least: int = 0
    """The smallest number, or the fewest lines."""
    most: int = 0
    """The largest number, or the most lines; 0 where nothing is said."""
    letters: int = 0
    """The most letters of a text."""
    like: str = ""
    """What it has to look like, such as: a name in small letters."""
    needed: bool = False
    inside: tuple[Wanted, ...] = ()
    """The fields in it that are asked for."""
    one_of: tuple[str, ...] = ()
    """The names of those of which exactly one is written."""
    each: Wanted | None = None
    """A line of the list, or what stands under each name."""


@dataclass(frozen=True, slots=True)
class Place:
    """A part of the schema `within`, where its references have been followed."""

    part: Part
    within: str

    @property
    def fields(self) -> Mapping[str, Part]:
        """The schema of each field that may stand here, in their order."""
        found: Mapping[str, Part] = self.part.get("properties", {})
        return found

    @property
    def named(self) -> bool:
        """Whether it holds parts under names that the author gives."""
        return not self.fields and isinstance(self.part.get("additionalProperties"), Mapping)

    def required(self, data: Mapping[str, Any]) -> frozenset[str]:
        """The fields that may not be missing where `data` stands."""
        names = set(self.part.get("required", ()))
        if "if" in self.part:
            holds = set(self.part["if"].get("required", ())) <= data.keys()
            names |= set(self.part.get("then" if holds else "else", {}).get("required", ()))
        return frozenset(n for n in names if not left_out(self.fields.get(n, {})))

    def one_of(self) -> tuple[str, ...]:
        """Fields of which exactly one stands here."""
        ways = self.part.get("oneOf") or self.part.get("else", {}).get("oneOf", ())
        return tuple(way["required"][0] for way in ways if len(way.get("required", ())) == 1)

    def inner(self, step: str | int) -> Place | None:
        """The place of a field, of a line, or of what stands under a name."""
        if isinstance(step, int):
            part = self.part.get("items")
        else:
            part = self.fields.get(step) or self.part.get("additionalProperties")
        return place(part, self.within) if isinstance(part, Mapping) else None


def whole(kind: Kind) -> Place:
    """The place of all fields of a file."""
    return place(schema(kind), kind)


def place(part: Part, within: str) -> Place:
    """A part of the schema `within` as a place."""
    while "$ref" in part:
        part, within = referred(part, within)
    return Place(part, within)


def wanted(name: str, part: Part, within: str, *, needed: bool = False, deep: int = 0) -> Wanted:
    """What is asked for the field `name`, of which the schema `within` says `part`."""
    here = place(part, within)
    own = here.part
    kinds = own.get("type", ())
    kinds = [kinds] if isinstance(kinds, str) else list(kinds)
    about = description(part, within)
    if follows := left_out(part):
        about += f" Left out, it is: {follows}."
    made = Wanted(name, about, "text", needed=needed)
    if "enum" in own:
        return replace(made, takes="word", words=tuple(own["enum"]))
    if "string" in kinds:
        mixed = "integer" in kinds
        takes: Takes = "code" if mixed or own.get("pattern", "").startswith("^") else "text"
        like = str(own.get("$comment", "")) if takes == "code" else ""
        return replace(made, takes=takes, letters=own.get("maxLength", 0), like=like)
    if kinds and kinds[0] in _KINDS:
        least, most = own.get("minimum", 0), own.get("maximum", 0)
        return replace(made, takes=_KINDS[kinds[0]], least=least, most=most)
    if deep > _MOST_DEEP:
        return replace(made, takes="any")
    if "array" in kinds:
        each = wanted("", own.get("items", {}), here.within, needed=True, deep=deep + 1)
        lines = own.get("minItems", 0), own.get("maxItems", 0)
        return replace(made, takes="list", least=lines[0], most=lines[1], each=each)
    if here.named:
        each = wanted("", own["additionalProperties"], here.within, needed=True, deep=deep + 1)
        like = str(place(own.get("propertyNames", {}), here.within).part.get("$comment", ""))
        return replace(made, takes="names", most=own.get("maxProperties", 0), like=like, each=each)
    inside = tuple(_asked(here, deep))
    return replace(made, takes="fields", inside=inside, one_of=here.one_of())


def _asked(here: Place, deep: int) -> Iterator[Wanted]:
    """The fields that are asked for at once: those that have to be there, and one of the others."""
    required, ways = here.required({}), here.one_of()
    least_one = here.part.get("minProperties", 0) and not required
    for name, part in here.fields.items():
        if name in required or name in ways or name in _AT_FIRST or least_one:
            yield wanted(name, part, here.within, needed=name in required, deep=deep + 1)
