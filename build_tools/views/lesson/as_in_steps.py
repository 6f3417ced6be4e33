"""Where ways on a chair and on wheels were told before: as in steps 2, 3 and 4."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital


def as_in_steps(told: Sequence[tuple[str | None, int]], *, more: bool = False) -> str:
    """Every step that told one of the ways, those of a changed return apart.

    `told` is for each way the letter of its changed return, if it has to be told apart, and its
    step. With `more`, the step tells ways of its own, which follow.
    """
    plain = {step for letter, step in told if letter is None}
    said = [f"as in {_steps(plain)}"] if plain else []
    for letter in dict.fromkeys(letter for letter, _ in told if letter is not None):
        its = {step for its_letter, step in told if its_letter == letter}
        if its != plain:
            said.append(f"in {letter}, as in {_steps(its)}")
    if more:
        said.append("and:" if plain else "elsewhere:")
    return capital("; ".join(said)) + ("" if more else ".")


def _steps(numbers: set[int]) -> str:
    return f"step{'s' if len(numbers) > 1 else ''} {listed([str(n) for n in sorted(numbers)])}"
