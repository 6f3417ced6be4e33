"""How long the whole dance is, where pupils may choose the order of its sections too.

Joins differ in length, so a dance of the same sections is shorter in one order than in another.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, lru_cache
from itertools import permutations

from build_tools.model.dance import Dance, Seconds
from build_tools.movement.counts import seconds
from build_tools.movement.orders import order_in
from build_tools.movement.whole import (
    counts_in_order,
    seconds_in_order,
    transition_between,
    transition_counts,
)


@dataclass(frozen=True, slots=True)
class CountsRange:
    """A length in counts that may vary with the order of sections: the least and the most."""

    least: Fraction
    most: Fraction


@lru_cache(maxsize=8)
def whole_counts(dance: Dance) -> CountsRange:
    """The counted part of the whole dance, in counts, over every order it may be danced in."""
    found = [counts_in_order(dance, order) for order in _orders_named(dance)]
    if _is_any_order(dance):
        found += _counts_in_any_order(dance)
    return CountsRange(min(found), max(found))


@lru_cache(maxsize=8)
def whole_seconds(dance: Dance) -> Seconds | None:
    """How long the whole dance lasts, over every order; None where counts have no tempo."""
    found = [seconds_in_order(dance, order) for order in _orders_named(dance)]
    if _is_any_order(dance):
        found += [_lasting(dance, counts) for counts in _counts_in_any_order(dance)]
    known = [one for one in found if one is not None]
    if len(known) < len(found):
        return None
    return Seconds(min(one.least for one in known), max(one.most for one in known))


def _orders_named(dance: Dance) -> tuple[tuple[str, ...], ...]:
    """The form, and the orders that the choice of the order spells out."""
    options = (_spelt_out(dance, option) for option in _options(dance))
    return (dance.form, *(order for order in options if order))


def _is_any_order(dance: Dance) -> bool:
    """Whether the choice leaves orders open that it does not spell out."""
    return dance.order_choice is not None and (
        not _options(dance) or not all(_spelt_out(dance, option) for option in _options(dance))
    )


def _options(dance: Dance) -> tuple[str, ...]:
    choice = dance.choices.get(dance.order_choice or "")
    return choice.options if choice else ()


def _spelt_out(dance: Dance, option: str) -> tuple[str, ...]:
    """The order in an option such as A, B, D, C: the break comes third; else empty."""
    letters = order_in(option)
    return letters if set(letters) == set(dance.form) else ()


def _counts_in_any_order(dance: Dance) -> Iterator[Fraction]:
    own = sum((dance.sections[letter].counts or 0 for letter in dance.form), Fraction(0))
    for joins in _joins_in_any_order(dance):
        yield own + joins


def _lasting(dance: Dance, counts: Fraction) -> Seconds | None:
    """So many counts, and what is not counted, in seconds."""
    spans = [dance.sections[letter].seconds for letter in dance.form]
    uncounted = [span for span in spans if span is not None]
    if counts and dance.tempo is None:
        return None
    counted = seconds(counts, dance.tempo) if dance.tempo else Fraction(0)
    return Seconds(
        counted + sum(span.least for span in uncounted),
        counted + sum(span.most for span in uncounted),
    )


def _joins_in_any_order(dance: Dance) -> tuple[Fraction, Fraction]:
    """The fewest and the most counts that the joins add up to, over every order of the form."""
    joins = {
        (first, second): transition_counts(between) if between else Fraction(0)
        for first, second in permutations(sorted({*dance.form}), 2)
        for between in (transition_between(dance, first, second),)
    }
    for letter in {one for one in dance.form if dance.form.count(one) > 1}:
        between = transition_between(dance, letter, letter)
        joins[letter, letter] = transition_counts(between) if between else Fraction(0)

    @cache
    def rest(last: str, left: tuple[str, ...]) -> tuple[Fraction, Fraction]:
        """The fewest and the most for what is left, in letters, after `last`."""
        if not left:
            return Fraction(0), Fraction(0)
        found = [
            (joins[last, letter] + least, joins[last, letter] + most)
            for letter in sorted({*left})
            for least, most in (rest(letter, _without(left, letter)),)
        ]
        return min(least for least, _ in found), max(most for _, most in found)

    form = tuple(sorted(dance.form))
    every = [rest(letter, _without(form, letter)) for letter in sorted({*form})]
    return min(least for least, _ in every), max(most for _, most in every)


def _without(letters: tuple[str, ...], one: str) -> tuple[str, ...]:
    """The letters with the first `one` of them taken out."""
    at = letters.index(one)
    return letters[:at] + letters[at + 1 :]
