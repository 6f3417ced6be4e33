"""A motif and its mirror are not both said to go the same way.

A mirror swaps left and right. If everyone goes towards the window in the motif, everyone goes away
from it in the mirror; the words were copied with the line.

Bad:
    drift-mirrored: {of: drift, device: mirror}
    danced:
      - {what: [drift], as: unison, who: everyone towards the window}
      - {what: [drift-mirrored], as: unison, who: everyone towards the window}
Good:
    drift-mirrored: {of: drift, device: mirror}
    danced:
      - {what: [drift], as: unison, who: everyone towards the window}
      - {what: [drift-mirrored], as: unison, who: everyone towards the door}
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "Ontario Arts Curriculum, 2010, glossary: in a mirror, left and right are exchanged"
NEEDS = ("unknown-name",)

_WAY = re.compile(r"\b(?:towards?|to) (?:the|their|your) (?P<where>[a-z]+)", re.IGNORECASE)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each mirror that goes where its motif goes in the same section."""
    developments = unit.dance.developments
    for letter, section in unit.dance.sections.items():
        ways: dict[str, str] = {}
        for n, passage in enumerate(section.danced):
            way = _WAY.search(passage.who or "")
            if len(passage.what) != 1 or way is None:
                continue
            name, where = passage.what[0], way.group("where").lower()
            mirror = developments.get(name)
            if mirror and mirror.device == "mirror" and ways.get(mirror.of) == where:
                yield Finding(
                    unit.file,
                    ("sections", letter, "danced", n, "who"),
                    f"`{name}` mirrors `{mirror.of}`, but in section {letter} both are said to go "
                    f"to the {where}",
                    f"say which way `{name}` goes, with left and right swapped",
                )
            ways.setdefault(name, where)
