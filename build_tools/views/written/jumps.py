"""Jumps in a step: danced in what the step names, or asked for in its words."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.development import actions_of
from build_tools.views.dance.progress import inside
from build_tools.views.words.plain_words import action_label

Field = Literal["say", "task", "does"]

_JUMP = re.compile(
    r"jump(s|ed|ing)?|hop(s|ped|ping)?|leap(s|ed|t|ing)?|spring(s|ing)?|sprang|bounc(e|es|ed|ing)"
)
_SENTENCE = re.compile(r"[.;:!?]|\bthen\b")
_WORD = re.compile(r"[a-z][a-z'-]*")
_NOT = {"no", "not", "never", "without", "don't", "nobody"}
_NEAR = 3
_THING_BEFORE = {"a", "an", "the", "this", "in", "is", "of", "early", "late", "like"}
_THING_AFTER = {"leap": {"year", "years"}, "bounce": {"ball", "balls"}}


@dataclass(frozen=True, slots=True)
class Jump:
    """One jump: how a teacher would point to it, and the field whose words ask for it, if any."""

    said: str
    field: Field | None


def jump_in(dance: Dance, step: Step) -> Jump | None:
    """A jump in what `step` says, sets or dances; None if there is none."""
    texts: tuple[tuple[Field, str], ...] = (
        ("say", step.say or ""),
        ("task", step.task),
        ("does", step.does),
    )
    for field, text in texts:
        if word := jump_word(text):
            return Jump(f"the word {word}", field)
    return jump_danced(dance, step)


def jump_danced(dance: Dance, step: Step) -> Jump | None:
    """A jump in the motifs, developments and sections that `step` names; None if there is none.

    Developments have to work and names to be known.
    """
    parts = (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)
    for name in sorted(inside(dance, parts)):
        if name in dance.sections:
            section = dance.sections[name]
            for text in (section.improvised_from or "", *section.improvised_rules):
                if jump_word(text):
                    return Jump(f"a jump in section {name}", None)
            continue
        for action in actions_of(dance, name):
            if "jump" in action.kinds:
                return Jump(f"{action_label(action)} in `{name}`", None)
    return None


def jump_word(text: str) -> str | None:
    """The first word in `text` that asks for a jump; jumpers, leap years and "no jumps" do not."""
    for sentence in _SENTENCE.split(text.lower()):
        words: list[str] = _WORD.findall(sentence)
        for n, word in enumerate(words):
            before, after = words[max(0, n - _NEAR) : n], words[n + 1 : n + 1 + _NEAR]
            if not _JUMP.fullmatch(word):
                continue
            if not _ruled_out(before) and not _thing(word, before, after):
                return word
    return None


def _ruled_out(before: list[str]) -> bool:
    """Whether the words before say no jump: "do not", "in place of"."""
    return bool(_NOT.intersection(before)) or before[-2:] in (["place", "of"], ["instead", "of"])


def _thing(word: str, before: list[str], after: list[str]) -> bool:
    """Whether the word names a thing: a spring, a leap year, a ball that bounces."""
    if word in ("spring", "springs") and before and before[-1] in _THING_BEFORE:
        return True
    return bool(_THING_AFTER.get(word, set()).intersection(after))
