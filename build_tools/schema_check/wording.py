"""The validator's complaints in the author's words."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable
from difflib import get_close_matches
from typing import Any

from build_tools.schema_check.misfit import Misfit
from build_tools.schema_check.shown_how import lines_to_copy
from build_tools.schema_check.teachers_words import said_for
from build_tools.shapes.shape import shape_of_part
from build_tools.source.said_once.in_one_line import in_one_text

_TYPES = {
    "integer": "a whole number",
    "number": "a number",
    "string": "text",
    "array": "a list",
    "object": "fields of its own",
    "boolean": "true or false",
}
MOST_DESCRIPTION = 120
_A_DAY = "a day such as"
_TWO_DAYS = re.compile(r"(0?[1-9]|1[0-2])[/. -](0?[1-9]|1[0-2])[/. -](\d{4})")
_MONTHS = (
    "", "January", "February", "March", "April", "May", "June", "July", "August", "September",
    "October", "November", "December",
)  # fmt: skip
Said = tuple[str, str]
"""A message and its help."""


def unknown_field(
    name: str, known: Iterable[str], belongs: str = "", there: Collection[str] = ()
) -> Said:
    """For a field that the schema does not know here; `belongs` is the field it belongs under.

    What is `there` already is not what it was meant to be.
    """
    known = sorted(known)
    message = f"`{cut_short(name)}` is not a field that is read here"
    if belongs:
        return message, f"it belongs under `{belongs}`: has the line `{belongs}:` above it gone?"
    if near := nearest(name, [one for one in known if one not in there]):
        return message, f"did you mean `{near}`?"
    instead = "if it goes on with the text above it, set it in further than that; else put what it"
    return message, f"{instead} says under one of: {', '.join(known)}"


def missing_field(name: str, description: str) -> Said:
    """For a field that is needed and absent."""
    return f"`{name}` is missing", f"add it: {lower_first(description)}"


def wrong_name(misfit: Misfit) -> Said:
    """For the name of a field that authors may choose themselves, such as a motif's."""
    comment = _comment(misfit)
    if misfit.keyword == "maxLength":
        length = len(misfit.value)
        return (
            f"the name `{cut_short(misfit.value)}` has {length} letters, and "
            f"{misfit.bound} is the most",
            "shorten it",
        )
    return f"the name `{cut_short(misfit.value)}` is not {comment}", f"use {comment}"


def wrong_value(name: str, misfit: Misfit, within: str) -> Said:
    """For a value that does not fit; `name` is its field as the author sees it.

    `within` is the schema that it does not fit.
    """
    if misfit.keyword == "type" and _may_be_one(misfit, within):
        message = f"{name} is {_kind_of(misfit.value)}: its commas may part several, or be in one"
        help_ = "put a semicolon between each two; if it is one, put a semicolon at its end"
        return message, f"{help_}{_with_semicolons(misfit)}"
    worder = _WORDERS.get(misfit.keyword)
    if worder is not None:
        message, help_ = worder(name, misfit)
        return message, help_ + (_shown_how(misfit, within) if misfit.keyword == "type" else "")
    comment = _comment(misfit)
    return f"{name} does not fit", f"write {comment}"


def _type(name: str, misfit: Misfit) -> Said:
    wanted = misfit.bound
    kinds = [wanted] if isinstance(wanted, str) else list(wanted)
    comment = misfit.schema.get("$comment")
    takes = comment if comment and len(kinds) > 1 else " or ".join(_TYPES[k] for k in kinds)
    if misfit.value is None:
        return f"{name} is empty", f"write {takes}"
    if description := str(misfit.schema.get("description", "")) if "array" in kinds else "":
        example = f": {lower_first(description)}" if len(description) <= MOST_DESCRIPTION else ""
        lines = f"{takes}{example}; each on a line of its own that starts with a hyphen"
        return f"{name} is {_kind_of(misfit.value)}, but it takes {takes}", f"write {lines}"
    return f"{name} is {_kind_of(misfit.value)}, but it takes {takes}", f"write {takes}"


def _may_be_one(misfit: Misfit, within: str) -> bool:
    """Whether it is a list of texts in one line that commas may part."""
    if not isinstance(misfit.value, str) or ";" in misfit.value or "," not in misfit.value:
        return False
    field = str(misfit.path[-1]) if misfit.path else ""
    return in_one_text(shape_of_part(misfit.schema, within), field)


def _with_semicolons(misfit: Misfit) -> str:
    """The list as a line to copy, if it is short enough to be read in a message."""
    parts = re.split(r",(?![^(]*\))", misfit.value)
    parted = "; ".join(part.strip() for part in parts)
    line = f"{misfit.path[-1]}: {parted}"
    return f"; such as\n{line}" if len(line) <= MOST_DESCRIPTION else ""


def _shown_how(misfit: Misfit, within: str) -> str:
    """The same as lines to copy, each on a line of its own; nothing where no list or fields do."""
    field = next((part for part in reversed(misfit.path) if isinstance(part, str)), "")
    part = misfit.schema
    if misfit.path and isinstance(misfit.path[-1], int):
        part = {"type": "array", "items": part}
    lines = lines_to_copy(field, part, within)
    if not lines or (
        misfit.path[-1:] != (field,) and not lines_to_copy(field, misfit.schema, within)
    ):
        return ""
    return "".join(["; such as", *(f"\n{line}" for line in lines)])


def _enum(name: str, misfit: Misfit) -> Said:
    newest = misfit.bound[-1]
    if isinstance(misfit.value, int) and isinstance(newest, int) and misfit.value > newest:
        return (
            f"{name} is {misfit.value}, which is newer than the {newest} this version reads",
            "update the bank's software, or ask for the unit in the older format",
        )
    options = [str(option) for option in misfit.bound]
    message = f"{name} is {_kind_of(misfit.value)}, which is not one of its words"
    if near := said_for(str(misfit.value), options) or nearest(str(misfit.value), options):
        return message, f'did you mean "{near}"? The words are: {", ".join(options)}'
    return message, f"use one of: {', '.join(options)}"


def _pattern(name: str, misfit: Misfit) -> Said:
    comment = _comment(misfit)
    if not str(misfit.value).strip():
        return f"{name} is empty", f"write {comment}"
    if comment.startswith(_A_DAY) and (found := _TWO_DAYS.fullmatch(str(misfit.value).strip())):
        return _two_days(name, *map(int, found.groups()))
    return f'{name} is "{cut_short(misfit.value)}", but it takes {comment}', f"write {comment}"


def _two_days(name: str, first: int, second: int, year: int) -> Said:
    """For figures that are one day in Britain and another elsewhere."""
    days = [(first, second), (second, first)]
    said = [f"{day} {_MONTHS[month]}" for day, month in days]
    written = [f"{year}-{month:02}-{day:02}" for day, month in days]
    return (
        f'{name} is "{first}/{second}/{year}", which some read as {said[0]}, others as {said[1]}',
        f"write {written[0]} for {said[0]}, or {written[1]} for {said[1]}",
    )


def _least_or_most(name: str, misfit: Misfit) -> Said:
    least = misfit.keyword == "minimum"
    word = "least" if least else "most"
    return (
        f"{name} is {misfit.value}, and {misfit.bound} is the {word}",
        f"write {misfit.bound} or {'more' if least else 'less'}",
    )


def _length(name: str, misfit: Misfit) -> Said:
    few = misfit.keyword.startswith("min")
    size = len(misfit.value)
    things = _THINGS[misfit.keyword]
    bound = misfit.bound
    if few and size == 0:
        return f"{name} is empty", f"write at least {_counted(bound, things)}"
    return (
        f"{name} has {_counted(size, things)}, and {bound} is the {'least' if few else 'most'}",
        "add to it" if few else "shorten it",
    )


def _unique(name: str, misfit: Misfit) -> Said:
    twice = next(i for n, i in enumerate(misfit.value) if i in misfit.value[:n])
    return f'{name} holds "{cut_short(twice)}" twice', "keep one of the two"


def _one_of(name: str, misfit: Misfit) -> Said:
    comment = _comment(misfit)
    found = [
        branch["required"][0]
        for branch in misfit.bound
        if "required" in branch and branch["required"][0] in misfit.value
    ]
    count = "none of them is there" if not found else f"{len(found)} are there"
    names = f" ({', '.join(f'`{f}`' for f in found)})" if found else ""
    return f"{name} takes {comment}; {count}{names}", f"write {comment}"


def _counted(number: int, things: str) -> str:
    return f"{number} {things.removesuffix('s') if number == 1 else things}"


_THINGS = {
    "minLength": "letters",
    "maxLength": "letters",
    "minItems": "lines",
    "maxItems": "lines",
    "minProperties": "fields",
    "maxProperties": "fields",
}
_WORDERS = {
    "type": _type,
    "enum": _enum,
    "pattern": _pattern,
    "minimum": _least_or_most,
    "maximum": _least_or_most,
    "uniqueItems": _unique,
    "oneOf": _one_of,
    **dict.fromkeys(_THINGS, _length),
}


def nearest(word: str, known: Iterable[str]) -> str | None:
    """The known word that `word` most likely was meant to be."""
    by_small = {k.lower(): k for k in known}
    found = get_close_matches(word.lower(), list(by_small), n=1, cutoff=0.6)
    return by_small[found[0]] if found else None


def cut_short(value: object) -> str:
    """A value cut to a length that a line can hold."""
    text = " ".join(str(value).split())
    return text if len(text) <= 40 else text[:39] + "…"


def lower_first(text: str) -> str:
    """A sentence as the second half of another: small first letter, no full stop."""
    return text[:1].lower() + text[1:].rstrip(".")


def _comment(misfit: Misfit) -> str:
    found = misfit.schema.get("$comment")
    return str(found or "what its description says")


def _kind_of(value: Any) -> str:
    if value is None:
        return "empty"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, list):
        return "a list"
    if isinstance(value, dict):
        return "a set of fields"
    return f'"{cut_short(value)}"'
