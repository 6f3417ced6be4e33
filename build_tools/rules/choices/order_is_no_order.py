"""The choice that decides the order of the sections offers orders of them.

Where pupils put the sections in order, `order` names the choice in which they do. A choice about
something else, or an order with a letter missing, leaves the class with no dance to run.

Bad:
    order: pattern-order
    choices: {pattern-order: {from: [stretch then pluck, pluck then stretch], …}}
Good:
    order: running-order
    choices: {running-order: {from: ["A, B, C, D", "D, A, B, C"], …}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.orders import order_in
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where the choice has no order, and for each order that is not whole."""
    dance = unit.dance
    if not dance.order_choice:
        return
    options = dance.choices[dance.order_choice].options
    orders = [order_in(option) for option in options]
    if not any(orders):
        yield Finding(
            unit.file,
            ("dance", "order"),
            f"`order` names `{dance.order_choice}`, but none of its {len(options)} options puts "
            f"{listed(list(dance.sections))} in order",
            "name the choice in which pupils decide the order, or write the letters in its options",
        )
        return
    for n, order in enumerate(orders):
        if order and sorted(order) != sorted(dance.form):
            yield Finding(
                unit.file,
                ("choices", dance.order_choice, "from", n),
                f"option {n + 1} puts {' '.join(order)} in order, but the dance has "
                f"{' '.join(sorted(dance.form))}",
                "write every section once for each time that the form has it",
            )
