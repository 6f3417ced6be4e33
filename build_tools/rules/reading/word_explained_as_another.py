"""A word of the trade is explained by what it means, and not by what another word means.

Where `words` says that a canon is everyone at the same time, or that a level is how strong a move
is, a class learns the wrong thing, and the teacher who does not dance cannot know. A line for a
word that is told right may say more.

Bad:
    words: {canon: "the same moves, everyone at the same time"}
Good:
    words: {canon: "the same moves, one dancer starting after another"}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.meanings import means_another

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Smith-Autard, Dance Composition: unison, canon, question and answer, retrograde (from memory)"
    "; Ontario Arts Curriculum, 2010, glossary: pathway; the other words common practice"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each word whose line says what another word means."""
    holders = [(unit.file, unit.words), *((lesson.file, lesson.words) for lesson in unit.lessons)]
    for file, words in holders:
        for word, plain in words.items():
            if said := means_another(word.casefold(), plain):
                yield Finding(
                    file,
                    ("words", word),
                    f'`{word}` is explained by "{said.text}", which another word means',
                    f"say what a {word} is, or explain the word that is meant",
                )
