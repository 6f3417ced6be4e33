"""The sides of the hall by the unit's own names: the beach for the front, the sea for the back."""

from __future__ import annotations

from collections.abc import Mapping

NO_NAMES: Mapping[str, str] = {}
"""Where nobody gives the sides of the hall names of their own."""
SIDES = ("front", "back", "left", "right")
_PLACES = {"partner": "a partner", "centre": "the middle", "home": "the own mark"}


def side_in_words(said: str, sides: Mapping[str, str]) -> str:
    """A side as the class says it: the beach, or the front where the unit has no name for it."""
    own = sides.get(said, said)
    return own if own.lower().startswith("the ") else f"the {own}"


def towards_in_words(towards: str, sides: Mapping[str, str]) -> str:
    """Which way all go: towards a partner, towards the middle, towards the beach."""
    return f"towards {_PLACES.get(towards) or side_in_words(towards, sides)}"


def sides_in_words(sides: Mapping[str, str]) -> str | None:
    """What each side is called, for a plan: "Here the front is the beach and the back the sea."."""
    named = [f"the {side} is {side_in_words(side, sides)}" for side in SIDES if side in sides]
    if not named:
        return None
    row = named[0] if len(named) == 1 else f"{', '.join(named[:-1])} and {named[-1]}"
    return f"Here {row}."
