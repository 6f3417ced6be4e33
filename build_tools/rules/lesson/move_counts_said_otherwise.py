"""The counts said with a move are those that the move has.

A teacher says "Rock, two. Rush, four." and thirty pupils rush for four. Where the motif has two,
the class is late for the rest. A move said over and over takes a count each time.

Bad:
    say: Float, six. Hop, two. Settle, two. for a drift of float 4, hop 2, settle 2
Good:
    say: Float, four. Hop, two. Settle, two.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers import number_of
from build_tools.views.dance.progress import inside, names_in, steps_in_order

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_FIELDS = ("say", "task")
_NUMBER = r"(?P<number>\d{1,2}|[a-z]+)"
_ENDS = r"(?=\s*(?:counts?\b|[.,;!?]|$))"
_FEWEST = 2
"""One number alone may be said of something else."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that counts the moves of a motif otherwise than it has them."""
    dance = unit.dance
    for place, lesson, step in steps_in_order(unit):
        things = _things(dance, step)
        words = {word for counts in things.values() for word in counts}
        for field in _FIELDS if words else ():
            said = _counted(getattr(step, field) or "", words)
            if len(said) < _FEWEST or not (apart := _apart(said, things)):
                continue
            name, word = apart
            yield Finding(
                lesson.file,
                ("steps", place.step, field),
                f"`{field}` gives {word} {said[word]} counts, but in `{name}` it has "
                f"{figures(things[name][word])}",
                f"say {figures(things[name][word])} for {word}, or mend the counts of `{name}`",
            )


def _things(dance: Dance, step: Step) -> Mapping[str, Mapping[str, Fraction]]:
    """The counts of each move, by its word, in every motif and development that a step names."""
    found: dict[str, dict[str, Fraction]] = {}
    for name in sorted(inside(dance, names_in(step)) - set(dance.sections)):
        words = [a.word.lower() for a in actions_of(dance, name) if a.word]
        if words and len(set(words)) == len(words) == len(actions_of(dance, name)):
            counts = [action.counts for action in actions_of(dance, name)]
            found[name] = dict(zip(words, counts, strict=True))
    return found


def _counted(text: str, words: set[str]) -> dict[str, int]:
    """The number said with each move: rock, two; sink for six; go, go, go."""
    found: dict[str, int] = {}
    low = text.lower()
    for word in words:
        move = re.escape(word)
        if more := re.search(rf"\b{move}(?:[,!]? {move}\b)+", low):
            found[word] = len(re.findall(rf"\b{move}\b", more.group()))
        for said in re.finditer(rf"\b{move}\b[,:]?\s+(?:for\s+)?{_NUMBER}\b{_ENDS}", low):
            if (number := number_of(said.group("number"))) is not None:
                found[word] = number
    return found


def _apart(
    said: Mapping[str, int], things: Mapping[str, Mapping[str, Fraction]]
) -> tuple[str, str] | None:
    """The thing that is meant and its first move counted otherwise; None where all agree."""
    meant = [name for name, counts in things.items() if said.keys() <= counts.keys()]
    wrong = {n: [w for w in things[n] if w in said and said[w] != things[n][w]] for n in meant}
    if not meant or not all(wrong.values()):
        return None
    nearest = min(meant, key=lambda name: len(wrong[name]))
    return nearest, wrong[nearest][0]
