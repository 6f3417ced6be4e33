"""Counts, phrases and seconds. Tempo counts the beat the class claps, in beats a minute."""

from __future__ import annotations

from fractions import Fraction


def seconds(counts: Fraction | int, tempo: Fraction | int) -> Fraction:
    """How many seconds `counts` last at `tempo` beats a minute: counts x 60 / tempo."""
    if tempo <= 0:
        raise ValueError(f"a tempo of {tempo} beats a minute has no length")
    return Fraction(counts) * 60 / Fraction(tempo)


def counts_in(seconds_: Fraction | int, tempo: Fraction | int) -> Fraction:
    """How many counts `seconds_` hold at `tempo` beats a minute."""
    if tempo <= 0:
        raise ValueError(f"a tempo of {tempo} beats a minute has no length")
    return Fraction(seconds_) * Fraction(tempo) / 60


def phrases(counts: Fraction | int, phrase: int) -> tuple[int, Fraction]:
    """Whole phrases of `phrase` counts in `counts`, and the counts left over."""
    if phrase <= 0:
        raise ValueError(f"a phrase of {phrase} counts is no phrase")
    whole, left = divmod(Fraction(counts), phrase)
    return int(whole), left


def figures(counts: Fraction) -> str:
    """Counts as a teacher writes them: 8, 1/2, 1 1/2."""
    whole, part = divmod(counts, 1)
    if not part:
        return str(whole)
    return f"{whole} {part}" if whole else str(part)
