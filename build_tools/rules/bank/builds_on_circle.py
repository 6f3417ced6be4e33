"""No unit builds on itself, straight or by way of others.

Each unit in such a circle needs another to be taught first, so none of them can be the first.

Bad:
    in boats: builds_on: {units: [rivers], …}
    in rivers: builds_on: {units: [boats], …}
Good:
    in boats: builds_on: {units: [rivers], …}
    in rivers: leads_to: {units: [boats], …}
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from build_tools.model.bank import BankOutline
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "common practice, no source"

Link = tuple[str, str, FieldPath]
"""The earlier unit, and the file and place where the two are joined."""


def check_bank(bank: BankOutline) -> Iterator[Finding]:
    """Yield a finding for each circle: where a draft joins in, or else at the line that closes it.

    What is being written is mended sooner than what readers have.
    """
    earlier = _earlier(bank)
    drafts = {unit.file for unit in bank.units if unit.draft}
    done: set[str] = set()
    for slug in sorted(earlier):
        way: list[str] = [slug]
        links: list[Link] = []
        waiting = [iter(earlier[slug])]
        while way and slug not in done:
            link = next(waiting[-1], None)
            if link is None:
                done.add(way.pop())
                waiting.pop()
                del links[-1:]
                continue
            name = link[0]
            if name in way:
                start = way.index(name)
                round_ = [link, *links[start:]]
                _, file, path = next((one for one in round_ if one[1] in drafts), link)
                yield _circle(way[start:], file, path)
            elif name not in done:
                way.append(name)
                links.append(link)
                waiting.append(iter(earlier[name]))


def _earlier(bank: BankOutline) -> Mapping[str, list[Link]]:
    """For each unit, the units that come before it."""
    found: dict[str, list[Link]] = {unit.slug: [] for unit in bank.units}
    for unit in sorted(bank.units, key=lambda one: one.slug):
        for n, name in enumerate(unit.builds_on.units):
            if name in found:
                found[unit.slug].append((name, unit.file, ("builds_on", "units", n)))
        for n, name in enumerate(unit.leads_to.units):
            if name in found:
                found[name].append((unit.slug, unit.file, ("leads_to", "units", n)))
    return found


def _circle(names: list[str], file: str, path: FieldPath) -> Finding:
    if len(names) == 1:
        return Finding(
            file, path, f"`{names[0]}` comes before itself", "take its own name out of the list"
        )
    way = ", which builds on ".join(f"`{name}`" for name in (*names[1:], names[0]))
    return Finding(
        file,
        path,
        f"`{names[0]}` builds on {way}: none of the {len(names)} can be taught first",
        f"choose which of the {len(names)} is taught first, and let it build on none of the others",
    )
