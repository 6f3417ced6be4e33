"""What a step's names stand for: a letter stands for its section's motifs, whole for all."""

from __future__ import annotations

from collections.abc import Iterable

from build_tools.model.dance import Dance


def letters_in(dance: Dance, parts: Iterable[str]) -> tuple[str, ...]:
    """The section letters among `parts`, in the order of the dance; whole means all of them."""
    named = set(parts)
    order = dict.fromkeys(dance.form)
    return tuple(letter for letter in order if letter in named or "whole" in named)


def motifs_in(dance: Dance, parts: Iterable[str]) -> tuple[str, ...]:
    """The motifs and developments among `parts` and in the sections among them, without repeats."""
    parts = tuple(parts)
    own = [p for p in parts if p in dance.motifs or p in dance.developments]
    inside = [
        name
        for letter in letters_in(dance, parts)
        for passage in dance.sections[letter].danced
        for name in passage.what
    ]
    return tuple(dict.fromkeys([*own, *inside]))
