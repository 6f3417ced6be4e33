"""Where ways on a chair and on wheels were told before: as in steps 2, 3 and 4."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.page_words.words import _, ngettext
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital


def as_in_steps(told: Sequence[tuple[str | None, int]], *, more: bool = False) -> str:
    """Every step that told one of the ways, those of a changed return apart.

    `told` is for each way what its changed return is called, if it has to be told apart, and its
    step. With `more`, the step tells ways of its own, which follow.
    """
    plain = {step for letter, step in told if letter is None}
    said = (
        [ngettext("as in step {steps}", "as in steps {steps}", len(plain), steps=_row(plain))]
        if plain
        else []
    )
    for letter in dict.fromkeys(letter for letter, _step in told if letter is not None):
        its = {step for its_letter, step in told if its_letter == letter}
        if its != plain:
            said.append(
                ngettext(
                    "in {part}, as in step {steps}",
                    "in {part}, as in steps {steps}",
                    len(its),
                    part=letter,
                    steps=_row(its),
                )
            )
    if more:
        said.append(_("and:") if plain else _("elsewhere:"))
    return capital("; ".join(said)) + ("" if more else ".")


def _row(numbers: set[int]) -> str:
    return listed([str(n) for n in sorted(numbers)])
