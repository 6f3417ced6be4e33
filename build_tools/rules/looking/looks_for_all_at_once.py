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
from build_tools.sentences.sayings import Said, Saying
from build_tools.views.dance.when_made import names_in, steps_in_order
from build_tools.views.words.plain_words import fit_in_words, listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)
_BY_TURNS = ("question and answer", "canon in turn")
_AT_ONCE = Saying(
    """
    both|all|everyone|everybody|partners|they ~3 move|moves|dance|dances|go|goes ~3 together
    both|all|everyone|everybody|partners|they ~3 move|moves|dance|dances|go|goes ~2 at once
    both|all|everyone|everybody|partners ~3 move|moves|dance|dances ~3 same ~1 time|moment|counts
    """
)
_ALWAYS = Saying(
    """
    @all ~4 keep|keeps|stay|stays ~1 moving|dancing|going|motion|busy|@go
    @all ~4 move|moving|busy|@go ~3 all|whole ~1 time|through
    @all ~4 move|moving|@go ~3 all|every|each ~2 count|beat
    @all ~4 move|moving|@go ~2 from ~1 start|first|beginning
    @all ~4 busy|moving throughout
    @all ~4 @go ~1 all ~1 way
    on the move ~2 all|whole ~1 time
    constant|continuous|non-stop movement|motion|moving|dancing
    """,
    {"all": "all everyone everybody both each every four three two"},
)
"""Nobody is ever still: no moment of it alone, but the whole."""
_NEVER_STILL = Saying(
    """
    is|are|be|ever !<while|when|as|until ~1 still|motionless
    moment ~5 still|stillness|motionless
    =stands|=standing|=waits|=waiting !<while|when|as|until
    anyone|anybody ~2 moving|dancing
    """
)
"""What is denied where nobody may be still."""
_SAID_OF_THE_END = Saying("end|ends|land|lands|hide|stop|stops|still|start|starts|last")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that looks for all at once in what goes by turns."""
    sections = unit.dance.sections
    for place, lesson, step in steps_in_order(unit):
        said = _wanted_at_once(step.look_for)
        letters = [name for name in names_in(step) if name in sections]
        if said is None or not letters:
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


def _wanted_at_once(text: str | None) -> Said | None:
    """Where a text wants all to move at once; to start or to end at once is no fault."""
    said = _AT_ONCE.said(text)
    if said is not None and not _SAID_OF_THE_END.said(text):
        return said
    return _ALWAYS.said(text) or _NEVER_STILL.denied(text)
