"""Every section stands in the form.

The form says what is danced in which order. A section that stands nowhere in it is printed with the
others, and no page says when it is danced; most often its sign is missing: A where A' was meant.
Where pupils decide the order, the form says which sections they order.

Bad:
    the sections are A, B, C and D
    form: A B C A
Good:
    the sections are A, B, C and D
    form: A B C D
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section that no place of the form has."""
    form = unit.dance.form
    for letter, section in unit.dance.sections.items():
        if letter in form:
            continue
        meant = _with(form, section.returns or letter.rstrip("'"), letter)
        yield Finding(
            unit.file,
            ("sections", letter),
            f"section {letter} stands in no place of the form, which is {' '.join(form)}",
            f"write where it is danced, such as `form: {' '.join(meant)}`",
        )


def _with(form: tuple[str, ...], first: str, letter: str) -> tuple[str, ...]:
    """The form with `letter` in the last place of the section that it returns to, else at its end.

    That section keeps its first place.
    """
    places = [n for n, one in enumerate(form) if one == first]
    if letter == first or len(places) < 2:
        return (*form, letter)
    return (*form[: places[-1]], letter, *form[places[-1] + 1 :])
