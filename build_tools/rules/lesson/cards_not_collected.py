"""Cards that a lesson uses are among what its teacher collects.

A teacher collects by the list. A pupil who is to hold up number cards, and finds none, has lost
the part that was theirs.

Bad:
    collect: [A drum, …]
    not_dancing: Holds up the number cards in turn.
Good:
    collect: ["Number cards: 1, 2, 3, 4", …]
    not_dancing: Holds up the number cards in turn.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = ("arrow", "colour", "letter", "number", "picture", "shape")
_CARDS = {
    f"{kind} cards": Saying(
        f"{kind} card !<leave|without\ncard !<leave|without ~2 with|of ~2 {kind} !card"
    )
    for kind in _KINDS
}
"""Cards that one can't take for others. Word cards go by many names, by their motif above all."""
_MARKED = {"number": "#", "letter": "a|b|c|d|e"}
_COLLECTED = {
    f"{kind} cards": Saying(
        f"{kind} card !n't|not\ncard ~~4 {kind} !card\n"
        f"card ~~2 marked|numbered|lettered|reading ~2 {_MARKED.get(kind, kind)}"
    )
    for kind in _KINDS
}
"""The same on a list: cards marked 1 to 8 are number cards."""
_USED = frozenset({
    "does", "into", "say", "task", "you", "question", "look_for", "easier", "harder", "at",
    "looking_for", "seen", "not_yet", "room", "things", "partners", "cue", "stuck", "finished",
    "loud", "silly", "will_not_join", "sound_fails", "not_dancing", "safety",
})  # fmt: skip


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first use in a lesson of each kind of card it does not collect."""
    text = unit_text(unit)
    for name, saying in _CARDS.items():
        # a list likens nothing, though a picture in a sentence may be one in the mind
        listed = text.saying(_COLLECTED[name], {"collect"}, meant=False)
        collected = {found.file for found in listed}
        used = defaultdict(list)
        for found in text.saying(saying, _USED):
            used[found.file].append(found)
        for lesson in unit.lessons:
            if lesson.file in used and lesson.file not in collected:
                first = used[lesson.file][0]
                yield Finding(
                    lesson.file,
                    first.path,
                    f"`{first.field.kind}` uses {name}, which are not in `collect`",
                    f"add the {name} to `collect`, with what stands on each, or do without",
                )
