"""What a unit keeps of its readers is what they are, never who they are.

Whoever signed for a unit is known to the office. A unit goes to other schools and stays for years,
and there a name says nothing about the unit and much about a person. What the reader is says how
far to trust the reading.

Bad:
    read_by:
      - {role: "Ann Example, dance adviser", …}
Good:
    read_by:
      - {role: Dance adviser of a county service, …}
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.names import FIRST_NAMES, NO_NAMES
from build_tools.sentences.people import titled
from build_tools.sentences.word_lists import word_list
from build_tools.views.reading.syllables import listed_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "UK General Data Protection Regulation, article 5(1)(c): data minimisation"

_CAPITAL = re.compile(r"\b[A-Z][\w’'-]*")
_INITIAL = re.compile(r"\b[A-Z]\.(?: ?[A-Z]\.)* ?[A-Z][a-z]|\b[A-Z][a-z]+ [A-Z]\.?$")
_OF_THE_TRADE = word_list(
    """
    a adviser advisor an and art artist arts assistant class coordinator county dance dancer deputy
    director drama education expressive governor head infant infants inspector junior juniors key ks
    lead leader lecturer music of officer pe performing physical practitioner primary school senior
    service special stage subject teacher teaching the trust university year
    """
)
"""Words of roles, which some write with a capital."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each reading whose role holds what looks like a name."""
    for n, reading in enumerate(unit.read_by):
        if name := _name_in(reading.role):
            yield Finding(
                unit.file,
                ("read_by", n, "role"),
                f'`role` holds what looks like a person\'s name ("{name}")',
                "write what the reader is, such as dance adviser of a county service; the name "
                "stays on the paper that was signed",
            )


def _name_in(role: str) -> str | None:
    """The first thing in a role that looks like a person's name."""
    if found := titled(role):
        return found
    if initial := _INITIAL.search(role):
        return initial.group()
    for match in _CAPITAL.finditer(role):
        low = match.group().lower()
        if low in FIRST_NAMES:
            return match.group()
        if low in _OF_THE_TRADE or low in NO_NAMES or match.group().isupper():
            continue
        if match.start() > 0 or low not in listed_words():
            return match.group()
    return None
