"""Each action of a motif that the teacher brings has a word to call.

Nobody demonstrates. A non-specialist teaches the motif from its words, called on their counts, and
pupils read it from a strip of them.

Bad:
    gust: {from: teacher, actions: [{travel: 4}], …}
Good:
    gust: {from: teacher, actions: [{travel: 4, as: sweep}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import comes_ready

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each action without a word in a motif from the teacher."""
    for name, motif in unit.dance.motifs.items():
        if not comes_ready(unit.dance, name):
            continue
        for n, action in enumerate(motif.actions):
            if not action.word:
                yield Finding(
                    unit.file,
                    ("motifs", name, "actions", n),
                    f"`{name}` comes from the teacher, and action {n + 1} of "
                    f"{len(motif.actions)} ({action.kind}, {figures(action.counts)}) has no word "
                    "to call",
                    "write a short word for it in `as`, such as one pupils would say",
                )
