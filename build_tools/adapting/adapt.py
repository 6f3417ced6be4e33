"""What an adapted unit says of itself: whose it is, what it comes from, and under which licence.

CC BY 4.0, section 3(a)(1): keep who made it, its notice and its licence, and say that it was
changed; section 3(b) of the share-alike licences: the same licence for what is made from it.
"""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.adapting.fields import quoted, with_field
from build_tools.model.unit import Ancestor, Unit
from build_tools.shapes.schemas import schema
from build_tools.views.words.licences import may_adapt, may_be_changed, narrower_items, wholes_for
from build_tools.views.words.open_places import MARK
from build_tools.views.words.plain_words import listed

FIRST = "1.0.0"
MOST_EARLIER: int = schema("unit")["properties"]["adapted_from"]["properties"]["earlier"][
    "maxItems"
]
"""How many units before its own parent a unit can name."""


@dataclass(frozen=True, slots=True)
class Adaptation:
    """What the new unit is to be: its title, who issues it, on which day, under which licence."""

    title: str
    publisher: str
    day: str
    licence: str


@dataclass(frozen=True, slots=True)
class NotAllowed:
    """Why the licence does not allow it, and what to do."""

    reason: str


def licence_for(unit: Unit, wanted: str | None) -> str | NotAllowed:
    """The licence of what is made from `unit`, or why nothing may be made from it."""
    named = f"`{unit.title}` is shared under {unit.licence}"
    if not may_be_changed(unit.licence):
        return NotAllowed(
            f"{named}, which allows no changed copy to be shared: ask {unit.publisher} for leave "
            "in writing, or make a unit of your own with `new`"
        )
    line = (unit.adapted_from, *unit.adapted_from.earlier) if unit.adapted_from else ()
    if len(line) > MOST_EARLIER:
        return NotAllowed(
            f"`{unit.title}` comes from {len(line)} units, one made from the other, and every one "
            f"has to stay named; a unit names {MOST_EARLIER + 1} at most: adapt an earlier one, or "
            "make a unit of your own with `new`"
        )
    licence = wanted or unit.licence
    if not may_adapt(licence, unit.licence):
        return NotAllowed(
            f"{named}, and what is made from it cannot be under {licence}: choose "
            f"{listed(wholes_for(unit.licence), 'or')}"
        )
    narrower = next(narrower_items(unit, licence), None)
    if narrower is not None:
        item = narrower.work
        return NotAllowed(
            f"`{item.title}` in it is under {item.licence}, which cannot stand in a unit under "
            f"{licence}: choose another licence, or ask whoever made it"
        )
    return licence


def adapted(text: str, unit: Unit, wanted: Adaptation) -> str:
    """The unit.md of the new unit, a draft; `text` is that of `unit`."""
    changed = {
        "title": quoted(wanted.title),
        "edition": FIRST,
        "issued": wanted.day,
        "publisher": quoted(wanted.publisher),
        "licence": wanted.licence,
        "tried": "\n  taught: false",
        "credit": None,
        "read_by": None,
    }
    for name, value in changed.items():
        text = with_field(text, name, value)
    text = with_field(text, "adapted_from", _line(unit), after="language")
    return with_field(text, "draft", "true", after="adapted_from")


def _line(unit: Unit) -> str:
    """The field that says what the unit comes from, the nearest first."""
    own = Ancestor(unit.title, unit.publisher, unit.edition, unit.licence, unit.credit)
    lines = _of(own, "  ")
    lines.append(f"  changes: {MARK} what you changed in it, in a line")
    parent = unit.adapted_from
    if parent is not None:
        lines.append("  earlier:")
        for one in (parent, *parent.earlier):
            first, *rest = _of(one, "      ")
            lines += [f"    - {first.strip()}", *rest]
    return "\n" + "\n".join(lines)


def _of(one: Ancestor, indent: str) -> list[str]:
    fields = {
        "title": quoted(one.title),
        "publisher": quoted(one.publisher),
        "edition": one.edition,
        "licence": one.licence,
        "credit": quoted(one.credit) if one.credit else None,
    }
    return [f"{indent}{name}: {value}" for name, value in fields.items() if value is not None]
