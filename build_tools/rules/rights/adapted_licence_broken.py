"""A unit made from another keeps what that unit's licence asks.

Whoever shared the first unit under "share alike" or "not for money" did so on a condition. The new
unit carries it on, or it may not be shared at all.

Bad:
    adapted_from: {title: Paper boats, licence: CC-BY-SA-4.0, …}
    licence: CC-BY-4.0
Good:
    adapted_from: {title: Paper boats, licence: CC-BY-SA-4.0, …}
    licence: CC-BY-SA-4.0
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.licences import asks, may_adapt, wholes_for
from build_tools.views.words.plain_words import listed

GRADE: Grade = "error"
SOURCE = (
    "Creative Commons, licence compatibility chart; The National Archives, Open Government Licence "
    "v3.0: compatible with CC BY 4.0"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the unit's licence drops what its parent's licence asks."""
    parent = unit.adapted_from
    if parent is None or may_adapt(unit.licence, parent.licence):
        return
    open_to = wholes_for(parent.licence)
    help_ = (
        f"share this unit under {listed(open_to, 'or')}"
        if open_to
        else f"ask {parent.publisher} for leave in writing, or make a unit of your own"
    )
    yield Finding(
        unit.file,
        ("licence",),
        f"`{parent.title}`, from which this unit was made, is under {parent.licence}, which asks "
        f"{asks(unit.licence, parent.licence)}; this unit is under {unit.licence}",
        help_,
    )
