"""A look_for does not ask all to move at once where the score lets one wait.

Question and answer is one who moves and one who is still, and "both move together all the time" is
the opposite: a teacher who looks for it mends what was right. Steps whose parts all move by turns
are asked.

Bad:
    danced: [{what: [gust, gust], as: question and answer}]
    look_for: Both partners move together all the time.
Good:
    danced: [{what: [gust, gust], as: question and answer}]
    look_for: One is still while the other moves.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.progress import names_in, steps_in_order
from build_tools.views.words.plain_words import fit_in_words, listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)
_BY_TURNS = ("question and answer", "canon in turn")
_AT_ONCE = Saying(
    """
    both|all|everyone|everybody|partners|they ~3 move|moves|dance|dances|go|goes ~3 together|once
    both|all|everyone|everybody|partners ~3 move|moves|dance|dances ~3 same ~1 time|moment|counts
    both|all|everyone|everybody ~3 move|moves|moving ~2 all|whole ~1 time
    """
)
_SAID_OF_THE_END = Saying("end|ends|land|lands|hide|stop|stops|still|start|starts|last")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that looks for all at once in what goes by turns."""
    sections = unit.dance.sections
    for place, lesson, step in steps_in_order(unit):
        said = _AT_ONCE.said(step.look_for)
        letters = [name for name in names_in(step) if name in sections]
        if said is None or not letters or _SAID_OF_THE_END.said(step.look_for):
            continue
        passages = [p for letter in letters for p in sections[letter].danced]
        if not passages or any(p.fit not in _BY_TURNS for p in passages):
            continue
        how = list(dict.fromkeys(fit_in_words(p) for p in passages))
        yield Finding(
            lesson.file,
            ("steps", place.step, "look_for"),
            f'`look_for` wants all to move at once ("{said.text}"), but section '
            f"{listed(letters)} goes by turns: {listed(how)}",
            "look for the stillness of those who wait, or for an answer that comes at once",
        )
