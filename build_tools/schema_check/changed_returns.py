"""Sections that come back changed: A' returns A, and A is there to be returned.

A schema cannot tie a letter to what is written under it, and the model needs the first section
for what its return does not write, so this is looked at with the shape of a file.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from build_tools.problem import Problem
from build_tools.schema_check.wording import Said
from build_tools.source.front_matter import Document

_MARK = "'"


def return_faults(document: Document) -> Iterator[Problem]:
    """What is wrong with the changed returns of a unit's file whose shape is sound otherwise."""
    sections: Mapping[str, Mapping[str, Any]] = document.data["sections"]
    for letter, section in sections.items():
        first, returned = letter.removesuffix(_MARK), section.get("returns")
        if returned is None and first == letter:
            continue
        rule, field, said = _fault(letter, first, returned, sections)
        if said:
            path = ("sections", letter, *field)
            yield document.problem(rule, "error", path, *said)


def _fault(
    letter: str, first: str, returned: str | None, sections: Mapping[str, Any]
) -> tuple[str, tuple[str, ...], Said | None]:
    """The rule it breaks, the field, and what to say; nothing to say where all is well."""
    if returned is None:
        return (
            "missing-field",
            (),
            (
                f"{letter} is the letter of {first} come back changed, and `returns` is missing",
                f"write `returns: {first}` and beside it only what differs",
            ),
        )
    if letter == first:
        return (
            "wrong-value",
            ("returns",),
            (
                f"section {letter} returns {returned}, but its letter says that it is another one",
                f"call it {returned}{_MARK}, in the form and wherever it is named, or write the "
                "section whole, without `returns`",
            ),
        )
    if returned != first:
        return (
            "wrong-value",
            ("returns",),
            (
                f"section {letter} returns {returned}, but its letter says that it is {first}",
                f"write `returns: {first}`, or call the section {returned}{_MARK}",
            ),
        )
    if first not in sections:
        return (
            "unknown-name",
            ("returns",),
            (
                f"{letter} returns {first}, but there is no section {first}",
                f"write section {first}, or call this one {first} and write it whole",
            ),
        )
    return "", (), None
