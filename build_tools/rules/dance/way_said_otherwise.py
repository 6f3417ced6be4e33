"""Who goes forwards in words goes forwards in the score.

"Everyone, going forwards", and the moves take them back: the chart and the dance from above go one
way and the class the other. What is compared is the word in `who` with all the travelling of the
passage.

Bad:
    gust: {actions: [{travel: 4, direction: backwards}, {turn: 4}], …}
    danced: [{what: [gust], as: unison, who: "everyone, going forwards"}]
Good:
    gust: {actions: [{travel: 4, direction: backwards}, {turn: 4}], …}
    danced: [{what: [gust], as: unison, who: "everyone, going backwards"}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Passage
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Said, Saying
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_SAID = {
    "forwards": Saying(
        """
        forwards|forward !<arm|hand|look|looking|lean|reach|chest|head
        straight ahead
        onwards|onward
        towards|to ~1 front
        way ~2 face|facing
        """
    ),
    "backwards": Saying(
        """
        backwards|backward
        go|goes|going|travel|walk|drift back
        back towards|to ~2 wall|back
        reverse
        away from ~1 front
        """
    ),
}
_OTHER = {"forwards": "backwards", "backwards": "forwards"}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each passage whose words go one way and whose moves go the other."""
    for letter, section in unit.dance.sections.items():
        if section.returns and "danced" not in section.changes:
            continue
        for n, passage in enumerate(section.danced):
            found = _otherwise(unit.dance, passage)
            if found is None:
                continue
            said, way, moves = found
            yield Finding(
                unit.file,
                ("sections", letter, "danced", n, "who"),
                f'`who` says "{said.text}", but every way of the passage goes {way} '
                f"({', '.join(moves)})",
                f"write {way} in `who`, or let the moves go {_OTHER[way]}",
            )


def _otherwise(dance: Dance, passage: Passage) -> tuple[Said, str, tuple[str, ...]] | None:
    """What is said, which way the moves go instead, and those moves."""
    said = {way: words for way, saying in _SAID.items() if (words := saying.said(passage.who))}
    going = [
        action
        for name in passage.what
        for action in actions_of(dance, name)
        if action.direction in _OTHER and "travel" in action.kinds
    ]
    ways = {action.direction for action in going}
    if len(said) != 1 or len(ways) != 1:
        return None
    (way, words), (other,) = next(iter(said.items())), ways
    if other is None or way == other:
        return None
    return words, other, tuple(dict.fromkeys(action_label(action) for action in going))
