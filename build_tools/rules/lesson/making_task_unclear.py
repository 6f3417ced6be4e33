"""A task in which pupils make something says how long it is, or how they will remember it.

"Make a storm dance in your group" starts an argument. A number of counts tells pupils when they
have finished, and words, cards or a drawing let them find it again next week.

Bad:
    task: Make up a storm in your group.
Good:
    task: Link three storm moves on eight counts. Say the words to remember them.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.clear_tasks import KEPT, LENGTH
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_SHORT = 2
"""Moves that anyone remembers without help."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each making step with neither a length nor a way to remember."""
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            if step.phase != "make" or step.counts is not None:
                continue
            name = next((n for n in step.makes if _needs_words(unit.dance, n)), None)
            texts = (step.does, step.say, step.task)
            if name is None or LENGTH.in_any(texts) or KEPT.in_any(texts):
                continue
            if _names_its_moves(unit.dance, name, " ".join(filter(None, texts)).lower()):
                continue
            yield Finding(
                lesson.file,
                ("steps", index, "task"),
                f"step {index + 1} makes {_what_is_made(unit.dance, name)}, but "
                "says neither how long it is nor how pupils will remember it: 0 of 2",
                "add the counts and a way to keep it, such as: eight counts long; say the words to "
                "remember it",
            )


def _needs_words(dance: Dance, name: str) -> bool:
    """Whether a motif is long, or a section counted, so that words are needed to find it again.

    A section that is timed or made up has a cue to end on. The moves of a motif are kept in mind
    in a timed section too, but not where it is only played with.
    """
    section = dance.sections.get(name)
    if section is not None:
        return section.counts is not None
    return len(dance.motifs[name].actions) > _SHORT and any(
        one.kind != "improvised" and name in roots(dance, danced)
        for one in dance.sections.values()
        for passage in one.danced
        for danced in passage.what
    )


def _names_its_moves(dance: Dance, name: str, text: str) -> bool:
    """Whether the task gives at least two of the motif's own words."""
    motif = dance.motifs.get(name)
    if motif is None:
        return False
    return sum(bool(a.word) and str(a.word).lower() in text for a in motif.actions) > 1


def _what_is_made(dance: Dance, name: str) -> str:
    section = dance.sections.get(name)
    if section is not None and section.counts is not None:
        return f"section {name} of {counts_in_words(section.counts)}"
    return f"`{name}` of {len(dance.motifs[name].actions)} moves"
