"""Watchers sit where nobody dances.

A dancer who comes backwards round a corner does not see who sits there, and a watcher on the
floor cannot get out of the way. One agreed side, edge or bench keeps both safe, and watchers see
more from it.

Bad:
    task: Half sit down just where they are. The rest dance all over the hall.
Good:
    task: Half sit along the front wall. The rest dance all over the hall.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.rules.said_in_fields import said_in_fields
from build_tools.sentences.watching import AMONG_DANCERS, SEATED_IN_THE_WAY, in_the_way
from build_tools.views.written.hazards import hazards

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


_BESIDES = frozenset({"safety", "notes", "room", "who_sits_where"})
_HELP = "say where nobody dances, such as: along the front wall, legs tucked in"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field that seats watchers where others dance."""
    for found in hazards(unit, SEATED_IN_THE_WAY, in_the_way):
        yield Finding(
            found.file,
            found.path,
            f"step {found.step + 1} seats watchers in the dancers' way ({found.said})",
            _HELP,
        )
    yield from said_in_fields(
        unit, AMONG_DANCERS, _BESIDES, "seats watchers in the dancers' way", _HELP
    )
