"""The sides of the hall by the unit's own names: the beach for the front, the sea for the back."""

from __future__ import annotations

from collections.abc import Mapping

from build_tools.page_words.forms import row
from build_tools.page_words.words import N_, _

NO_NAMES: Mapping[str, str] = {}
"""Where nobody gives the sides of the hall names of their own."""
SIDES = ("front", "back", "left", "right")
_TOWARDS = {
    "partner": N_("towards a partner"),
    "centre": N_("towards the middle"),
    "home": N_("towards their own mark"),
}
_SIDES = {
    "front": N_("the front"),
    "back": N_("the back"),
    "left": N_("the left"),
    "right": N_("the right"),
}


_WITHOUT_ARTICLE = frozenset({"north", "south", "east", "west"})
"""Names that a class says as they are: facing north, and not the north."""


def side_in_words(said: str, sides: Mapping[str, str]) -> str:
    """A side as the class says it: the beach, or the front where the unit has no name for it."""
    if said not in sides and said in _SIDES:
        return _(_SIDES[said])
    own = sides.get(said, said)
    if own.lower().startswith("the ") or own.lower() in _WITHOUT_ARTICLE:
        return own
    return _("the {name}", name=own)


def towards_in_words(towards: str, sides: Mapping[str, str]) -> str:
    """Which way all go: towards a partner, towards the middle, towards the beach."""
    if towards in _TOWARDS:
        return _(_TOWARDS[towards])
    return _("towards {what}", what=side_in_words(towards, sides))


def sides_in_words(sides: Mapping[str, str]) -> str | None:
    """What each side is called, for a plan: "Here the front is the beach and the back the sea."."""
    named = [
        _("{side} is {name}", side=_(_SIDES[side]), name=side_in_words(side, sides))
        for side in SIDES
        if side in sides
    ]
    return _("Here {row}.", row=row(named)) if named else None
