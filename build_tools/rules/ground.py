"""The rules that everything else stands on: what they find leaves nothing to work out or draw.

They run first. No unit allows what they find and no bank grades it down, since pages made of such
a unit would have nothing to say.
"""

from __future__ import annotations

from typing import Final

GROUND: Final = frozenset(
    {
        "canon-not-spelt-out",
        "development-does-not-work",
        "lesson-numbers-broken",
        "name-used-twice",
        "unknown-name",
    }
)
