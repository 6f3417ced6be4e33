"""Findings on a section that comes back changed which are said of the first section already.

What A' does not write comes from A, so a fault of it is found twice; it is A that is mended.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.model.unit import Unit
from build_tools.rules.rule import Finding


def without_repeats(unit: Unit, findings: Sequence[Finding]) -> list[Finding]:
    """The findings of one rule, without those on a changed return that only repeat the first's."""
    if not findings or not any(section.returns for section in unit.dance.sections.values()):
        return list(findings)
    said = {(f.file, f.path, f.message) for f in findings}
    return [f for f in findings if _of_the_first(unit, f) not in said]


def _of_the_first(unit: Unit, finding: Finding) -> tuple[str, tuple[str | int, ...], str] | None:
    """How the same would be said of the first section; None where it is the return's own."""
    path = finding.path
    if finding.file != unit.file or path[:1] != ("sections",) or len(path) < 3:
        return None
    section = unit.dance.sections.get(str(path[1]))
    if section is None or section.returns is None or path[2] in section.changes:
        return None
    message = finding.message.replace(section.letter, section.returns)
    return finding.file, ("sections", section.returns, *path[2:]), message
