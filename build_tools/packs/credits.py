"""Whose work is in a pack, and under which licence: title, author, source, licence, changes.

The parts that a credit needs: Creative Commons, "Recommended practices for attribution" (title,
author, source, licence), and the changes made, CC BY 4.0 section 3(a)(1)(B).
"""

from __future__ import annotations

from build_tools.model.unit import Ancestor, Unit
from build_tools.model.work import Work
from build_tools.views.words.licences import licence_address
from build_tools.views.written.works import works


def credits_text(unit: Unit) -> str:
    """The credits of a unit, of what it was adapted from, and of each thing in it."""
    own = [
        f"Title: {unit.title}",
        f"Edition: {unit.edition}, {unit.issued}",
        f"Publisher: {unit.publisher}",
        *([f"Author: {unit.credit}"] if unit.credit else []),
        f"Licence: {unit.licence} ({licence_address(unit.licence)})",
    ]
    blocks = [own]
    parent = unit.adapted_from
    if parent is not None:
        changes = parent.changes or "it was changed; this edition is not the publisher's own"
        blocks.append([*_ancestor("Adapted from", parent), f"Changes: {changes}"])
        blocks += [_ancestor("Before that, from", one) for one in parent.earlier]
    blocks += [_item(item) for item in works(unit)]
    return "\n\n".join("\n".join(block) for block in blocks) + "\n"


def _ancestor(heading: str, one: Ancestor) -> list[str]:
    return [
        heading,
        f"Title: {one.title}",
        f"Edition: {one.edition}",
        f"Publisher: {one.publisher}",
        *([f"Author: {one.credit}"] if one.credit else []),
        f"Licence: {one.licence} ({licence_address(one.licence)})",
    ]


def _item(item: Work) -> list[str]:
    return [
        "In this unit",
        f"Title: {item.title}",
        f"Author: {item.by}",
        f"Source: {item.source}",
        f"Licence: {item.licence} ({licence_address(item.licence)})",
        f"Changes: {item.changes or 'none'}",
        *([f"File: {item.file}"] if item.file else []),
    ]
