"""What travels with a unit may be shared as freely as the unit itself.

A school that takes the unit trusts the licence on its front. A picture inside that may not be used
to make money, or that asks for more, breaks that promise, and nobody notices until it is copied.
Where each of several parts asks more, it is the unit that promises too much, and it is told there.

Bad:
    licence: CC-BY-4.0
    items: [{title: A loom, licence: CC-BY-NC-4.0, …}, …]
Good:
    licence: CC-BY-NC-4.0
    items: [{title: A loom, licence: CC-BY-NC-4.0, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from build_tools.model.unit import Unit
from build_tools.model.work import Work
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.licences import asks, narrower_items, wholes_for
from build_tools.views.words.plain_words import listed
from build_tools.views.written.works import works_written

GRADE: Grade = "error"
SOURCE = (
    "Creative Commons, licence compatibility chart; The National Archives, Open Government Licence "
    "v3.0: compatible with CC BY 4.0"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each item that travels with the unit and asks more than the unit does."""
    narrower = list(narrower_items(unit, unit.licence))
    if 1 < len(narrower) == len(list(works_written(unit))):
        yield _all_narrower(unit, [one.work for one in narrower])
        return
    for one in narrower:
        item = one.work
        open_to = wholes_for(item.licence)
        yield Finding(
            one.file,
            (*one.path, "licence"),
            f"the unit is shared under {unit.licence}, but `{item.title}` in it is under "
            f"{item.licence}, which asks {asks(unit.licence, item.licence)}",
            f"share the unit under {listed(open_to, 'or')}, or use another item"
            if open_to
            else "use the item as it was, or another one",
        )


def _all_narrower(unit: Unit, items: Sequence[Work]) -> Finding:
    first = items[0]
    open_to = [
        one
        for one in wholes_for(first.licence)
        if all(one in wholes_for(item.licence) for item in items)
    ]
    return Finding(
        unit.file,
        ("licence",),
        f"the unit is shared under {unit.licence}, but each of its "
        f"{len(items)} items asks more: `{first.title}` is under {first.licence}, "
        f"which asks {asks(unit.licence, first.licence)}",
        f"share the unit under {listed(open_to, 'or')}" if open_to else "use other items",
    )
