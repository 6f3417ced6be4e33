"""What a group of one more or one fewer does: the author's words where there are any.

Authors write it as people say it: "In a three, two are ones". Where they do not, it follows from
who dances when: a group of one fewer waits only through what its last dancer dances alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

from build_tools.model.dance import Dance, Groups, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.views.dance.parts_named import motifs_in
from build_tools.views.lesson.later_parts import said_by_now
from build_tools.views.words.punctuation import capital

NAMES = {2: "pair", 3: "three", 4: "four", 5: "five", 6: "six", 7: "seven"}
_WHERE_THEY_ARE = frozenset({"stand", "stay", "wait"})
"""Words that tell where somebody is, though a move may be called so."""
_PAIR_LEFT = re.compile(r"\bpair (?:over|left|is (?:over|left))\b", re.IGNORECASE)
_SENTENCE = r"(?<![^\s*])In an? (?:(?:row|file|line|ring) of )?(?:\w+ or )?{name}\b[^.!?]*[.!?]"


def said_of(size: int, texts: Iterable[str]) -> str | None:
    """The first sentence of `texts` that says what a group of `size` does, as it is written."""
    sentence = re.compile(_SENTENCE.format(name=NAMES.get(size, str(size))), re.IGNORECASE)
    for text in texts:
        found = sentence.search(" ".join(text.replace("*", "").split()))
        if found:
            return capital(found[0])
    return None


def told_in_the_step(step: Step, size: int) -> bool:
    """Whether the step's own words say what a group of `size` does."""
    return said_of(size, filter(None, (step.into, step.task, step.say, step.you))) is not None


def tells_of_a_pair_left(step: Step) -> bool:
    """Whether the step's own words say what a pair that is left does."""
    texts = (step.into, step.task, step.say, step.you)
    return any(_PAIR_LEFT.search(text) for text in texts if text)


def said_by_the_author(unit: Unit, lesson: Lesson, size: int) -> str | None:
    """What the author says that a group of `size` does, in this lesson or else in the unit.

    What is said of a part that is made in a later lesson waits for it.
    """
    texts = (lesson.change.get("partners", ""), lesson.notes, unit.notes)
    found = (said_of(size, (text,)) for text in texts)
    held = (said_by_now(unit, lesson.number, said) for said in found if said)
    return next((said for said in held if said), None)


def holds_in(dance: Dance, section: Section, said: str) -> bool:
    """Whether what is `said` of a group is of this section too.

    "5 beats with 1" is of the part in which the beat runs along the row, dancer by dancer. It is
    no use where all beat at once, or where nobody beats.
    """
    words = _words_of_moves(dance) - _WHERE_THEY_ARE
    named = {word for word in words if re.search(rf"\b{word}(?:e?s)?\b", said)}
    if not named:
        return True
    roles = section.groups.roles.values() if section.groups else ()
    if roles:
        return any(len(places) == 1 for places in roles)
    danced = motifs_in(dance, (section.letter,))
    return any(one.word in named for name in danced for one in actions_of(dance, name))


@lru_cache(maxsize=16)
def _words_of_moves(dance: Dance) -> frozenset[str]:
    """What moves are called by one word of small letters, as it stands in a sentence."""
    called = (one.word for motif in dance.motifs.values() for one in motif.actions)
    return frozenset(word for word in called if word and word.isalpha())


def last_dances_alone(section: Section, size: int) -> bool:
    """Whether the last of a group of `size` dances something in the section while others do not."""
    groups = section.groups
    if groups is not None and any(places == (size,) for places in groups.roles.values()):
        return True
    return any(
        passage.fit not in ("unison", "side by side") and (passage.parts or 1) >= size
        for passage in section.danced
    )


def of_its_size(groups: Groups | None, size: int) -> bool:
    """Whether the groups of a section have that many dancers."""
    return groups is not None and groups.size == size
