"""Where ways on a chair and on wheels were told before: as in steps 2, 3 and 4."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.page_words.words import _, ngettext
from build_tools.views.lesson.notes_read import Explained
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital, sentence

_SENDS_BACK = re.compile(r"as in steps? \d+(?:(?:, | and |, and | to )\d+)*\.?", re.IGNORECASE)


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
        # which of these steps is told of a changed return, whose ways are another part's too
        if its != plain and not (letter.isalnum() and its <= plain):
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


def ways_of_other_steps(ways: Sequence[Explained]) -> str:
    """The author's own line, where all that it says of a step is which others' ways it has.

    Two such lines side by side, the author's and the bank's, sent a teacher to different steps.
    """
    said = {way for one in ways for way in (one.seated, one.wheels) if way}
    if len(said) != 1:
        return ""
    (line,) = said
    return sentence(line) if _SENDS_BACK.fullmatch(line.strip()) else ""
