"""The list of hostile packs: each a name, what it tries, and how it is made of a good one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeAlias

from tests.packs.attacks.packed import Pack

Made: TypeAlias = bytes | Pack
"""A pack's bytes, or a pack still to be closed with its sums right."""
Maker: TypeAlias = Callable[..., Any]
"""Takes a good Pack, which it may change, and gives something Made."""
Rows: TypeAlias = tuple[tuple[Any, ...], ...]


@dataclass(frozen=True, slots=True)
class Attack:
    """A hostile pack; `refuse` says whether to take it in would be a fault of itself.

    Else `must_not` says what must not come of it. Where `sound`, the bag's sums are right, so that
    nothing but the attack can be refused.
    """

    name: str
    family: str
    what: str
    refuse: bool
    make: Maker
    must_not: str
    sound: bool

    def made_of(self, base: Pack) -> bytes:
        """The pack's bytes, the same every time."""
        made = self.make(base.copy())
        return made if isinstance(made, bytes) else made.done()


RECIPES: list[Attack] = []


def recipe(
    name: str,
    family: str,
    what: str,
    expected: str,
    make: Maker,
    must_not: str = "",
    sound: bool = True,
) -> None:
    """Put one more on the list; `expected` is refuse or harmless."""
    assert expected in ("refuse", "harmless"), name
    RECIPES.append(Attack(name, family, what, expected == "refuse", make, must_not, sound))
