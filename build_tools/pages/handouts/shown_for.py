"""What several lessons hand out, each thing once, with the views of the page that show it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar

T_co = TypeVar("T_co", covariant=True)
T = TypeVar("T")

WHOLE = "all"
"""The view of the page for the whole unit; a lesson's is its number."""


@dataclass(frozen=True, slots=True)
class Shown(Generic[T_co]):
    """A thing that stands on the page once."""

    what: T_co
    """The thing."""
    views: str
    """The views that show it, with spaces between: all 1 3."""


def once_each(views: Iterable[tuple[str, Sequence[T]]]) -> tuple[Shown[T], ...]:
    """Each thing of the `views` once, in the order in which it is first met.

    What one view has twice, as a form does that comes back to its A, is there twice.
    """
    found: list[tuple[T, list[str]]] = []
    for name, things in views:
        for thing in things:
            known = next(
                (names for one, names in found if one == thing and name not in names), None
            )
            if known is None:
                found.append((thing, [name]))
            else:
                known.append(name)
    return tuple(Shown(thing, " ".join(names)) for thing, names in found)
