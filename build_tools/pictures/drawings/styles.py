"""Styles of a drawing: each declaration held to what is allowed, in one pass without looking back.

Far less than CSS is read. What is not plainly harmless is left out where it may be without harm to
the picture, and refused where it may not.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.pictures.drawings.allowed import FUNCTIONS, PROPERTIES
from build_tools.pictures.limits import MOST_FIGURES, MOST_SIZE, MOST_STYLES, MOST_VALUE
from build_tools.pictures.trouble import PictureError

_LETTERS = re.compile(r"[\w\s#%.,()+\-\"'/!]*")
_PART = re.compile(r"[\w.#*-]+")
_NAME_BEFORE = re.compile(r"[A-Za-z-]*\Z")
_PLACE = re.compile(r"\(\s{0,9}[\"']?#([\w.:-]{1,100})[\"']?\s{0,9}\)")
_ADDRESS = re.compile(r"url\(", re.IGNORECASE)
_OTHERS = re.compile(r"javascript:|expression\(|image-set\(|\\", re.IGNORECASE)
_WORD = re.compile(r"(?<![\w.])[A-Za-z_#][\w.:-]*")
"""A word, a place or a colour, whose figures are no size."""
_NUMBER = re.compile(r"(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][-+]?[0-9]+)?")
_LONGEST_FUNCTION = 24


@dataclass(frozen=True, slots=True)
class Declaration:
    """One property and its value."""

    name: str
    value: str


@dataclass(frozen=True, slots=True)
class Rule:
    """What is declared for some parts of the drawing."""

    selectors: tuple[str, ...]
    declarations: tuple[Declaration, ...]


def rules_in(sheet: str) -> tuple[Rule, ...]:
    """The rules of a style sheet. Raises PictureError for what may not stand in one."""
    if len(sheet) > MOST_STYLES:
        raise PictureError(f"its styles have {len(sheet):,} letters, more than {MOST_STYLES:,}")
    found = []
    for block in _without_comments(sheet).split("}"):
        head, brace, body = block.partition("{")
        if "@import" in head.casefold():
            raise PictureError("the drawing's styles ask for something elsewhere")
        if not brace:
            if head.strip():
                raise PictureError("the drawing's styles are cut off or not closed")
            continue
        declarations = tuple(declarations_in(body))
        if declarations:
            found.append(Rule(tuple(_selector(one) for one in head.split(",")), declarations))
    return tuple(found)


def declarations_in(text: str) -> Iterator[Declaration]:
    """The declarations that are allowed; those of unknown properties are left out."""
    for one in _without_comments(text).split(";"):
        name, colon, value = one.partition(":")
        name, value = name.strip().lower(), " ".join(value.split())
        if not _only_places(value):
            raise PictureError("the drawing's styles ask for something elsewhere")
        if colon and name in PROPERTIES:
            check_value(name, value)
            yield Declaration(name, value)


def written(declarations: tuple[Declaration, ...]) -> str:
    """The declarations as one text."""
    return ";".join(f"{one.name}:{one.value}" for one in declarations)


def sheet_of(rules: tuple[Rule, ...]) -> str:
    """The rules as one style sheet."""
    return "\n".join(f"{','.join(one.selectors)}{{{written(one.declarations)}}}" for one in rules)


def check_value(name: str, value: str, most: int = MOST_VALUE) -> None:
    """Raise for a value that could do more than say how something looks."""
    if len(value) > most:
        raise PictureError(f"`{name}` has {len(value):,} letters, more than {most:,}")
    if not _only_places(value):
        raise PictureError(f"the drawing asks for something elsewhere by `{name}`")
    if _LETTERS.fullmatch(value) is None or value.count('"') % 2 or value.count("'") % 2:
        raise PictureError(f"the drawing has signs in `{name}` that no such value needs")
    for function in _functions(value):
        if function and function not in FUNCTIONS:
            raise PictureError(f"the drawing has a function in `{name}` that is not read here")
    check_numbers(name, _WORD.sub(" ", value))


def check_numbers(name: str, value: str) -> None:
    """Raise for a number beyond all that is drawn."""
    for number in numbers_in(value, name):
        if number > MOST_SIZE:
            raise PictureError(f"`{name}` has a number beyond {MOST_SIZE:,.0f}")


def numbers_in(value: str, name: str = "a value") -> Iterator[float]:
    """The numbers in a text, without their signs."""
    for found in _NUMBER.finditer(value):
        if found.end() - found.start() > MOST_FIGURES:
            raise PictureError(f"`{name}` has a number of more than {MOST_FIGURES} figures")
        yield float(found[0])


def places_in(value: str) -> Iterator[str]:
    """The parts of the drawing that a value refers to, by their ids."""
    for address in _ADDRESS.finditer(value):
        if found := _PLACE.match(value, address.end() - 1):
            yield found[1]


def _only_places(value: str) -> bool:
    """Whether all addresses in a value are places in the drawing itself."""
    places = (_PLACE.match(value, found.end() - 1) for found in _ADDRESS.finditer(value))
    return all(places) and _OTHERS.search(value) is None


def _functions(value: str) -> Iterator[str]:
    """The name before each opening bracket; empty where there is none."""
    at = value.find("(")
    while at >= 0:
        before = value[max(0, at - _LONGEST_FUNCTION) : at]
        found = _NAME_BEFORE.search(before)
        yield found[0] if found else ""
        at = value.find("(", at + 1)


def _selector(text: str) -> str:
    parts = text.replace(">", " > ").split()
    if not parts or any(part != ">" and _PART.fullmatch(part) is None for part in parts):
        raise PictureError("the drawing's styles choose their parts in a way that is not read here")
    return " ".join(parts)


def _without_comments(text: str) -> str:
    kept, at = [], 0
    while (start := text.find("/*", at)) >= 0:
        kept.append(text[at:start])
        end = text.find("*/", start + 2)
        if end < 0:
            return "".join(kept)
        at = end + 2
    return " ".join([*kept, text[at:]])
